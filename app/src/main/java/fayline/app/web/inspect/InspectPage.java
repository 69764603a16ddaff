package fayline.app.web.inspect;

import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.inspect.AnswerFinding;
import fayline.app.usecase.inspect.HoldVisit;
import fayline.app.usecase.inspect.Pictures;
import fayline.app.usecase.inspect.RaiseFinding;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.record.payload.Photo;
import io.javalin.config.RoutesConfig;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;

/** Stages, visits and findings: by date or by assembly, and the forms that tell of them. */
public final class InspectPage implements Page {
    private static final String HERE = "/inspections";
    private final Sights sights;
    private final ShopRecord shop;

    /**
     * Makes the page.
     *
     * @param sights shows pages
     * @param shop the record
     */
    public InspectPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    /** One way to tell something. */
    @FunctionalInterface
    private interface Told {
        Outcome tell(Visit visit, Sight sight, Sent sent);
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "inspect/inspect.jte",
                            sights.frame(visit, sight, "Inspections", HERE),
                            new InspectViews(sight).view(!visit.query("order").equals("assembly"))));
        });
        routes.post(HERE + "/visit", ctx -> take(new Visit(ctx), this::held, "#visits"), Asks.to(Act.INSPECT));
        routes.post(HERE + "/finding", ctx -> take(new Visit(ctx), this::raised, "#visits"), Asks.to(Act.INSPECT));
        routes.post(HERE + "/put-right", ctx -> take(new Visit(ctx), this::mended, "#visits"), Asks.to(Act.WORK));
        routes.post(HERE + "/sign-off", ctx -> take(new Visit(ctx), this::signed, "#visits"), Asks.to(Act.SIGN));
    }

    private void take(Visit visit, Told told, String to) {
        sights.with(visit, sight -> {
            Outcome outcome = told.tell(visit, sight, Sent.live(visit.once(), sight.sender(visit)));
            if (!outcome.stands()) {
                throw new Refusal(
                        outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422,
                        outcome.sentence(),
                        Answers.refused(outcome));
            }
            visit.say(outcome.sentence());
            visit.lead(HERE + to);
        });
    }

    private Outcome held(Visit visit, Sight sight, Sent sent) {
        return new HoldVisit(shop)
                .hold(
                        sent,
                        sight.view().project(),
                        new HoldVisit.Held(
                                visit.field("stage"),
                                visit.field("who"),
                                visit.field("own").equals("yes"),
                                visit.text("text").strip(),
                                visit.field("scale"),
                                visit.field("facing")),
                        pictures(visit, sent),
                        at(visit, sight));
    }

    private Outcome raised(Visit visit, Sight sight, Sent sent) {
        return new RaiseFinding(shop)
                .raise(
                        sent,
                        number(visit, "visit"),
                        visit.field("about"),
                        visit.text("text").strip(),
                        pictures(visit, sent),
                        at(visit, sight));
    }

    private Outcome mended(Visit visit, Sight sight, Sent sent) {
        return new AnswerFinding(shop)
                .mend(
                        sent,
                        number(visit, "finding"),
                        visit.text("text").strip(),
                        pictures(visit, sent),
                        at(visit, sight));
    }

    private Outcome signed(Visit visit, Sight sight, Sent sent) {
        return new AnswerFinding(shop)
                .sign(
                        sent,
                        number(visit, "finding"),
                        // Where people sign in nobody signs under another name than their own.
                        visit.actor().isPresent() ? "" : visit.field("who"),
                        !visit.field("accepted").equals("no"),
                        visit.text("text").strip(),
                        at(visit, sight));
    }

    private Pictures pictures(Visit visit, Sent sent) {
        Photo.People people = Photo.People.of(visit.field("people")).orElse(Photo.People.UNSAID);
        List<SentPicture> all = visit.parcels("photo").stream()
                .map(p -> new SentPicture(p.length(), p::bytes, false, false, people))
                .toList();
        return all.isEmpty() ? Pictures.NONE : Pictures.sent(all, shop, sent);
    }

    private static long number(Visit visit, String field) {
        String text = visit.field(field);
        if (!text.matches("[0-9]{1,15}")) {
            throw Refusal.input("The form has lost what it is about.");
        }
        return Long.parseLong(text);
    }

    private static Optional<Instant> at(Visit visit, Sight sight) {
        String typed = visit.field("at");
        try {
            return typed.isEmpty()
                    ? Optional.empty()
                    : Optional.of(LocalDateTime.parse(typed)
                            .atZone(sight.time().zone())
                            .toInstant());
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + typed + "\" is no time. Expected one such as 2026-03-02T14:30.");
        }
    }
}
