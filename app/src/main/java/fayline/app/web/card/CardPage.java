package fayline.app.web.card;

import fayline.app.usecase.act.CorrectStep;
import fayline.app.usecase.act.FinishStep;
import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.Mended;
import fayline.app.usecase.act.NoteStep;
import fayline.app.usecase.act.SentPicture;
import fayline.app.usecase.act.StartStep;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Meanwhile;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.WhyHere;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Overtaken;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.app.web.plan.ReasonWords;
import fayline.app.web.traveller.TravellerForms;
import fayline.app.web.trouble.DeviationsPage;
import fayline.basis.units.Mass;
import fayline.flow.record.payload.Photo;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.step.StepResult;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A card and what is done with it: start, finish, note, reading, correction. Each is one entry; a correction undoes. */
public final class CardPage implements Page, TakesKept {
    private static final String CARD = "/card/{made}/{n}/{key}";
    private static final Pattern FORM = Pattern.compile(
            "/card/([a-z0-9-]+/\\d+/[a-z0-9-]+)/(start|finish|note|reading|correct|ply|mix|lot|leak|wrong)");
    /** How far ahead of the shop's clock a time may lie: clocks of two devices differ by seconds. */
    private static final long SLACK_S = 60;

    /** Where on the card the form was, so that hands full of resin need not look for it again. */
    private static final Map<String, String> PLACES = Map.of(
            "card-ply",
            "#plies",
            "card-mix",
            "#cups",
            "card-lot",
            "#lots",
            "card-leak",
            "#leak-down",
            "card-wrong",
            "#troubles");

    private final Sights sights;
    private final ShopRecord shop;
    private final WhyHere why;
    private final TravellerForms traveller;

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     * @param why says why a step is where it is
     */
    public CardPage(Sights sights, ShopRecord shop, WhyHere why) {
        this.why = why;
        this.traveller = new TravellerForms(shop);
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(CARD, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, step(visit, sight), List.of()));
        });
        routes.post(CARD + "/start", ctx -> act(ctx, "card-start", this::start), Asks.to(Act.WORK));
        routes.post(CARD + "/finish", ctx -> act(ctx, "card-finish", this::finish), Asks.to(Act.WORK, Act.SIGN));
        routes.post(CARD + "/note", ctx -> act(ctx, "card-note", this::note), Asks.to(Act.WORK));
        routes.post(CARD + "/reading", ctx -> act(ctx, "card-reading", this::reading), Asks.to(Act.WORK));
        for (String form : List.of("ply", "mix", "lot", "leak", "wrong")) {
            routes.post(CARD + "/" + form, ctx -> act(ctx, "card-" + form, deed(form)), Asks.to(Act.WORK));
        }
        routes.post(CARD + "/correct", ctx -> act(ctx, "card-correct", this::correct), Asks.to(Act.WORK, Act.SIGN));
    }

    /** What a form does to a step. */
    @FunctionalInterface
    private interface Deed {
        Outcome of(Typed typed, Sight sight, String step, Sent sent);
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        Matcher form = FORM.matcher(address);
        if (!form.matches()) {
            return Optional.empty();
        }
        String step = step(sight, form.group(1));
        if (at(typed, sight).filter(shop.now().plusSeconds(SLACK_S)::isBefore).isPresent()) {
            return Optional.of(
                    Outcome.refused("The time given, " + typed.field("at") + ", is later than the shop's clock."));
        }
        return Optional.of(deed(form.group(2)).of(typed, sight, step, sent));
    }

    private Deed deed(String form) {
        return switch (form) {
            case "start" -> this::start;
            case "finish" -> this::finish;
            case "note" -> this::note;
            case "reading" -> this::reading;
            case "ply" -> (t, sight, step, sent) -> traveller.ply(t, sight, step, sent, at(t, sight));
            case "mix" -> (t, sight, step, sent) -> traveller.mix(t, sight, step, sent, at(t, sight));
            case "lot" -> (t, sight, step, sent) -> traveller.lot(t, sight, step, sent, at(t, sight));
            case "leak" -> (t, sight, step, sent) -> traveller.leak(t, sight, step, sent, at(t, sight));
            case "wrong" ->
                (t, sight, step, sent) -> DeviationsPage.raise(shop, t, step, sent, pictures(t), at(t, sight));
            default -> this::correct;
        };
    }

    private void act(Context ctx, String draft, Deed deed) {
        Visit visit = new Visit(ctx);
        sights.with(visit, sight -> {
            String step = step(visit, sight);
            String by = sight.sender(visit);
            Outcome outcome = deed.of(visit, sight, step, Sent.live(visit.once(), by));
            if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
                // two systems have a form each
                visit.say(
                        Answers.said(outcome), draft.equals("card-mix") ? draft + "-" + visit.field("system") : draft);
                visit.lead(Sight.cardLink(step) + PLACES.getOrDefault(draft, ""));
            } else if (!Overtaken.show(sights, visit, sight, outcome, Sight.cardLink(step))) {
                visit.status(outcome.kind() == Outcome.Kind.UNKNOWN ? 503 : 422);
                show(visit, sight, step, Answers.refused(outcome));
            }
        });
    }

    private Outcome start(Typed typed, Sight sight, String step, Sent sent) {
        List<String> people = typed.fields("people");
        if (people.isEmpty()) {
            return Outcome.refused("Nobody is ticked. Say who works on it.");
        }
        return new StartStep(shop)
                .start(
                        sent.seeing(typed.seenHead()),
                        step,
                        new StartStep.Beginning(
                                people,
                                typed.fields("places"),
                                typed.field("which-way"),
                                typed.field("despite").strip()),
                        at(typed, sight));
    }

    private Outcome finish(Typed typed, Sight sight, String step, Sent sent) {
        return new FinishStep(shop)
                .finish(
                        // a signature is judged like one given now, however late it comes
                        Sent.live(sent.client(), sent.by()),
                        step,
                        new FinishStep.Finish(
                                typed.fields("people"),
                                typed.field("signed"),
                                typed.field("slip"),
                                traveller.missing(typed, sight, step, sent)),
                        at(typed, sight));
    }

    private Outcome note(Typed typed, Sight sight, String step, Sent sent) {
        String text = typed.text("text");
        List<SentPicture> pictures = pictures(typed);
        if (text.isBlank() && pictures.isEmpty()) {
            return Outcome.refused("The note is empty: write something, or take a photo.");
        }
        return new NoteStep(shop).note(sent, step, text.strip(), pictures, at(typed, sight));
    }

    private static List<SentPicture> pictures(Typed typed) {
        boolean original = typed.field("original").equals("yes");
        boolean location = typed.field("location").equals("yes");
        Photo.People people = Photo.People.of(typed.field("people")).orElse(Photo.People.UNSAID);
        return typed.parcels("photo").stream()
                .map(p -> new SentPicture(p.length(), p::bytes, original, location, people))
                .toList();
    }

    private Outcome reading(Typed typed, Sight sight, String step, Sent sent) {
        String kind = typed.field("kind");
        String of = kind.equals("mass") ? step.split("/")[1] : step.substring(step.indexOf('/') + 1);
        Measured measured = new Measured(kind, of, "", "", Map.of("value", typed.field("value")), at(typed, sight));
        return new TakeReading(shop).take(sent, sight.definition().facts().id(), measured, reckoned(sight, step, kind));
    }

    /** What was reckoned for what is weighed: the part, or all that this step mixes. */
    private static Optional<Mass> reckoned(Sight sight, String step, String kind) {
        if (kind.equals("mass")) {
            String made = step.split("/")[1];
            return sight.result().parts().stream()
                    .filter(p -> p.part().equals(made))
                    .map(PartResult::asMade)
                    .findFirst();
        }
        double mixKg = sight.step(step).map(StepResult::batches).orElse(List.of()).stream()
                .mapToDouble(b -> b.batch().kilograms())
                .max()
                .orElse(0);
        return kind.equals("mix") && mixKg > 0 ? Optional.of(Mass.ofKilograms(mixKg)) : Optional.empty();
    }

    private Outcome correct(Typed typed, Sight sight, String step, Sent sent) {
        String asked = typed.field("entry");
        Optional<Outcome> before = SentBefore.correction(shop, sent, typed, at(typed, sight));
        if (before.isPresent()) {
            return before.get();
        }
        CorrectStep act = new CorrectStep(shop);
        Sent seeing = sent.seeing(typed.seenHead());
        List<Meanwhile> meanwhile =
                asked.matches("\\d{1,15}") ? act.meanwhile(seeing, Long.parseLong(asked)) : List.of();
        if (!meanwhile.isEmpty()) {
            return Outcome.overtaken(meanwhile);
        }
        if (!asked.matches("\\d{1,15}")
                || CardRecord.of(sight, shop.state(), step).stream()
                        .noneMatch(r -> String.valueOf(r.entry()).equals(asked))) {
            return Outcome.refused("Choose which entry was wrong.");
        }
        long entry = Long.parseLong(asked);
        String why = typed.field("why");
        if (why.isEmpty()) {
            return Outcome.refused("Say why, so that the record can be understood later.");
        }
        if (typed.field("how").equals("withdraw")) {
            return act.withdraw(seeing, entry, why);
        }
        String kind = CardRecord.of(sight, shop.state(), step).stream()
                .filter(r -> r.entry() == entry)
                .map(CardView.Recorded::kind)
                .findFirst()
                .orElse("");
        Mended mended;
        if (kind.equals("note")) {
            mended = Mended.note(typed.field("value"));
        } else if (kind.equals("reading")) {
            mended = Mended.value(typed.field("value"));
        } else {
            if (typed.field("at").isEmpty()) {
                return Outcome.refused("Say when it really was.");
            }
            mended = Mended.time(at(typed, sight).orElseThrow());
        }
        return act.correct(seeing, entry, mended, why);
    }

    private void show(Visit visit, Sight sight, String step, List<String> refused) {
        CardView view = CardViews.of(
                sight,
                shop,
                step,
                visit,
                refused,
                why.of(sight.view(), step).map(r -> ReasonWords.of(sight, r)).orElse(""));
        sights.show(visit, "card.jte", sights.frame(visit, sight, view.sheet().title(), ""), view);
    }

    private static String step(Visit visit, Sight sight) {
        return step(sight, visit.inPath("made") + "/" + visit.inPath("n") + "/" + visit.inPath("key"));
    }

    private static String step(Sight sight, String inProject) {
        String step = sight.definition().facts().id() + "/" + inProject;
        if (sight.step(step).isEmpty()) {
            throw Refusal.absent(
                    "card of that step in " + sight.definition().facts().name());
        }
        return step;
    }

    /** The moment that a form names in the shop's time; where the field is empty, that of typing, and nothing means now. */
    private static Optional<Instant> at(Typed typed, Sight sight) {
        String text = typed.field("at");
        if (text.isEmpty()) {
            return typed.moment();
        }
        try {
            return Optional.of(
                    LocalDateTime.parse(text).atZone(sight.time().zone()).toInstant());
        } catch (DateTimeParseException e) {
            throw Refusal.input("\"" + text + "\" is no time. Expected one such as 2026-03-02T07:30.");
        }
    }
}
