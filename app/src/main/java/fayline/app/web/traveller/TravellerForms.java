package fayline.app.web.traveller;

import fayline.app.usecase.act.Measured;
import fayline.app.usecase.act.TakeReading;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.traveller.BenchTime;
import fayline.app.usecase.traveller.DrawLot;
import fayline.app.usecase.traveller.LayPly;
import fayline.app.usecase.traveller.LeakDowns;
import fayline.app.usecase.traveller.Missing;
import fayline.app.usecase.traveller.MixCup;
import fayline.app.usecase.traveller.StepAsks;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Typed;
import fayline.app.web.lots.LotCode;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.record.StepRecord;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Reads what is typed on a card about what goes into its step. However late it comes from a phone, it is judged like what is
 * entered now: a wrong material is refused late as well.
 */
public final class TravellerForms {
    private final ShopRecord shop;

    /** On a shop's record. */
    public TravellerForms(ShopRecord shop) {
        this.shop = shop;
    }

    private static Sent judged(Sent sent) {
        return Sent.live(sent.client(), sent.by());
    }

    private static BenchTime time(Typed typed, Optional<Instant> at) {
        return new BenchTime(at, typed.moment());
    }

    private static StepAsks asks(Sight sight, String step) {
        return sight.step(step).map(s -> StepAsks.of(sight.definition(), s)).orElse(StepAsks.NOTHING);
    }

    /** A number typed or scanned counts more than one picked. */
    private static String lot(Typed typed, String field) {
        String own = typed.field(field + "-typed");
        return own.isEmpty() ? typed.field(field) : LotCode.number(own);
    }

    /** Ticks a ply. */
    public Outcome ply(Typed typed, Sight sight, String step, Sent sent, Optional<Instant> at) {
        boolean skipped = typed.field("skipped").equals("yes");
        return new LayPly(shop)
                .lay(
                        judged(sent),
                        step,
                        asks(sight, step),
                        new LayPly.Ticked(
                                typed.field("ply"), "", skipped ? "" : lot(typed, "lot"), skipped, typed.field("why")),
                        time(typed, at));
    }

    /** Records a cup. */
    public Outcome mix(Typed typed, Sight sight, String step, Sent sent, Optional<Instant> at) {
        boolean blind = typed.field("blind").equals("yes");
        if (!blind && typed.field("resin").isEmpty() && typed.field("hardener").isEmpty()) {
            return Outcome.refused(
                    "Type what the scale showed for both parts, or tick that there was no scale reading.");
        }
        return new MixCup(shop)
                .mix(
                        judged(sent),
                        step,
                        asks(sight, step),
                        new MixCup.Cup(
                                typed.field("batch"),
                                typed.field("system"),
                                lot(typed, "resin-lot"),
                                lot(typed, "hardener-lot"),
                                blind ? "" : typed.field("resin"),
                                blind ? "" : typed.field("hardener"),
                                typed.field("why")),
                        time(typed, at));
    }

    /** Draws a lot. */
    public Outcome lot(Typed typed, Sight sight, String step, Sent sent, Optional<Instant> at) {
        return new DrawLot(shop)
                .draw(
                        judged(sent),
                        step,
                        asks(sight, step),
                        new DrawLot.Drawn(
                                lot(typed, "lot"),
                                "",
                                typed.field("amount"),
                                typed.field("override").equals("yes"),
                                typed.field("why")),
                        time(typed, at));
    }

    /** One of the two readings of a leak-down; with the second the verdict is said at once. */
    public Outcome leak(Typed typed, Sight sight, String step, Sent sent, Optional<Instant> at) {
        String minutes = typed.field("minutes");
        boolean start = typed.field("which").equals(LeakDowns.START);
        if (!start && !minutes.matches("[1-9]\\d{0,2}")) {
            return Outcome.refused("\"" + minutes + "\" is no number of minutes. Expected one such as 5.");
        }
        String state = start ? LeakDowns.START : LeakDowns.later(Integer.parseInt(minutes));
        Measured read = new Measured(
                "vacuum", step.substring(step.indexOf('/') + 1), "", state, Map.of("value", typed.field("value")), at);
        Outcome outcome =
                new TakeReading(shop).take(sent, sight.definition().facts().id(), read);
        Optional<StepResult> result = sight.step(step);
        if (start || outcome.kind() != Outcome.Kind.RECORDED || result.isEmpty()) {
            return outcome;
        }
        List<LeakDowns.Test> tests =
                LeakDowns.of(result.get(), new MadeWords(sight, shop.state()).readings(result.get(), "vacuum"));
        if (tests.isEmpty()) {
            return outcome.saying("There is no reading of the start to compare it with.");
        }
        LeakDowns.Test last = tests.get(tests.size() - 1);
        return last.tight()
                ? outcome.saying("Tight: " + last.sentence() + ".")
                : outcome.with(List.of(new Finding(
                        Severity.STOP,
                        step,
                        "Leaks: " + last.sentence() + ". Find the leak before resin is mixed.",
                        "the definition")));
    }

    /**
     * What is missing of a step when its hands leave, each with the reason typed beside it. What a phone tells long afterwards is taken
     * without one, and says so.
     */
    public List<StepRecord.Lack> missing(Typed typed, Sight sight, String step, Sent sent) {
        return sight
                .step(step)
                .map(s -> Missing.of(sight.definition(), s, shop.state(), shop.now()))
                .orElse(List.of())
                .stream()
                .map(m -> new StepRecord.Lack(m.what(), reason(typed.field("why-" + m.key()), sent)))
                .toList();
    }

    private static String reason(String typed, Sent sent) {
        return typed.isEmpty() && !sent.live() ? "Told afterwards by a phone without network; no reason given." : typed;
    }
}
