package fayline.app.pdf.fitcard;

import fayline.app.pdf.CardSheet.Pair;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.flow.reading.WidthReading;
import fayline.flow.result.fit.frame.WidthAnswer;
import fayline.flow.result.fit.frame.WidthAnswer.Bonded;
import fayline.flow.result.fit.frame.WidthAnswer.Stage;
import fayline.flow.result.fit.frame.WidthLesson;
import fayline.method.fitup.frame.trial.TrialFitResult;
import fayline.method.fitup.frame.trial.TrialFitResult.From;
import fayline.method.fitup.frame.trial.TrialFitResult.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Puts the widths of a frame into words.
 *
 * @param format the reader's units
 * @param names the name of whoever read it, by id
 */
public record WidthWords(QuantityFormat format, UnaryOperator<String> names) {
    /** Names of the facts that a card on paper needs. */
    static final String WANTED = "Wanted bonded";

    static final String TO_FIND = "To find clamped";
    static final String BEGIN = "Begin bare at";
    static final String SET = "Set bare to";
    static final String BONDED = "As bonded";
    private static final double LEAST_MM = 0.05;

    /** One width in words. */
    public WidthSheet sheet(WidthAnswer a) {
        return new WidthSheet(
                a.width().id(), a.width().where(), verdict(a), a.stage() == Stage.WAIT, facts(a), says(a), why(a));
    }

    /** What a frame taught of a width, in a sentence for its opposite hand. */
    public String lesson(WidthLesson l) {
        StringBuilder s = new StringBuilder("Width " + l.width() + ": the sheet sprang the frame by "
                + change(l.sprungMm()) + " at a bare width of " + width(l.bareMm()));
        l.follow()
                .ifPresent(r -> s.append(
                        String.format(Locale.ROOT, "; the clamped width followed the bare one by %.2f for 1", r)));
        l.bondTookMm()
                .ifPresent(b -> s.append("; from the last trial to as bonded it changed by ")
                        .append(change(b)));
        return s.append('.').toString();
    }

    /** A width to a tenth of a millimetre or a thou however large: a frame is set to less than its size is told to. */
    public String width(double mm) {
        return format.system() == UnitSystem.METRIC
                ? String.format(Locale.ROOT, "%.1f mm", mm)
                : String.format(Locale.ROOT, "%.3f in", Length.ofMillimetres(mm).inches());
    }

    private String change(double mm) {
        return Math.abs(mm) < LEAST_MM ? "nothing" : width(Math.abs(mm)) + (mm < 0 ? " inwards" : " outwards");
    }

    private static String verdict(WidthAnswer a) {
        if (a.stage() == Stage.BONDED) {
            return a.bonded().filter(Bonded::within).isPresent()
                    ? "Bonded, within its tolerance"
                    : "Bonded, outside its tolerance";
        }
        return a.trial()
                .map(t -> switch (t.verdict()) {
                    case TRY_AGAIN -> "No adhesive yet: one more trial";
                    case READY -> "Bond at this bare width";
                    case READ_AGAIN -> "No adhesive yet: read the widths again";
                })
                .orElse("No adhesive yet: make a trial");
    }

    private List<Pair> facts(WidthAnswer a) {
        List<Pair> all = new ArrayList<>();
        all.add(new Pair(
                WANTED,
                a.width().wanted().asTyped() + " ± " + a.width().tolerance().asTyped()));
        a.bonded().ifPresent(b -> bonded(b, all));
        if (a.stage() != Stage.BONDED && !a.allowance().origin().isEmpty()) {
            all.add(new Pair(TO_FIND, width(a.aimMm())));
        }
        a.startMm().ifPresent(s -> all.add(new Pair(BEGIN, width(s) + ", as taught")));
        a.trial().filter(t -> t.verdict() != Verdict.READ_AGAIN).ifPresent(t -> trial(a, t, all));
        return all;
    }

    private void bonded(Bonded b, List<Pair> all) {
        all.add(new Pair(BONDED, width(b.mm()) + ", " + off(b.offMm())));
        b.tookMm().ifPresent(t -> all.add(new Pair("Since the last trial", change(t))));
    }

    private String off(double mm) {
        return Math.abs(mm) < LEAST_MM ? "as wanted" : width(Math.abs(mm)) + (mm < 0 ? " too narrow" : " too wide");
    }

    private void trial(WidthAnswer a, TrialFitResult r, List<Pair> all) {
        if (a.stage() != Stage.BONDED) {
            all.add(new Pair(SET, width(r.bareMm())));
            all.add(new Pair(
                    "Sure to",
                    width(r.stdMm())
                            + (r.followFrom() == From.ASSUMED ? ", not knowing how it gives" : ", from the readings")));
            if (r.followFrom() == From.ASSUMED) {
                all.add(new Pair(
                        "At the farthest", width(r.farthestBareMm()) + ", were the frame as soft as its sheet"));
            }
        }
        all.add(new Pair("Sheet springs it", change(r.sprungMm())));
        all.add(new Pair("Last trial", off(r.offMm())));
        all.add(new Pair("Follows the bare width", String.format(Locale.ROOT, "%.2f for 1", r.follow()) + from(r)));
    }

    private static String from(TrialFitResult r) {
        return switch (r.followFrom()) {
            case TRIALS -> ", by the trials";
            case GIVEN -> ", as taught";
            case ASSUMED -> ", assumed";
        };
    }

    private List<String> says(WidthAnswer a) {
        List<String> all = new ArrayList<>();
        if (a.stage() == Stage.BONDED) {
            return all;
        }
        if (!a.allowance().origin().isEmpty()) {
            all.add("The bond changes it by " + change(a.allowance().mm()) + ": "
                    + a.allowance().origin()
                    + (a.allowance().deviationMm().isPresent()
                            ? ", standard uncertainty "
                                    + width(a.allowance().deviationMm().getAsDouble())
                            : "")
                    + ".");
        }
        a.lesson()
                .filter(l -> a.startMm().isPresent() || followsLesson(a))
                .ifPresent(l -> all.add("Taught by " + l.from() + "."));
        Optional<TrialFitResult> trial = a.trial();
        trial.ifPresent(t -> t.findings().stream()
                .filter(f -> f.about().equals("trials"))
                .map(f -> f.sentence(format.system()))
                .forEach(all::add));
        if (trial.isEmpty()) {
            all.add(
                    "Measure the bare frame, clamp the sheet on dry and measure again: that is one trial. Two are made before"
                            + " any adhesive.");
            return all;
        }
        TrialFitResult t = trial.get();
        switch (t.verdict()) {
            case READY -> all.add("The last trial came out within tolerance: bond at this bare width.");
            case TRY_AGAIN ->
                all.add((Math.abs(t.offMm()) <= a.width().tolerance().value().millimetres()
                                ? "Take the sheet off, clamp it on "
                                : "Set the bare frame to " + width(t.bareMm()) + ", clamp the sheet on dry ")
                        + (whole(a) == 1 ? "a second time" : "once more")
                        + " and read again before any adhesive: once bonded nothing can be bent.");
            case READ_AGAIN -> all.add("No adhesive yet: the widths do not agree.");
        }
        return all;
    }

    private static boolean followsLesson(WidthAnswer a) {
        return a.trial().filter(t -> t.followFrom() == From.GIVEN).isPresent();
    }

    private static long whole(WidthAnswer a) {
        return a.trials().stream().filter(WidthAnswer.MadeTrial::whole).count();
    }

    private List<String> why(WidthAnswer a) {
        List<String> all = new ArrayList<>();
        a.trials().forEach(t -> t.readings().forEach(r -> all.add(reading(r))));
        all.add("Wanted: " + a.width().wanted().asTyped() + ", tolerance "
                + a.width().tolerance().asTyped() + ", standard uncertainty of one width "
                + a.width().deviation().asTyped() + ", entered in the definition.");
        if (!a.allowance().origin().isEmpty()) {
            all.add("The bond changes it by " + change(a.allowance().mm()) + ", "
                    + a.allowance().origin() + "; with the sheet clamped on " + width(a.aimMm()) + " is to be found.");
        }
        a.lesson().ifPresent(l -> all.add("From " + l.from() + ". " + lesson(l)));
        if (a.trial().isEmpty()) {
            a.startMm()
                    .ifPresent(s ->
                            all.add("Begin with = the bare width of its last trial + (width to find - clamped width"
                                    + " there) / share by which the width follows, 1 where that is not known."));
            return all;
        }
        TrialFitResult r = a.trial().get();
        all.add(
                r.followFrom() == From.TRIALS
                        ? "Bare width to aim for: where the straight line through the trials, clamped width against bare width,"
                                + " has the width to find."
                        : "Bare width to aim for: bare + (width to find - clamped) / share by which the width follows.");
        all.add(String.format(
                Locale.ROOT,
                "Share by which the width follows: %.2f%s.%s",
                r.follow(),
                from(r),
                r.followStd().isPresent()
                        ? String.format(
                                Locale.ROOT,
                                " Its standard uncertainty is %.2f.",
                                r.followStd().getAsDouble())
                        : ""));
        all.add("Linear: frame and sheet as two springs; repeats of one trial are averaged.");
        all.add("Source: common practice, no source; uncertainties to first order [jcgm100]");
        return all;
    }

    private String reading(WidthReading r) {
        return "Trial " + r.trial() + ", " + r.state().words() + ": " + r.typed() + ", read by " + names.apply(r.by())
                + (r.instrument().isEmpty() ? "" : " with " + r.instrument()) + ", entry " + r.seq() + ".";
    }
}
