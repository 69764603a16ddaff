package fayline.store.file.trust;

import java.io.IOException;
import java.security.GeneralSecurityException;
import java.security.KeyStore;
import java.security.PrivateKey;
import java.security.SecureRandom;
import java.security.cert.X509Certificate;
import java.time.Instant;
import java.util.List;
import javax.net.ssl.KeyManagerFactory;
import javax.net.ssl.SSLContext;

/**
 * What the server shows to whoever connects.
 *
 * @param context its key and certificates, ready for TLS
 * @param names the host names and addresses that the certificate vouches for, lower case
 * @param until when the certificate ends
 */
public record ServerIdentity(SSLContext context, List<String> names, Instant until) {
    /** Copies the list. */
    public ServerIdentity {
        names = List.copyOf(names);
    }

    static ServerIdentity of(PrivateKey key, List<X509Certificate> chain, List<String> names) {
        try {
            // kept in memory only: the store is a vessel, its password no secret
            char[] none = new char[0];
            KeyStore keys = KeyStore.getInstance("PKCS12");
            keys.load(null, none);
            keys.setKeyEntry("server", key, none, chain.toArray(X509Certificate[]::new));
            KeyManagerFactory managers = KeyManagerFactory.getInstance(KeyManagerFactory.getDefaultAlgorithm());
            managers.init(keys, none);
            SSLContext context = SSLContext.getInstance("TLS");
            context.init(managers.getKeyManagers(), null, new SecureRandom());
            return new ServerIdentity(context, names, chain.get(0).getNotAfter().toInstant());
        } catch (GeneralSecurityException | IOException e) {
            throw new IllegalStateException("this machine's Java cannot hold a certificate", e);
        }
    }
}
