package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.GlassTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Glass transition from degree of cure and back by DiBenedetto's relation [dibenedetto1987], and the degrees of cure at which
 * a resin vitrifies and stalls at a cure temperature. Cold-cured parts stall with a glass transition about 10 to 30 K above the
 * highest temperature they have seen (common practice, no source).
 */
public final class GlassStateCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final String SOURCE = "[dibenedetto1987]";

    private GlassStateCalculator() {}

    /** Answers the questions. */
    public static GlassStateResult calculate(GlassState question) {
        GlassTransition g = question.glass();
        List<Finding> findings = new ArrayList<>();
        if (!DiBenedetto.sound(g)) {
            findings.add(stop("The glass transition at full cure must lie above that of the uncured mix, with lambda in"
                    + " (0, 1]: not covered."));
            return new GlassStateResult(List.of(), List.of(), List.of(), List.of(), List.of(), findings);
        }
        List<Temperature> transitions = new ArrayList<>();
        for (double a : question.degrees()) {
            if (!(a >= 0 && a <= 1)) {
                findings.add(stop("A degree of cure lies between 0 and 1: not covered."));
                return new GlassStateResult(List.of(), List.of(), List.of(), List.of(), List.of(), findings);
            }
            transitions.add(new Temperature(DiBenedetto.kelvinsAt(g, a)));
        }
        List<OptionalDouble> degrees = new ArrayList<>();
        for (Temperature t : question.transitions()) {
            degrees.add(inverse(g, t.kelvins(), findings));
        }
        List<OptionalDouble> vitrified = new ArrayList<>();
        List<OptionalDouble> stalled = new ArrayList<>();
        List<Figure> figures = new ArrayList<>();
        for (Temperature t : question.cures()) {
            OptionalDouble v =
                    t.kelvins() >= g.full().kelvins() ? OptionalDouble.of(1) : inverse(g, t.kelvins(), findings);
            double s = DiBenedetto.stallDegree(g, t.kelvins());
            vitrified.add(v);
            stalled.add(OptionalDouble.of(s));
            figures.add(figure(g, t, s));
            if (s < 1) {
                findings.add(new Finding(
                        Severity.CAUTION,
                        "glass transition",
                        String.format(
                                Locale.ROOT,
                                "At %s the cure stalls at %.0f percent: warm cure is needed for the full glass transition.",
                                FORMAT.temperature(t),
                                s * 100),
                        "common practice, no source"));
            }
        }
        return new GlassStateResult(transitions, degrees, vitrified, stalled, figures, findings);
    }

    private static OptionalDouble inverse(GlassTransition g, double kelvins, List<Finding> findings) {
        OptionalDouble a = DiBenedetto.degreeAt(g, kelvins);
        if (a.isEmpty()) {
            findings.add(stop("A glass transition of " + FORMAT.temperature(new Temperature(kelvins))
                    + " lies outside " + FORMAT.temperature(g.uncured()) + " to " + FORMAT.temperature(g.full())
                    + ": not covered."));
        }
        return a;
    }

    private static Figure figure(GlassTransition g, Temperature cure, double stall) {
        return new Figure(
                "Degree of cure at which the reaction stalls at " + FORMAT.temperature(cure),
                String.format(Locale.ROOT, "%.3f", stall),
                "x = (T + stall - Tg0)/(Tginf - Tg0); a = x/(lambda + (1 - lambda) x)",
                List.of(
                        new Figure.Input("Tg uncured", FORMAT.temperature(g.uncured()), Figure.Origin.DATA_SHEET),
                        new Figure.Input("Tg full", FORMAT.temperature(g.full()), Figure.Origin.DATA_SHEET),
                        new Figure.Input(
                                "lambda", String.format(Locale.ROOT, "%.3f", g.lambda()), Figure.Origin.DATA_SHEET),
                        new Figure.Input("stall above cure", FORMAT.difference(g.stallAbove()), Figure.Origin.ASSUMED)),
                SOURCE,
                List.of());
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "glass transition", sentence, SOURCE);
    }
}
