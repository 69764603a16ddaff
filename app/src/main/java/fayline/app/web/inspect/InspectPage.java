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
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.flow.record.payload.Photo;
import io.javalin.config.RoutesConfig;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Stages, visits and findings: by date or by assembly, and the forms that tell of them. */
public final class InspectPage implements Page, TakesKept {
    private static final String HERE = "/inspections";
    private static final Pattern FORM = Pattern.compile(HERE + "/(visit|finding|put-right|sign-off)");
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
        Outcome tell(Typed typed, Sight sight, Sent sent);
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
        routes.post(HERE + "/visit", ctx -> take(new Visit(ctx), "visit"), Asks.to(Act.INSPECT));
        routes.post(HERE + "/finding", ctx -> take(new Visit(ctx), "finding"), Asks.to(Act.INSPECT));
        routes.post(HERE + "/put-right", ctx -> take(new Visit(ctx), "put-right"), Asks.to(Act.WORK));
        routes.post(HERE + "/sign-off", ctx -> take(new Visit(ctx), "sign-off"), Asks.to(Act.SIGN));
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        Matcher form = FORM.matcher(address);
        return form.matches() ? Optional.of(told(form.group(1)).tell(typed, sight, sent)) : Optional.empty();
    }

    private Told told(String form) {
        return switch (form) {
            case "visit" -> this::held;
            case "finding" -> this::raised;
            case "put-right" -> this::mended;
            default -> this::signed;
        };
    }

    private void take(Visit visit, String form) {
        sights.with(visit, sight -> {
            Outcome outcome = told(form).tell(visit, sight, Sent.live(visit.once(), sight.sender(visit)));
            if (!outcome.stands()) {
                throw new Refusal(
                        outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422,
                        outcome.sentence(),
                        Answers.refused(outcome));
            }
            // several visits and findings have a form each
            visit.say(Answers.said(outcome), (form + "-" + about(visit)).replaceAll("-$", ""));
            visit.lead(HERE + "#visits");
        });
    }

    private static String about(Typed typed) {
        return typed.field("visit") + typed.field("finding");
    }

    private Outcome held(Typed typed, Sight sight, Sent sent) {
        return new HoldVisit(shop)
                .hold(
                        sent,
                        sight.view().project(),
                        new HoldVisit.Held(
                                typed.field("stage"),
                                typed.field("who"),
                                typed.field("own").equals("yes"),
                                typed.text("text").strip(),
                                typed.field("scale"),
                                typed.field("facing")),
                        pictures(typed, sent),
                        at(typed, sight));
    }

    private Outcome raised(Typed typed, Sight sight, Sent sent) {
        return new RaiseFinding(shop)
                .raise(
                        sent,
                        number(typed, "visit"),
                        typed.field("about"),
                        typed.text("text").strip(),
                        pictures(typed, sent),
                        at(typed, sight));
    }

    private Outcome mended(Typed typed, Sight sight, Sent sent) {
        return new AnswerFinding(shop)
                .mend(
                        sent,
                        number(typed, "finding"),
                        typed.text("text").strip(),
                        pictures(typed, sent),
                        at(typed, sight));
    }

    private Outcome signed(Typed typed, Sight sight, Sent sent) {
        return new AnswerFinding(shop)
                .sign(
                        // a signature is judged like one given now, however late it comes
                        Sent.live(sent.client(), sent.by()),
                        number(typed, "finding"),
                        // Where people sign in nobody signs under another name than their own.
                        shop.isJudged() ? "" : typed.field("who"),
                        !typed.field("accepted").equals("no"),
                        typed.text("text").strip(),
                        at(typed, sight));
    }

    private Pictures pictures(Typed typed, Sent sent) {
        Photo.People people = Photo.People.of(typed.field("people")).orElse(Photo.People.UNSAID);
        List<SentPicture> all = typed.parcels("photo").stream()
                .map(p -> new SentPicture(p.length(), p::bytes, false, false, people))
                .toList();
        return all.isEmpty() ? Pictures.NONE : Pictures.sent(all, shop, sent);
    }

    private static long number(Typed typed, String field) {
        String text = typed.field(field);
        if (!text.matches("[0-9]{1,15}")) {
            throw Refusal.input("The form has lost what it is about.");
        }
        return Long.parseLong(text);
    }

    /** The moment that a form names; where it names none, that of its typing on a phone, and nothing means now. */
    private static Optional<Instant> at(Typed typed, Sight sight) {
        String text = typed.field("at");
        try {
            return text.isEmpty()
                    ? typed.moment()
                    : Optional.of(LocalDateTime.parse(text)
                            .atZone(sight.time().zone())
                            .toInstant());
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + text + "\" is no time. Expected one such as 2026-03-02T14:30.");
        }
    }
}
