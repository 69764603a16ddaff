package fayline.method.fitup.frame.trial;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The bare width at which a frame with its sheet has the wanted width. Frame and sheet are two springs side by side: the clamped
 * width follows the bare width by frame/(frame + sheet), never more than one for one. One trial cannot tell this share: taken one
 * for one the frame is bent least and not beyond the aim, and a second trial is asked for; two give it by the secant, more by
 * least squares. Common practice, no source, as far as it says to set under and try again.
 */
public final class TrialFitCalculator {
    private static final String PRACTICE = "common practice, no source";
    private static final double SOFT = 0.5;
    private static final double SURE = 3;
    private static final double LEAST_FOLLOW = 0.05;
    private static final double ROUNDING = 1e-9;

    private TrialFitCalculator() {}

    /** Answers the question. */
    public static TrialFitResult calculate(TrialFit fit) {
        if (fit.trials().size() == 1) {
            return byOne(fit, false);
        }
        TrialLine line = new TrialLine(fit.trials(), fit.readingMm());
        double follow = line.follow();
        double std = line.followStd();
        boolean contradicts = follow - SURE * std > 1 + ROUNDING || follow + SURE * std < LEAST_FOLLOW;
        boolean tells = Double.isFinite(follow) && follow > LEAST_FOLLOW && follow > 2 * std;
        return tells && !contradicts ? byTrials(fit, line, follow, std) : byOne(fit, contradicts);
    }

    private static TrialFitResult byTrials(TrialFit fit, TrialLine line, double follow, double followStd) {
        double bare = line.bareFor(fit.wantedMm());
        List<Finding> findings = new ArrayList<>();
        boolean contradicts = line.worstOffMm().orElse(0)
                > SURE * Math.max(fit.readingMm() * Math.hypot(1, follow), Math.ulp(fit.wantedMm()) * 16);
        TrialFitResult.Verdict verdict = verdict(fit, contradicts);
        tell(fit, verdict, bare, findings);
        return new TrialFitResult(
                verdict,
                bare,
                line.bareStd(fit.wantedMm()),
                bare,
                follow,
                OptionalDouble.of(followStd),
                TrialFitResult.From.TRIALS,
                last(fit).sprungMm(),
                off(fit),
                line.clampedStd(bare),
                List.of(figure(fit, bare, "straight line through the trials")),
                findings);
    }

    private static TrialFitResult byOne(TrialFit fit, boolean contradicts) {
        Trial last = last(fit);
        double follow = fit.follow().orElse(1);
        double missing = fit.wantedMm() - last.clampedMm();
        double bare = last.bareMm() + missing / follow;
        boolean given = fit.follow().isPresent();
        double farthest = given ? bare : last.bareMm() + missing / SOFT;
        double readings = fit.readingMm() * Math.hypot(1, 1 / follow);
        // The unknown share: anywhere between one for one and half, alike likely.
        double unknown = Math.abs(farthest - bare) / Math.sqrt(12);
        TrialFitResult.Verdict verdict = verdict(fit, contradicts);
        List<Finding> findings = new ArrayList<>();
        if (fit.trials().size() > 1 && verdict != TrialFitResult.Verdict.READY) {
            findings.add(useless(contradicts));
        }
        tell(fit, verdict, bare, findings);
        return new TrialFitResult(
                verdict,
                bare,
                Math.hypot(readings, unknown),
                farthest,
                follow,
                OptionalDouble.empty(),
                given ? TrialFitResult.From.GIVEN : TrialFitResult.From.ASSUMED,
                last.sprungMm(),
                off(fit),
                Math.hypot(
                        fit.readingMm() * Math.hypot(1, follow),
                        given ? 0 : Math.abs(bare - last.bareMm()) * (1 - SOFT) / Math.sqrt(12)),
                List.of(figure(fit, bare, "bare + (wanted - clamped) / share by which the width follows")),
                findings);
    }

    private static Finding useless(boolean contradicts) {
        return new Finding(
                contradicts ? Severity.STOP : Severity.CAUTION,
                "trials",
                contradicts
                        ? "The trials contradict each other: the clamped width must follow the bare width, by no more than"
                                + " it changed. Read all widths again at the same marks."
                        : "The trials lie too close together to tell how the width follows: the last one is taken alone."
                                + " Set the frame farther from the others.",
                PRACTICE);
    }

    private static TrialFitResult.Verdict verdict(TrialFit fit, boolean contradicts) {
        if (contradicts) {
            return TrialFitResult.Verdict.READ_AGAIN;
        }
        boolean within = Math.abs(off(fit)) <= fit.toleranceMm();
        return within && fit.trials().size() > 1 ? TrialFitResult.Verdict.READY : TrialFitResult.Verdict.TRY_AGAIN;
    }

    private static void tell(TrialFit fit, TrialFitResult.Verdict verdict, double bare, List<Finding> findings) {
        boolean within = Math.abs(off(fit)) <= fit.toleranceMm();
        switch (verdict) {
            case READY ->
                findings.add(new Finding(
                        Severity.NOTE,
                        "frame",
                        Phrase.of(
                                "The last trial is %s off the wanted %s, within %s: bond at this bare width.",
                                Amount.mm(off(fit), 1),
                                Amount.placeMm(fit.wantedMm(), 1),
                                Amount.mm(fit.toleranceMm(), 1)),
                        PRACTICE));
            case TRY_AGAIN -> {
                boolean first = fit.trials().size() == 1;
                findings.add(new Finding(
                        Severity.CAUTION,
                        "frame",
                        within
                                ? Phrase.of(
                                        "One trial, %s off: take the sheet off, clamp it on once more and read again"
                                                + " before any adhesive.",
                                        Amount.mm(off(fit), 1))
                                : Phrase.of(
                                        "Set the bare frame to %s, trial-clamp the sheet %s and read again before any"
                                                + " adhesive: once bonded nothing can be bent.",
                                        Amount.placeMm(bare, 1), first ? "a second time" : "once more"),
                        PRACTICE));
            }
            case READ_AGAIN ->
                findings.add(
                        new Finding(Severity.STOP, "frame", "No adhesive yet: the widths do not agree.", PRACTICE));
        }
    }

    private static Trial last(TrialFit fit) {
        return fit.trials().get(fit.trials().size() - 1);
    }

    private static double off(TrialFit fit) {
        return last(fit).clampedMm() - fit.wantedMm();
    }

    private static Figure figure(TrialFit fit, double bare, String formula) {
        List<Figure.Input> inputs = new ArrayList<>();
        for (Trial t : fit.trials()) {
            inputs.add(new Figure.Input(
                    "bare, clamped",
                    Phrase.of("%s, %s", Amount.placeMm(t.bareMm(), 1), Amount.placeMm(t.clampedMm(), 1)),
                    Figure.Origin.MEASURED));
        }
        inputs.add(
                new Figure.Input("wanted", Phrase.of("%s", Amount.placeMm(fit.wantedMm(), 1)), Figure.Origin.ENTERED));
        inputs.add(
                fit.follow().isPresent()
                        ? new Figure.Input(
                                "share by which the width follows",
                                String.format(Locale.ROOT, "%.2f", fit.follow().getAsDouble()),
                                Figure.Origin.ENTERED)
                        : new Figure.Input(
                                "share by which the width follows",
                                fit.trials().size() > 1 ? "from the trials" : "1, one for one",
                                fit.trials().size() > 1 ? Figure.Origin.COMPUTED : Figure.Origin.ASSUMED));
        return new Figure(
                "Bare width to aim for",
                Phrase.of("%s", Amount.placeMm(bare, 1)),
                formula,
                inputs,
                PRACTICE,
                List.of("Linear: frame and sheet as two springs; measure at the same two marks every time."));
    }
}
