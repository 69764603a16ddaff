package fayline.app;

import fayline.app.cli.LanOptions;
import fayline.app.pdf.QrCode;
import fayline.app.usecase.open.OpenShop;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.Roster;
import fayline.app.web.Site;
import fayline.app.web.WebServer;
import fayline.app.web.people.PeopleGate;
import fayline.app.web.people.Trust;
import fayline.store.file.trust.LocalAuthority;
import fayline.store.file.trust.ServerIdentity;
import fayline.store.file.trust.SuppliedCertificate;
import java.io.PrintStream;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Instant;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/** What is put together where the shop's network is let in: people, keys, and what is printed for the first to enter. */
final class ServingNetwork {
    private final LanOptions options;
    private final People people;
    private final ServerIdentity identity;
    private final Trust trust;
    private final String home;

    private ServingNetwork(LanOptions options, People people, ServerIdentity identity, Trust trust, String home) {
        this.options = options;
        this.people = people;
        this.identity = identity;
        this.trust = trust;
        this.home = home;
    }

    /**
     * Puts it together.
     *
     * @throws fayline.store.file.trust.UnusableCertificateException if a certificate or key cannot be used
     */
    static ServingNetwork of(OpenShop open, LanOptions options, Clock clock) {
        People people = new People(open.shop(), open.people(), clock, new SecureRandom());
        NetworkNames names = NetworkNames.now();
        Instant now = clock.instant();
        if (options.supplied().isPresent()) {
            LanOptions.Supplied files = options.supplied().get();
            ServerIdentity identity = SuppliedCertificate.read(files.certificate(), files.key(), now);
            String home = identity.names().stream()
                    .filter(n -> !n.startsWith("*"))
                    .findFirst()
                    .orElse("localhost");
            return new ServingNetwork(options, people, identity, Trust.supplied(), home);
        }
        LocalAuthority authority = LocalAuthority.of(open.path(), now, names.own());
        ServerIdentity identity = authority.serverFor(names.hosts(), names.addresses(), now);
        return new ServingNetwork(
                options,
                people,
                identity,
                new Trust(authority.file(), authority.fingerprint()),
                names.home(identity.names()));
    }

    People people() {
        return people;
    }

    Site.Entrance entrance() {
        return new Site.Entrance(people, trust, home);
    }

    WebServer.Network network() {
        Set<String> names = new HashSet<>(identity.names());
        names.add(home);
        return new WebServer.Network(identity.context(), names, home, new PeopleGate(people));
    }

    /** Says how to enter. */
    void tell(PrintStream out, String address) {
        out.println();
        out.print(QrCode.asText(address));
        out.println("Open " + address + " on the shop's network, or hold a phone's camera on the square.");
        if (home.equals("localhost")) {
            out.println("This machine has no private address on a network, so others cannot reach it under this one."
                    + " Join it to the shop's network, or give --cert and --key.");
        }
        if (trust.isOwn()) {
            out.println(
                    "The browser will warn until the device trusts this shop's own authority: " + address + "trust");
            out.println("says how. Compare there: SHA-256 " + trust.fingerprint());
        }
        Optional<Roster.Known> lead = people.roster().all().stream()
                .filter(p -> p.role() == Role.LEAD && p.password())
                .findFirst();
        if (lead.isEmpty() || options.setUp()) {
            out.println();
            out.println(
                    lead.isEmpty()
                            ? "Nobody may enter yet. To become the lead, open the address and type this code:"
                            : "With this code a lead sets a new password:");
            out.println();
            out.println("    " + people.setUpCode());
            out.println();
            out.println("It works once, within " + people.setUpLife().toMinutes() + " minutes.");
        }
    }
}
