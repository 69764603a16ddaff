package fayline.store.file.trust;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.PrivateKey;
import java.security.PublicKey;
import org.bouncycastle.asn1.x509.SubjectPublicKeyInfo;
import org.bouncycastle.crypto.params.Ed25519PrivateKeyParameters;
import org.bouncycastle.crypto.util.PrivateKeyFactory;
import org.bouncycastle.crypto.util.SubjectPublicKeyInfoFactory;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;

/**
 * The key with which a shop signs the heads of its record: Ed25519 (RFC 8032), made on first use and kept in the data folder
 * for its owner alone.
 *
 * @param open the public half
 * @param secret the private half
 */
public record HeadKey(PublicKey open, PrivateKey secret) {
    private static final String FILE = "record-key.pem";

    /**
     * The key of a data folder, made where there is none.
     *
     * @param data the data folder
     * @throws UnusableCertificateException if the file cannot be read or written, or holds no key of this kind
     */
    public static synchronized HeadKey of(Path data) {
        Path file = data.resolve(FILE);
        if (!Files.exists(file)) {
            Pem.write(file, Pem.text(fresh().getPrivate()));
        }
        PrivateKey secret = Pem.key(file);
        return new HeadKey(openHalf(file, secret), secret);
    }

    private static KeyPair fresh() {
        try {
            return KeyPairGenerator.getInstance("Ed25519").generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform from 15 on has Ed25519", e);
        }
    }

    private static PublicKey openHalf(Path file, PrivateKey secret) {
        try {
            if (PrivateKeyFactory.createKey(secret.getEncoded()) instanceof Ed25519PrivateKeyParameters key) {
                SubjectPublicKeyInfo open =
                        SubjectPublicKeyInfoFactory.createSubjectPublicKeyInfo(key.generatePublicKey());
                return new JcaPEMKeyConverter().getPublicKey(open);
            }
        } catch (IOException e) {
            throw new UnusableCertificateException(file + ": the key in it cannot be read: " + e.getMessage() + ".", e);
        }
        throw new UnusableCertificateException(
                file + ": found a key of the kind " + secret.getAlgorithm() + ", expected Ed25519.");
    }
}
