package fayline.method.mix.batch;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.RootFinder;
import fayline.basis.units.Mass;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import fayline.method.cure.pot.PotLifeCalculator;
import fayline.method.cure.pot.PotLifeCurve;
import fayline.method.cure.pot.PotLifeResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The largest batch: m = people x rate x (f t(m, T) - t_mix). A bigger batch lives shorter, so this is a fixed point and not a
 * division; the right side falls with m, and bisection finds it. The film's working life, where the sheet gives one, the
 * container and the data sheet's largest mass cap it (rule of this project, common practice, no source).
 */
public final class LargestBatchCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double LEAST_KG = 1e-4;
    private static final String CP = "common practice, no source";

    private LargestBatchCalculator() {}

    /** Answers the question. */
    public static LargestBatchResult calculate(LargestBatch q) {
        if (!(q.useRateKgPerS() > 0 && Double.isFinite(q.useRateKgPerS()))
                || q.people() < 1
                || !(q.trusted().ratio() > 0 && q.trusted().ratio() <= 1)
                || q.mixing().seconds() < 0
                || q.container().map(c -> !(c.kilograms() > 0)).orElse(false)) {
            return nothing(
                    List.of(stop("Rate, people, trusted share (up to 100 percent) and container must be positive,"
                            + " the mixing time not negative: not covered.")));
        }
        Optional<PotLifeCurve> curve = PotLifeCurve.of(q.pot());
        if (curve.isEmpty()) {
            return nothing(List.of(stop("The data sheet gives no pot life, so no batch can be sized: not covered.")));
        }
        double film = CureLaw.of(q.pot().sheet(), CureState.WORKING_LIFE)
                .map(l -> l.timeAt(q.pot().temperature()).seconds())
                .orElse(Double.POSITIVE_INFINITY);
        double rate = q.useRateKgPerS() * q.people();
        double container = q.container().map(Mass::kilograms).orElse(Double.POSITIVE_INFINITY);
        double most = Math.min(container, curve.get().largestKilograms());
        if (Double.isInfinite(most)) {
            // What one pot life of the smallest mass allows bounds the search, for the life falls with the mass.
            most = Math.max(1, rate * Math.min(curve.get().secondsAt(1), 1e6)) * 10;
        }
        OptionalDouble m = RootFinder.fallingFixedPoint(
                x -> rate
                        * (q.trusted().ratio() * Math.min(curve.get().secondsAt(x), film)
                                - q.mixing().seconds()),
                Math.min(LEAST_KG, most),
                most);
        if (m.isEmpty()) {
            return nothing(List.of(stop("At " + FORMAT.temperature(q.pot().temperature())
                    + " the trusted share of the life is over before even the smallest batch is mixed and used: cool the"
                    + " resin, trust more of it, or take a slower hardener.")));
        }
        return found(q, curve.get(), m.getAsDouble(), container, film);
    }

    private static LargestBatchResult found(
            LargestBatch q, PotLifeCurve curve, double kilograms, double container, double film) {
        Mass mass = new Mass(kilograms);
        TimeSpan life = new TimeSpan(curve.secondsAt(kilograms));
        LargestBatchResult.Rule rule = kilograms >= container * (1 - 1e-9)
                ? LargestBatchResult.Rule.CONTAINER
                : kilograms >= curve.largestKilograms() * (1 - 1e-9)
                        ? LargestBatchResult.Rule.DATA_SHEET
                        : film < life.seconds() ? LargestBatchResult.Rule.FILM : LargestBatchResult.Rule.POT_LIFE;
        PotLifeResult pot = PotLifeCalculator.calculate(q.pot().withMass(mass));
        List<Finding> findings = new ArrayList<>(pot.findings());
        if (rule == LargestBatchResult.Rule.DATA_SHEET) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "batch",
                    "The data sheet allows no claim for more than " + FORMAT.mass(mass) + " in one container.",
                    "the definition"));
        }
        Figure figure = new Figure(
                "Largest batch",
                FORMAT.mass(mass),
                "m = people x rate x (f t(m, T) - mixing), limited by container, film and data sheet",
                List.of(
                        new Figure.Input(
                                "use rate of one person",
                                String.format(Locale.ROOT, "%.1f g/min", q.useRateKgPerS() * 60_000),
                                Figure.Origin.ENTERED),
                        new Figure.Input("people", String.valueOf(q.people()), Figure.Origin.ENTERED),
                        new Figure.Input("trusted share f", FORMAT.percent(q.trusted()), Figure.Origin.ENTERED),
                        new Figure.Input("mixing", FORMAT.span(q.mixing()), Figure.Origin.ENTERED),
                        new Figure.Input("pot life of the batch", FORMAT.span(life), Figure.Origin.COMPUTED),
                        new Figure.Input(
                                "container limit",
                                q.container().map(FORMAT::mass).orElse("none"),
                                Figure.Origin.ENTERED)),
                CP,
                List.of(
                        "A full pot can smoke and burn: spread what is left over thin, outside, never put a lid on it."));
        return new LargestBatchResult(Optional.of(mass), Optional.of(life), rule, Optional.of(figure), findings);
    }

    private static LargestBatchResult nothing(List<Finding> findings) {
        return new LargestBatchResult(
                Optional.empty(), Optional.empty(), LargestBatchResult.Rule.NOTHING, Optional.empty(), findings);
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "batch", sentence, CP);
    }
}
