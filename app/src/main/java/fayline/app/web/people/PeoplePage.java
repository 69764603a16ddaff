package fayline.app.web.people;

import fayline.app.drawing.SvgRenderer;
import fayline.app.pdf.QrCode;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Actor;
import fayline.app.usecase.people.DeniedException;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Role;
import fayline.app.usecase.people.Roster;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.record.Entry;
import io.javalin.config.RoutesConfig;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.function.Supplier;

/** Who may enter, which devices are known, who is signed in; the lead's page. */
public final class PeoplePage implements Page {
    private static final String HERE = "/people";
    private static final int TOLD = 25;
    private static final int LOOKED_BACK = 2000;
    private static final double CODE_MM = 50;
    private final Sights sights;
    private final ShopRecord shop;
    private final People people;
    private final Supplier<String> address;

    /**
     * Makes the page.
     *
     * @param sights shows pages
     * @param shop the record, for its last entries about people
     * @param people the people
     * @param address the address that others open, with its last slash
     */
    public PeoplePage(Sights sights, ShopRecord shop, People people, Supplier<String> address) {
        this.sights = sights;
        this.shop = shop;
        this.people = people;
        this.address = address;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        Asks keeping = Asks.to(Act.KEEP_PEOPLE);
        routes.get(HERE, ctx -> show(new Visit(ctx), List.of()), keeping);
        routes.post(HERE + "/admit", ctx -> act(new Visit(ctx), this::admit), keeping);
        routes.post(HERE + "/role", ctx -> act(new Visit(ctx), this::change), keeping);
        routes.post(
                HERE + "/remove", ctx -> act(new Visit(ctx), (v, by) -> people.remove(by, v.field("person"))), keeping);
        routes.post(
                HERE + "/end-device",
                ctx -> act(new Visit(ctx), (v, by) -> people.devices().end(by, v.field("device"))),
                keeping);
        routes.post(
                HERE + "/end-sign-in",
                ctx -> act(new Visit(ctx), (v, by) -> people.signIns().end(by, v.field("sign-in"))),
                keeping);
        routes.post(HERE + "/pairing", ctx -> code(new Visit(ctx), this::pairing), keeping);
        routes.post(HERE + "/secret", ctx -> code(new Visit(ctx), this::secret), keeping);
    }

    private void act(Visit visit, BiConsumer<Visit, Actor> work) {
        try {
            work.accept(visit, Denied.actor(visit));
            visit.say("Done, and recorded.");
            visit.lead(HERE);
        } catch (DeniedException e) {
            Denied.mark(visit, e);
            show(visit, List.of(e.sentence()));
        }
    }

    private void code(Visit visit, BiFunction<Visit, Actor, CodeView> issue) {
        try {
            CodeView view = issue.apply(visit, Denied.actor(visit));
            sights.show(visit, "people/code.jte", sights.anyFrame(visit, "A one-time code", HERE), view);
        } catch (DeniedException e) {
            Denied.mark(visit, e);
            show(visit, List.of(e.sentence()));
        }
    }

    private void admit(Visit visit, Actor by) {
        people.admit(by, visit.field("person"), visit.field("name"), role(visit));
    }

    private void change(Visit visit, Actor by) {
        people.change(by, visit.field("person"), Role.of(visit.field("was")), role(visit));
    }

    private static Role role(Visit visit) {
        return Role.of(visit.field("role")).orElseThrow(() -> Refusal.input("Choose a role."));
    }

    private CodeView pairing(Visit visit, Actor by) {
        String person = visit.field("person");
        String code = people.pairingCode(by, person, visit.field("label"));
        String door = address.get() + "sign-in";
        String whose = people.roster().find(person).map(Roster.Known::name).orElse("");
        return new CodeView(
                whose.isEmpty()
                        ? "Pairs \"" + visit.field("label") + "\", a device that several share."
                        : "Pairs \"" + visit.field("label") + "\" as " + whose + "'s own device and signs " + whose
                                + " in on it.",
                code,
                door,
                drawing(door + "#" + code),
                List.of(
                        "Hold the phone's camera on the square and open what it finds, or open the address and type the code.",
                        "The first time, the phone asks whether to trust the server: " + address.get()
                                + "trust says how.",
                        "The code works once, within " + people.codeLife().toMinutes() + " minutes."));
    }

    private CodeView secret(Visit visit, Actor by) {
        String person = visit.field("person");
        String code = people.secretCode(by, person);
        boolean lead =
                people.roster().find(person).filter(p -> p.role() == Role.LEAD).isPresent();
        String name = people.roster().find(person).map(Roster.Known::name).orElse(person);
        return new CodeView(
                "Lets " + name + " set a " + (lead ? "password." : "PIN."),
                code,
                address.get() + "sign-in",
                "",
                List.of(
                        name + " opens the address, on a paired tablet or a machine of their own, and types the code.",
                        "The code works once, within " + people.codeLife().toMinutes() + " minutes."));
    }

    private static String drawing(String text) {
        return SvgRenderer.forScreen().render(QrCode.of(text, CODE_MM));
    }

    private void show(Visit visit, List<String> refused) {
        ZoneId zone = sights.look(visit).map(s -> s.time().zone()).orElse(ZoneOffset.UTC);
        PeopleWords words = new PeopleWords(people, zone, shop.minute());
        String here = Denied.actor(visit).signIn();
        List<PeopleView.Person> in = words.everybody();
        PeopleView view = new PeopleView(
                refused,
                in,
                people.roster().crewList().stream()
                        .filter(p -> in.stream().noneMatch(i -> i.id().equals(p.id())))
                        .map(p -> new PeopleView.Person(p.id(), p.name(), "", ""))
                        .toList(),
                people.devices().all().stream().map(words::device).toList(),
                people.signIns().all().stream().map(s -> words.signIn(s, here)).toList(),
                told(words),
                Arrays.stream(Role.values()).map(Role::word).toList(),
                PeopleWords.table(),
                address.get(),
                drawing(address.get()));
        sights.show(visit, "people/people.jte", sights.anyFrame(visit, "People", HERE), view);
    }

    private List<PeopleView.Told> told(PeopleWords words) {
        long head = shop.state().head().seq();
        List<Entry> last = new ArrayList<>(shop.entries(Math.max(1, head - LOOKED_BACK)));
        Collections.reverse(last);
        return last.stream()
                .map(words::told)
                .flatMap(Optional::stream)
                .limit(TOLD)
                .toList();
    }
}
