package fayline.store.file.trust;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.InputStream;
import java.net.InetAddress;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.KeyStore;
import java.security.cert.X509Certificate;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import javax.net.ssl.SNIHostName;
import javax.net.ssl.SSLContext;
import javax.net.ssl.SSLHandshakeException;
import javax.net.ssl.SSLParameters;
import javax.net.ssl.SSLServerSocket;
import javax.net.ssl.SSLSocket;
import javax.net.ssl.TrustManagerFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class LocalAuthorityTest {
    /** Real, since a handshake asks the machine whether the certificate is good now. */
    private final Instant now = Instant.now();

    @TempDir
    Path folder;

    private ServerIdentity server(LocalAuthority authority) throws Exception {
        return authority.serverFor(
                List.of("localhost", "bench.local", "shop.example.com"),
                List.of(InetAddress.getLoopbackAddress(), InetAddress.getByName("192.168.7.4"), byText("8.8.8.8")),
                now);
    }

    private static InetAddress byText(String address) throws Exception {
        return InetAddress.getByName(address);
    }

    @Test
    void should_make_one_authority_and_keep_it() {
        LocalAuthority first = LocalAuthority.of(folder, now, "bench");
        LocalAuthority again = LocalAuthority.of(folder, now.plus(Duration.ofDays(400)), "bench");
        assertThat(again.fingerprint()).isEqualTo(first.fingerprint()).matches("([0-9A-F]{2} ){31}[0-9A-F]{2}");
        assertThat(LocalAuthority.of(folder.resolve("other"), now, "bench").fingerprint())
                .isNotEqualTo(first.fingerprint());
    }

    @Test
    void should_keep_the_key_for_its_owner_alone() throws Exception {
        LocalAuthority.of(folder, now, "");
        Path key = folder.resolve("trust/authority.key");
        assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(key)))
                .isEqualTo("rw-------");
        try (Stream<Path> files = Files.list(folder.resolve("trust"))) {
            assertThat(files.map(p -> p.getFileName().toString()))
                    .containsExactlyInAnyOrder("authority.key", "authority.crt");
        }
    }

    @Test
    void should_vouch_for_private_addresses_and_local_names_only() throws Exception {
        LocalAuthority authority = LocalAuthority.of(folder, now, "bench-pc");
        assertThat(server(authority).names()).containsExactly("localhost", "bench.local", "127.0.0.1", "192.168.7.4");
        assertThat(authority
                        .serverFor(List.of("bench-pc", "other-pc"), List.of(), now)
                        .names())
                .containsExactly("bench-pc");
        X509Certificate ca = authority.certificate();
        assertThat(ca.getBasicConstraints()).isZero();
        assertThat(ca.getCriticalExtensionOIDs()).contains("2.5.29.30");
        assertThat(ca.getSigAlgName()).isEqualTo("SHA256withECDSA");
    }

    @Test
    void should_be_trusted_by_whoever_trusts_the_authority_and_by_nobody_else() throws Exception {
        LocalAuthority authority = LocalAuthority.of(folder, now, "");
        ServerIdentity identity = server(authority);
        assertThat(Duration.between(now, identity.until())).isLessThan(Duration.ofDays(398));
        assertThat(handshake(identity, authority.certificate())).startsWith("TLSv1.3");
        LocalAuthority stranger = LocalAuthority.of(folder.resolve("other"), now, "");
        assertThatThrownBy(() -> handshake(identity, stranger.certificate())).isInstanceOf(SSLHandshakeException.class);
    }

    /** Connects as a client that trusts one certificate alone; the version of TLS agreed on. */
    private static String handshake(ServerIdentity identity, X509Certificate trusted) throws Exception {
        KeyStore trust = KeyStore.getInstance("PKCS12");
        trust.load(null, new char[0]);
        trust.setCertificateEntry("authority", trusted);
        TrustManagerFactory managers = TrustManagerFactory.getInstance("PKIX");
        managers.init(trust);
        SSLContext client = SSLContext.getInstance("TLS");
        client.init(null, managers.getTrustManagers(), null);
        try (SSLServerSocket listening = (SSLServerSocket) identity.context()
                .getServerSocketFactory()
                .createServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            Thread answering = new Thread(() -> {
                try (SSLSocket one = (SSLSocket) listening.accept();
                        InputStream in = one.getInputStream()) {
                    in.read();
                } catch (java.io.IOException e) {
                    // the client refused, as one of the tests wants it
                    return;
                }
            });
            answering.start();
            try (SSLSocket socket = (SSLSocket) client.getSocketFactory()
                    .createSocket(InetAddress.getLoopbackAddress(), listening.getLocalPort())) {
                SSLParameters asked = socket.getSSLParameters();
                asked.setEndpointIdentificationAlgorithm("HTTPS");
                asked.setServerNames(List.of(new SNIHostName("localhost")));
                socket.setSSLParameters(asked);
                socket.startHandshake();
                socket.getOutputStream().write(1);
                return socket.getSession().getProtocol();
            } finally {
                answering.join();
            }
        }
    }

    @Test
    void should_say_what_to_do_when_the_authority_has_ended() {
        LocalAuthority.of(folder, now, "");
        assertThatThrownBy(() -> LocalAuthority.of(folder, now.plus(Duration.ofDays(3700)), ""))
                .isInstanceOf(UnusableCertificateException.class)
                .hasMessageContaining("authority.crt")
                .hasMessageContaining("ended")
                .hasMessageContaining("Move the folder");
    }

    @Test
    void should_read_supplied_files_and_name_the_one_that_is_wrong() throws Exception {
        LocalAuthority.of(folder, now, "");
        LocalAuthority.of(folder.resolve("other"), now, "");
        Path certificate = folder.resolve("trust/authority.crt");
        Path key = folder.resolve("trust/authority.key");
        Path otherKey = folder.resolve("other/trust/authority.key");
        assertThatThrownBy(() -> SuppliedCertificate.read(certificate, otherKey, now))
                .isInstanceOf(UnusableCertificateException.class)
                .hasMessageContaining(otherKey.toString())
                .hasMessageContaining("another certificate");
        assertThatThrownBy(() -> SuppliedCertificate.read(key, key, now))
                .hasMessageContaining(key.toString())
                .hasMessageContaining("found no certificate");
        assertThatThrownBy(() -> SuppliedCertificate.read(certificate, certificate, now))
                .hasMessageContaining("found no key");
        assertThatThrownBy(() -> SuppliedCertificate.read(certificate, folder.resolve("none.key"), now))
                .hasMessageContaining("none.key");
        assertThatThrownBy(() -> SuppliedCertificate.read(certificate, key, now.minus(Duration.ofDays(30))))
                .hasMessageContaining("valid from");
        assertThatThrownBy(() -> SuppliedCertificate.read(certificate, key, now))
                .hasMessageContaining("no host name");
    }

    @Test
    void should_take_a_supplied_certificate_with_its_names() throws Exception {
        LocalAuthority authority = LocalAuthority.of(folder, now, "");
        ProcessBuilder openssl = new ProcessBuilder(
                "openssl",
                "req",
                "-x509",
                "-newkey",
                "rsa:2048",
                "-nodes",
                "-days",
                "30",
                "-subj",
                "/CN=x",
                "-addext",
                "subjectAltName=DNS:Bench.example.org,IP:192.168.7.9",
                "-keyout",
                folder.resolve("s.key").toString(),
                "-out",
                folder.resolve("s.crt").toString());
        org.junit.jupiter.api.Assumptions.assumeTrue(
                Files.isExecutable(Path.of("/usr/bin/openssl")), "no second program here that makes certificates");
        assertThat(openssl.redirectErrorStream(true)
                        .redirectOutput(folder.resolve("log").toFile())
                        .start()
                        .waitFor())
                .isZero();
        ServerIdentity supplied =
                SuppliedCertificate.read(folder.resolve("s.crt"), folder.resolve("s.key"), Instant.now());
        assertThat(supplied.names()).containsExactly("bench.example.org", "192.168.7.9");
        assertThat(authority.fingerprint()).isNotEmpty();
    }
}
