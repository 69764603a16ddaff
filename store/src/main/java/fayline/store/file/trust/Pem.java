package fayline.store.file.trust;

import java.io.IOException;
import java.io.Reader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.GeneralSecurityException;
import java.security.PrivateKey;
import java.security.cert.X509Certificate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.bouncycastle.asn1.pkcs.PrivateKeyInfo;
import org.bouncycastle.cert.X509CertificateHolder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.openssl.PEMEncryptedKeyPair;
import org.bouncycastle.openssl.PEMKeyPair;
import org.bouncycastle.openssl.PEMParser;
import org.bouncycastle.openssl.jcajce.JcaPEMKeyConverter;
import org.bouncycastle.openssl.jcajce.JcaPEMWriter;
import org.bouncycastle.openssl.jcajce.JcaPKCS8Generator;
import org.bouncycastle.pkcs.PKCS8EncryptedPrivateKeyInfo;
import org.bouncycastle.util.io.pem.PemGenerationException;

/** Certificates and keys as PEM files. */
final class Pem {
    private static final Set<PosixFilePermission> OWNER_ONLY =
            EnumSet.of(PosixFilePermission.OWNER_READ, PosixFilePermission.OWNER_WRITE);

    private Pem() {}

    static List<X509Certificate> certificates(Path file) {
        List<X509Certificate> all = new ArrayList<>();
        for (Object part : parts(file)) {
            if (part instanceof X509CertificateHolder held) {
                try {
                    all.add(new JcaX509CertificateConverter().getCertificate(held));
                } catch (GeneralSecurityException e) {
                    throw new UnusableCertificateException(
                            file + ": a certificate in it cannot be read: " + e.getMessage() + ".", e);
                }
            }
        }
        if (all.isEmpty()) {
            throw new UnusableCertificateException(
                    file + ": found no certificate, expected a PEM file with \"BEGIN CERTIFICATE\".");
        }
        return all;
    }

    static PrivateKey key(Path file) {
        for (Object part : parts(file)) {
            try {
                if (part instanceof PrivateKeyInfo info) {
                    return new JcaPEMKeyConverter().getPrivateKey(info);
                }
                if (part instanceof PEMKeyPair pair) {
                    return new JcaPEMKeyConverter().getPrivateKey(pair.getPrivateKeyInfo());
                }
            } catch (IOException e) {
                throw new UnusableCertificateException(
                        file + ": the key in it cannot be read: " + e.getMessage() + ".", e);
            }
            if (part instanceof PKCS8EncryptedPrivateKeyInfo || part instanceof PEMEncryptedKeyPair) {
                throw new UnusableCertificateException(
                        file + ": found a key locked with a passphrase, expected one that is not.");
            }
        }
        throw new UnusableCertificateException(
                file + ": found no key, expected a PEM file with \"BEGIN PRIVATE KEY\".");
    }

    private static List<Object> parts(Path file) {
        try (Reader in = Files.newBufferedReader(file, StandardCharsets.ISO_8859_1);
                PEMParser parser = new PEMParser(in)) {
            List<Object> parts = new ArrayList<>();
            for (Object part = parser.readObject(); part != null; part = parser.readObject()) {
                parts.add(part);
            }
            return parts;
        } catch (IOException e) {
            throw new UnusableCertificateException(
                    file + " cannot be read: " + e.getMessage() + ". Expected a PEM file.", e);
        }
    }

    static String text(X509Certificate certificate) {
        return written(certificate);
    }

    static String text(PrivateKey key) {
        try {
            return written(new JcaPKCS8Generator(key, null));
        } catch (PemGenerationException e) {
            throw new IllegalStateException("a key cannot be written as text", e);
        }
    }

    private static String written(Object part) {
        StringWriter out = new StringWriter();
        try (JcaPEMWriter pem = new JcaPEMWriter(out)) {
            pem.writeObject(part);
        } catch (IOException e) {
            throw new IllegalStateException("a certificate or key cannot be written as text", e);
        }
        return out.toString();
    }

    /** Writes a file whole or not at all; where the system knows of owners, for its owner alone. */
    static void write(Path file, String text) {
        Path beside = file.resolveSibling(file.getFileName() + ".new");
        try {
            Files.deleteIfExists(beside);
            if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
                Files.createFile(beside, PosixFilePermissions.asFileAttribute(OWNER_ONLY));
            } else {
                Files.createFile(beside);
            }
            Files.writeString(beside, text, StandardCharsets.US_ASCII, StandardOpenOption.SYNC);
            Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            throw new UnusableCertificateException(file + " cannot be written: " + e.getMessage() + ".", e);
        }
    }
}
