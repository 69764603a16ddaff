package fayline.store.file.trust;

import java.io.IOException;
import java.math.BigInteger;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.GeneralSecurityException;
import java.security.KeyPair;
import java.security.KeyPairGenerator;
import java.security.MessageDigest;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.CertificateEncodingException;
import java.security.cert.X509Certificate;
import java.security.spec.ECGenParameterSpec;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Date;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import org.bouncycastle.asn1.x500.X500Name;
import org.bouncycastle.asn1.x509.BasicConstraints;
import org.bouncycastle.asn1.x509.ExtendedKeyUsage;
import org.bouncycastle.asn1.x509.Extension;
import org.bouncycastle.asn1.x509.GeneralName;
import org.bouncycastle.asn1.x509.GeneralNames;
import org.bouncycastle.asn1.x509.KeyPurposeId;
import org.bouncycastle.asn1.x509.KeyUsage;
import org.bouncycastle.cert.CertIOException;
import org.bouncycastle.cert.X509v3CertificateBuilder;
import org.bouncycastle.cert.jcajce.JcaX509CertificateConverter;
import org.bouncycastle.cert.jcajce.JcaX509v3CertificateBuilder;
import org.bouncycastle.operator.OperatorCreationException;
import org.bouncycastle.operator.jcajce.JcaContentSignerBuilder;

/**
 * A certificate authority of the shop's own: made on first use, kept in {@code trust/} of the data folder, ten years long, on
 * the curve P-256. It can vouch only for private addresses and local names (name constraints, [rfc5280] 4.2.1.10), so that a
 * phone that trusts it trusts it for the shop's network alone. Its key never leaves the folder; the server's own key is made
 * anew at each start and stays in memory.
 */
public final class LocalAuthority {
    private static final String FOLDER = "trust";
    private static final String CERTIFICATE = "authority.crt";
    private static final String KEY = "authority.key";
    private static final String SIGNATURE = "SHA256withECDSA";
    private static final Duration LIFE = Duration.ofDays(3652);

    /** Phones refuse longer ones even from an authority of one's own; common practice is 397 days. */
    private static final Duration SERVER_LIFE = Duration.ofDays(397);

    private static final Duration SLACK = Duration.ofDays(1);
    private final X509Certificate certificate;
    private final PrivateKey key;

    private LocalAuthority(X509Certificate certificate, PrivateKey key) {
        this.certificate = certificate;
        this.key = key;
    }

    /**
     * The authority of a data folder, made where there is none.
     *
     * @param data the data folder
     * @param now the machine's time
     * @param ownName this machine's name on the network, for which the authority may vouch; empty for none
     * @throws UnusableCertificateException if its files are damaged, do not belong together, or it has ended
     */
    public static LocalAuthority of(Path data, Instant now, String ownName) {
        Path folder = data.resolve(FOLDER);
        Path certificate = folder.resolve(CERTIFICATE);
        if (!Files.exists(certificate)) {
            make(folder, now, ownName);
        }
        X509Certificate kept = Pem.certificates(certificate).get(0);
        if (kept.getNotAfter().toInstant().isBefore(now)) {
            throw new UnusableCertificateException(certificate + ": this shop's authority ended "
                    + kept.getNotAfter().toInstant() + ". Move the folder " + folder
                    + " away; a new authority is then made, and each phone must be told to trust it.");
        }
        PrivateKey key = Pem.key(folder.resolve(KEY));
        SuppliedCertificate.requirePair(kept, key, certificate, folder.resolve(KEY));
        return new LocalAuthority(kept, key);
    }

    private static void make(Path folder, Instant now, String ownName) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UnusableCertificateException("The folder " + folder + " cannot be made: " + e.getMessage(), e);
        }
        KeyPair pair = freshPair();
        // a name by which it can be told from others on a phone; nothing of the shop stands in it
        X500Name name = new X500Name("CN=Fayline shop " + HexFormat.of().toHexDigits(serial().intValue()));
        try {
            X509v3CertificateBuilder made = new JcaX509v3CertificateBuilder(
                    name, serial(), Date.from(now.minus(SLACK)), Date.from(now.plus(LIFE)), name, pair.getPublic());
            made.addExtension(Extension.basicConstraints, true, new BasicConstraints(0));
            made.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.keyCertSign | KeyUsage.cRLSign));
            made.addExtension(Extension.subjectKeyIdentifier, false, KeyNames.of(pair.getPublic()));
            made.addExtension(Extension.nameConstraints, true, LocalNames.constraints(ownName));
            Pem.write(folder.resolve(KEY), Pem.text(pair.getPrivate()));
            Pem.write(folder.resolve(CERTIFICATE), Pem.text(signed(made, pair.getPrivate())));
        } catch (CertIOException e) {
            throw new IllegalStateException("the authority's certificate cannot be put together", e);
        }
    }

    /**
     * A fresh certificate for the server, with a fresh key that is kept in memory only.
     *
     * @param hosts this machine's names; those that the authority may not vouch for are left out
     * @param addresses this machine's addresses; only private ones are taken
     * @param now the machine's time
     */
    public ServerIdentity serverFor(Collection<String> hosts, Collection<InetAddress> addresses, Instant now) {
        List<GeneralName> vouched = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (String host : hosts) {
            String lower = host.toLowerCase(Locale.ROOT);
            if (LocalNames.mayVouch(certificate, lower) && !names.contains(lower)) {
                names.add(lower);
                vouched.add(new GeneralName(GeneralName.dNSName, lower));
            }
        }
        for (InetAddress address : addresses) {
            if (LocalNames.isPrivate(address) && !names.contains(LocalNames.text(address))) {
                names.add(LocalNames.text(address));
                vouched.add(new GeneralName(GeneralName.iPAddress, LocalNames.text(address)));
            }
        }
        KeyPair pair = freshPair();
        Instant end = now.plus(SERVER_LIFE);
        Instant last = certificate.getNotAfter().toInstant();
        try {
            X509v3CertificateBuilder made = new JcaX509v3CertificateBuilder(
                    X500Name.getInstance(certificate.getSubjectX500Principal().getEncoded()),
                    serial(),
                    Date.from(now.minus(SLACK)),
                    Date.from(end.isBefore(last) ? end : last),
                    new X500Name("CN=Fayline"),
                    pair.getPublic());
            made.addExtension(Extension.basicConstraints, true, new BasicConstraints(false));
            made.addExtension(Extension.keyUsage, true, new KeyUsage(KeyUsage.digitalSignature));
            made.addExtension(Extension.extendedKeyUsage, false, new ExtendedKeyUsage(KeyPurposeId.id_kp_serverAuth));
            made.addExtension(Extension.subjectKeyIdentifier, false, KeyNames.of(pair.getPublic()));
            made.addExtension(Extension.authorityKeyIdentifier, false, KeyNames.issuer(certificate.getPublicKey()));
            made.addExtension(
                    Extension.subjectAlternativeName, false, new GeneralNames(vouched.toArray(GeneralName[]::new)));
            X509Certificate server = signed(made, key);
            return ServerIdentity.of(pair.getPrivate(), List.of(server, certificate), names);
        } catch (CertIOException e) {
            throw new IllegalStateException("the server's certificate cannot be put together", e);
        }
    }

    /** The authority's certificate, for phones. */
    public X509Certificate certificate() {
        return certificate;
    }

    /** The same as the bytes of a file that phones install. */
    public byte[] file() {
        try {
            return certificate.getEncoded();
        } catch (CertificateEncodingException e) {
            throw new IllegalStateException("the authority's certificate cannot be written", e);
        }
    }

    /** SHA-256 of the certificate in pairs of digits, as phones show it. */
    public String fingerprint() {
        try {
            return HexFormat.ofDelimiter(" ")
                    .withUpperCase()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(file()));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this machine's Java has no SHA-256", e);
        }
    }

    private static KeyPair freshPair() {
        try {
            KeyPairGenerator generator = KeyPairGenerator.getInstance("EC");
            generator.initialize(new ECGenParameterSpec("secp256r1"), new SecureRandom());
            return generator.generateKeyPair();
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("this machine's Java has no curve P-256", e);
        }
    }

    private static BigInteger serial() {
        return new BigInteger(126, new SecureRandom()).setBit(125);
    }

    private static X509Certificate signed(X509v3CertificateBuilder made, PrivateKey by) {
        try {
            return new JcaX509CertificateConverter()
                    .getCertificate(made.build(new JcaContentSignerBuilder(SIGNATURE).build(by)));
        } catch (GeneralSecurityException | OperatorCreationException e) {
            throw new IllegalStateException("a certificate cannot be signed", e);
        }
    }
}
