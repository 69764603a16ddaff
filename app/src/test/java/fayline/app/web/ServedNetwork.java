package fayline.app.web;

import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.people.Grant;
import fayline.app.usecase.people.MovedClock;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LeastFinish;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.web.people.PeopleGate;
import fayline.app.web.people.Trust;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.store.file.trust.LocalAuthority;
import fayline.store.file.trust.ServerIdentity;
import java.net.InetAddress;
import java.nio.file.Path;
import java.security.KeyStore;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javax.net.ssl.SSLContext;
import javax.net.ssl.TrustManagerFactory;

/** The demonstration served to the shop's network over TLS by an authority of its own; the clock of sign-ins can be moved. */
record ServedNetwork(
        OpenShop open, People people, MovedClock clock, WebServer server, LocalAuthority authority, SSLContext client)
        implements AutoCloseable {
    static final String PASSWORD = "seven planks under the tarpaulin";
    static final String PIN = "402917";

    static ServedNetwork in(Path folder) throws Exception {
        MovedClock clock = new MovedClock();
        OpenShop open = ServedDemo.open(folder.resolve("data"));
        People people = new People(open.shop(), open.people(), clock, new SecureRandom());
        LocalAuthority authority = LocalAuthority.of(folder, Instant.now(), "");
        ServerIdentity identity =
                authority.serverFor(List.of("localhost"), List.of(InetAddress.getLoopbackAddress()), Instant.now());
        ShopRecord judged = open.shop().judgedBy(people.judge());
        LookAtShop looking = new LookAtShop(judged);
        Site site = new Site(
                judged,
                looking,
                new LeastFinish(folder.resolve("library")),
                open::sign,
                "test",
                Optional.of(
                        new Site.Entrance(people, new Trust(authority.file(), authority.fingerprint()), "127.0.0.1")));
        WebServer server = WebServer.start(
                0,
                Optional.of(new WebServer.Network(
                        identity.context(), Set.copyOf(identity.names()), "127.0.0.1", new PeopleGate(people))),
                site);
        return new ServedNetwork(open, people, clock, server, authority, trusting(authority));
    }

    private static SSLContext trusting(LocalAuthority authority) throws Exception {
        KeyStore trust = KeyStore.getInstance("PKCS12");
        trust.load(null, new char[0]);
        trust.setCertificateEntry("authority", authority.certificate());
        TrustManagerFactory managers = TrustManagerFactory.getInstance("PKIX");
        managers.init(trust);
        SSLContext client = SSLContext.getInstance("TLS");
        client.init(null, managers.getTrustManagers(), null);
        return client;
    }

    /** A browser that trusts the authority. */
    Browser browser() {
        return new Browser(server, client);
    }

    /** Takes everybody out, so that a test begins at the beginning. */
    void empty() {
        open.people().devices().forEach(d -> open.people().removeDevice(d.id()));
        open.people().people().forEach(p -> open.people().removePerson(p.person()));
        // waits that another test earned are over
        clock.by(java.time.Duration.ofHours(1));
    }

    /** The number of the record's last entry. */
    long head() {
        return open.shop().state().head().seq();
    }

    /** The entries of a kind that were made after one. */
    List<Entry> told(long after, EntryKind kind) {
        return open.shop().entries(after + 1).stream()
                .filter(e -> e.kind().equals(kind.key()))
                .toList();
    }

    /** Somebody of the shop's list. */
    String person(int n) {
        return open.shop().definitions().get(0).shop().people().items().get(n).id();
    }

    /** Makes the first of the list lead, as the console does. */
    String lead() {
        String lead = person(0);
        people.setUp(new Grant.SetUp(), lead, PASSWORD);
        return lead;
    }

    /** Lets somebody in with a PIN. */
    String admit(int n, Role role) {
        String id = role == Role.VIEWER ? "" : person(n);
        String known = people.roster()
                .admit(person(0), id, role == Role.VIEWER ? "Guest " + n : "", role)
                .person();
        people.roster().setPin(person(0), known, PIN);
        return known;
    }

    /** A browser in which somebody is signed in by a device of their own. */
    Browser phoneOf(String person) throws Exception {
        Browser browser = browser();
        browser.code(pairingCode(person, "phone of " + person));
        return browser;
    }

    /** A browser in which the lead is signed in by password. */
    Browser leadAtDesk() throws Exception {
        Browser browser = browser();
        browser.send("/sign-in", "/sign-in", "name", person(0), "password", PASSWORD);
        return browser;
    }

    /** A code that pairs a device; shared where the person is empty. */
    String pairingCode(String person, String label) {
        return people.pairingCode(
                people.signIns()
                        .byPassword(person(0), PASSWORD, "desk " + label)
                        .actor(),
                person,
                label);
    }

    @Override
    public void close() {
        server.close();
        open.close();
    }
}
