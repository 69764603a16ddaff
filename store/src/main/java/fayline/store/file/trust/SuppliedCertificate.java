package fayline.store.file.trust;

import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.Signature;
import java.security.cert.CertificateParsingException;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;

/** A certificate and its key that the owner of the machine supplies as PEM files. */
public final class SuppliedCertificate {
    private static final int DNS_NAME = 2;
    private static final int ADDRESS = 7;

    private SuppliedCertificate() {}

    /**
     * Reads them.
     *
     * @param certificate the certificate, followed by those that signed it
     * @param key its private key, without a passphrase
     * @param now the machine's time
     * @throws UnusableCertificateException if they cannot be read, do not belong together, or are not valid now
     */
    public static ServerIdentity read(Path certificate, Path key, Instant now) {
        List<X509Certificate> chain = Pem.certificates(certificate);
        X509Certificate own = chain.get(0);
        PrivateKey secret = Pem.key(key);
        requirePair(own, secret, certificate, key);
        Instant from = own.getNotBefore().toInstant();
        Instant until = own.getNotAfter().toInstant();
        if (now.isBefore(from) || now.isAfter(until)) {
            throw new UnusableCertificateException(certificate + ": found a certificate valid from " + from + " to "
                    + until + ", expected one that is valid now, " + now + ".");
        }
        List<String> names = names(own, certificate);
        if (names.isEmpty()) {
            throw new UnusableCertificateException(
                    certificate + ": found no host name in it (subject alternative name), expected at least one.");
        }
        return ServerIdentity.of(secret, chain, names);
    }

    private static List<String> names(X509Certificate own, Path file) {
        List<String> names = new ArrayList<>();
        try {
            Collection<List<?>> all = own.getSubjectAlternativeNames();
            if (all == null) {
                return names;
            }
            for (List<?> one : all) {
                if (one.get(0) instanceof Integer kind
                        && (kind == DNS_NAME || kind == ADDRESS)
                        && one.get(1) instanceof String name) {
                    names.add(name.toLowerCase(Locale.ROOT));
                }
            }
            return names;
        } catch (CertificateParsingException e) {
            throw new UnusableCertificateException(
                    file + ": the names in the certificate cannot be read: " + e.getMessage() + ".", e);
        }
    }

    /** Refuses a key that is not the certificate's: what it signs, the certificate must recognise. */
    static void requirePair(X509Certificate certificate, PrivateKey key, Path certificateFile, Path keyFile) {
        String algorithm = key.getAlgorithm().equals("EC") ? "SHA256withECDSA" : "SHA256with" + key.getAlgorithm();
        byte[] something = new byte[32];
        new SecureRandom().nextBytes(something);
        boolean pair;
        try {
            Signature sign = Signature.getInstance(algorithm);
            sign.initSign(key);
            sign.update(something);
            byte[] signed = sign.sign();
            sign.initVerify(certificate.getPublicKey());
            sign.update(something);
            pair = sign.verify(signed);
        } catch (GeneralSecurityException e) {
            pair = false;
        }
        if (!pair) {
            throw new UnusableCertificateException(
                    keyFile + ": found a key of another certificate, expected the key of " + certificateFile + ".");
        }
    }
}
