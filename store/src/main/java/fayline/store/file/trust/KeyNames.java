package fayline.store.file.trust;

import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.PublicKey;
import java.util.Arrays;
import org.bouncycastle.asn1.x509.AuthorityKeyIdentifier;
import org.bouncycastle.asn1.x509.SubjectKeyIdentifier;
import org.bouncycastle.asn1.x509.SubjectPublicKeyInfo;

/** Names of keys in certificates: the first 160 bits of SHA-256 over the key, [rfc7093] method 1; SHA-1 is used nowhere. */
final class KeyNames {
    private static final int BYTES = 20;

    private KeyNames() {}

    static SubjectKeyIdentifier of(PublicKey key) {
        return new SubjectKeyIdentifier(name(key));
    }

    static AuthorityKeyIdentifier issuer(PublicKey key) {
        return new AuthorityKeyIdentifier(name(key));
    }

    private static byte[] name(PublicKey key) {
        byte[] bits = SubjectPublicKeyInfo.getInstance(key.getEncoded())
                .getPublicKeyData()
                .getBytes();
        try {
            return Arrays.copyOf(MessageDigest.getInstance("SHA-256").digest(bits), BYTES);
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this machine's Java has no SHA-256", e);
        }
    }
}
