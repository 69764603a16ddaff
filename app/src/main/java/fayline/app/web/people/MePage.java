package fayline.app.web.people;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.people.Actor;
import fayline.app.usecase.people.DeniedException;
import fayline.app.usecase.people.People;
import fayline.app.usecase.people.Roster;
import fayline.app.usecase.people.SecretRules;
import fayline.app.usecase.people.Way;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** One's own page: who is signed in here, handing the device over, PIN, password, devices and sign-ins. */
public final class MePage implements Page {
    private static final String HERE = "/me";
    private final Sights sights;
    private final ShopRecord shop;
    private final People people;

    /**
     * Makes the page.
     *
     * @param sights shows pages
     * @param shop the record, for its clock
     * @param people the people
     */
    public MePage(Sights sights, ShopRecord shop, People people) {
        this.sights = sights;
        this.shop = shop;
        this.people = people;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        Asks own = Asks.to(Act.KEEP_SELF);
        routes.get(HERE, ctx -> show(new Visit(ctx), List.of()), own);
        routes.post(
                HERE + "/password",
                ctx -> act(
                        new Visit(ctx),
                        "The password is changed; your other sign-ins have ended.",
                        (v, who) -> people.changePassword(who, v.exact("before"), v.exact("password"))),
                own);
        routes.post(
                HERE + "/pin",
                ctx -> act(
                        new Visit(ctx),
                        "The PIN is set.",
                        (v, who) -> people.changePin(who, v.exact("before"), v.exact("pin"))),
                own);
        routes.post(
                HERE + "/end-device",
                ctx -> act(
                        new Visit(ctx),
                        "The device is no longer known.",
                        (v, who) -> people.devices().end(who, v.field("device"))),
                own);
        routes.post(
                HERE + "/end-sign-in",
                ctx -> act(
                        new Visit(ctx),
                        "The sign-in has ended.",
                        (v, who) -> people.signIns().end(who, v.field("sign-in"))),
                own);
    }

    private void act(Visit visit, String done, BiConsumer<Visit, Actor> work) {
        try {
            work.accept(visit, Denied.actor(visit));
            visit.say(done);
            visit.lead(HERE);
        } catch (DeniedException e) {
            Denied.mark(visit, e);
            show(visit, List.of(e.sentence()));
        }
    }

    private void show(Visit visit, List<String> refused) {
        Actor who = Denied.actor(visit);
        ZoneId zone = sights.look(visit).map(s -> s.time().zone()).orElse(ZoneOffset.UTC);
        PeopleWords words = new PeopleWords(people, zone, shop.minute());
        Optional<Roster.Known> known = people.roster().find(who.person());
        MeView view = new MeView(
                refused,
                who.name(),
                who.role().word(),
                switch (who.way()) {
                    case PASSWORD -> "by password";
                    case DEVICE -> "by this device of your own";
                    case PIN -> "by PIN on a device that several share";
                },
                Arrays.stream(Act.values())
                        .filter(who::may)
                        .filter(a -> a != Act.SIGN || people.roster().signs(who.person()))
                        .map(Act::words)
                        .toList(),
                known.filter(Roster.Known::password).isPresent(),
                known.filter(Roster.Known::pin).isPresent(),
                who.way() == Way.PIN,
                people.devices().all().stream()
                        .filter(d -> d.person().equals(who.person()))
                        .map(words::device)
                        .toList(),
                people.signIns().all().stream()
                        .filter(s -> s.person().equals(who.person()))
                        .map(s -> words.signIn(s, who.signIn()))
                        .toList(),
                SecretRules.password(),
                SecretRules.pin());
        sights.show(visit, "people/me.jte", sights.anyFrame(visit, who.name(), HERE), view);
    }
}
