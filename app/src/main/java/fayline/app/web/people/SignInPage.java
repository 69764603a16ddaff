package fayline.app.web.people;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.DeniedException;
import fayline.app.usecase.people.Devices;
import fayline.app.usecase.people.Grant;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.Roster;
import fayline.app.usecase.people.SecretRules;
import fayline.app.usecase.people.SignIns;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Door;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The door: by password, by a one-time code, by PIN on a known device; and out again. */
public final class SignInPage implements Page {
    static final String DOOR = "/sign-in";
    static final Set<String> ADDRESSES = Set.of(DOOR, DOOR + "/code", DOOR + "/pin", DOOR + "/new");
    private static final String GRANT = "grant";
    private final People people;
    private final DoorPages pages;

    /**
     * Makes the page.
     *
     * @param people the people of the shop
     * @param door the door
     */
    public SignInPage(People people, Door door) {
        this.people = people;
        this.pages = new DoorPages(people, door);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(DOOR, ctx -> door(new Visit(ctx)), Asks.NOTHING);
        routes.post(DOOR, ctx -> byPassword(new Visit(ctx)), Asks.NOTHING);
        routes.post(DOOR + "/code", ctx -> byCode(new Visit(ctx)), Asks.NOTHING);
        routes.post(DOOR + "/pin", ctx -> byPin(new Visit(ctx)), Asks.NOTHING);
        routes.get(
                DOOR + "/new",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    grant(visit).ifPresentOrElse(g -> showNew(visit, g, List.of()), () -> visit.lead(DOOR));
                },
                Asks.NOTHING);
        routes.post(DOOR + "/new", ctx -> setNew(new Visit(ctx)), Asks.NOTHING);
        routes.post("/sign-out", ctx -> leave(new Visit(ctx)), Asks.to(Act.KEEP_SELF));
    }

    private void door(Visit visit) {
        if (visit.actor().isPresent()) {
            visit.lead("/");
        } else {
            show(visit, List.of());
        }
    }

    private void show(Visit visit, List<String> refused) {
        Optional<Devices.Device> device = device(visit);
        List<SignInView.Person> here = device.map(this::whoMay).orElse(List.of());
        String back = visit.query("back").isEmpty() ? visit.field("back") : visit.query("back");
        pages.show(
                visit,
                "people/sign-in.jte",
                "Sign in",
                new SignInView(
                        !people.roster().hasLead(),
                        device.map(Devices.Device::label).orElse(""),
                        here,
                        back,
                        visit.field("person")),
                refused);
    }

    private Optional<Devices.Device> device(Visit visit) {
        return Tokens.device(visit).flatMap(people.devices()::of);
    }

    private List<SignInView.Person> whoMay(Devices.Device device) {
        return people.roster().all().stream()
                .filter(Roster.Known::pin)
                .filter(p -> device.person().isEmpty() || device.person().equals(p.person()))
                .map(p -> new SignInView.Person(p.person(), p.name()))
                .toList();
    }

    private void byPassword(Visit visit) {
        attempt(
                visit,
                () -> enter(
                        visit,
                        people.signIns()
                                .byPassword(visit.field("name"), visit.exact("password"), Place.of(visit.context()))));
    }

    private void byPin(Visit visit) {
        attempt(visit, () -> {
            Devices.Device device = device(visit)
                    .orElseThrow(
                            () -> people.notKnown("This device is not paired, or was ended. Ask the lead for a code."));
            enter(visit, people.signIns().byPin(device, visit.field("person"), visit.exact("pin")));
        });
    }

    private void byCode(Visit visit) {
        attempt(visit, () -> {
            Grant grant = people.use(visit.field("code"), Place.of(visit.context()));
            if (grant instanceof Grant.Pairing pairing) {
                pair(visit, pairing);
            } else {
                // the code is used up; what it allows waits in this session for the next page
                pages.door().renew(visit);
                visit.context().sessionAttribute(GRANT, grant);
                visit.lead(DOOR + "/new");
            }
        });
    }

    private void pair(Visit visit, Grant.Pairing pairing) {
        Devices.Paired paired = people.pair(pairing);
        Tokens.giveDevice(visit, paired.token());
        if (pairing.isShared()) {
            pages.door().renew(visit);
            visit.say("This device is known now as \"" + pairing.label() + "\". Pick who you are.");
            visit.lead(DOOR);
        } else {
            SignIns.Entered entered = people.enterOn(paired);
            visit.say("This device is known now as \"" + pairing.label() + "\", and you are signed in as "
                    + entered.actor().name() + ". Set a PIN, so that you can come back when the sign-in ends.");
            give(visit, entered);
            visit.lead("/me");
        }
    }

    /** Does something at the door; where it is refused, shows the door again with the reason. */
    private void attempt(Visit visit, Runnable work) {
        try {
            work.run();
        } catch (DeniedException e) {
            Denied.mark(visit, e);
            show(visit, List.of(e.sentence()));
        }
    }

    private void enter(Visit visit, SignIns.Entered entered) {
        give(visit, entered);
        visit.lead(visit.field("back"));
    }

    /** A fresh session under a fresh token; whatever the browser held before is worth nothing. */
    private void give(Visit visit, SignIns.Entered entered) {
        Tokens.signIn(visit).flatMap(people.signIns()::who).ifPresent(people.signIns()::leave);
        pages.door().renew(visit);
        pages.stays(visit);
        Tokens.giveSignIn(visit, entered.token());
    }

    private static Optional<Grant> grant(Visit visit) {
        return Optional.ofNullable(visit.context().sessionAttribute(GRANT));
    }

    private void showNew(Visit visit, Grant grant, List<String> refused) {
        NewSecretView view;
        if (grant instanceof Grant.NewSecret secret) {
            Optional<Roster.Known> who = people.roster().find(secret.person());
            boolean password = who.filter(p -> p.role() == Role.LEAD).isPresent();
            view = new NewSecretView(
                    secret.person(),
                    who.map(Roster.Known::name).orElse(secret.person()),
                    password,
                    List.of(),
                    password ? SecretRules.password() : SecretRules.pin());
        } else {
            view = new NewSecretView(
                    visit.field("person"),
                    "",
                    true,
                    people.roster().crewList().stream()
                            .map(p -> new SignInView.Person(p.id(), p.name()))
                            .toList(),
                    SecretRules.password());
        }
        pages.show(visit, "people/new-secret.jte", view.password() ? "A password" : "A PIN", view, refused);
    }

    private void setNew(Visit visit) {
        Optional<Grant> grant = grant(visit);
        if (grant.isEmpty()) {
            visit.lead(DOOR);
            return;
        }
        try {
            String person = set(visit, grant.get());
            visit.context().sessionAttribute(GRANT, null);
            if (!person.isEmpty()) {
                enter(visit, people.signIns().byPassword(person, visit.exact("password"), Place.of(visit.context())));
            } else {
                visit.say("Set. You can sign in with it now.");
                visit.lead(DOOR);
            }
        } catch (DeniedException e) {
            Denied.mark(visit, e);
            showNew(visit, grant.get(), List.of(e.sentence()));
        }
    }

    /** Sets what a grant allows; the person where a password was set, empty where a PIN was. */
    private String set(Visit visit, Grant grant) {
        if (grant instanceof Grant.SetUp setUp) {
            people.setUp(setUp, visit.field("person"), visit.exact("password"));
            return visit.field("person");
        }
        if (grant instanceof Grant.NewSecret secret) {
            boolean lead = people.roster()
                    .find(secret.person())
                    .filter(p -> p.role() == Role.LEAD)
                    .isPresent();
            if (lead) {
                people.roster().setPassword(secret.person(), secret.person(), visit.exact("password"));
                return secret.person();
            }
            people.roster().setPin(secret.person(), secret.person(), visit.exact("pin"));
            return "";
        }
        throw new IllegalStateException("a grant that sets nothing: " + grant.getClass());
    }

    private void leave(Visit visit) {
        visit.actor().ifPresent(people.signIns()::leave);
        Tokens.takeSignIn(visit);
        // what this browser kept of the shop's pages goes; entries that wait to be sent are not in the cache
        visit.context().header("Clear-Site-Data", "\"cache\"");
        visit.context().req().getSession().invalidate();
        visit.lead(DOOR);
    }
}
