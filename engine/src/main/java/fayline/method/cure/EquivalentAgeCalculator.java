package fayline.method.cure;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.RootFinder;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Equivalent age: the sum of dt times the rate factor over the history, never the factor of the averaged temperature, which
 * understates the age because the rate is convex: wasteful when waiting for a cure, unsafe when watching a pot life run out.
 * Constant pieces are summed exactly, straight ones by Gauss quadrature on parts of at most 2 K. The same sum is the
 * maturity method of concrete [astm-c1074], Arrhenius form (recalled, not read).
 */
public final class EquivalentAgeCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double PART_KELVINS = 2;
    private static final double[] NODES = {-0.7745966692414834, 0, 0.7745966692414834};
    private static final double[] WEIGHTS = {5.0 / 9, 8.0 / 9, 5.0 / 9};

    private EquivalentAgeCalculator() {}

    /** Answers the question. */
    public static EquivalentAgeResult calculate(EquivalentAge question) {
        RateRule rule = question.rule();
        double until = question.until()
                .map(TimeSpan::seconds)
                .orElse(question.history().end().seconds());
        double age = ageAt(question.history(), rule, until);
        double meanKelvins = meanKelvins(question.history(), until);
        List<Finding> findings = new ArrayList<>();
        Temperature waiting = question.waitingAt().orElse(question.history().at(new TimeSpan(until)));
        Optional<TimeSpan> wait =
                question.needed().map(n -> new TimeSpan(Math.max(0, n.seconds() - age) / rule.factorAt(waiting)));
        if (rule.origin() == RateRule.Origin.DOUBLING) {
            findings.add(new Finding(
                    Severity.NOTE,
                    "equivalent age",
                    "The factor of two per 10 K is assumed; a data sheet with two temperatures would replace it.",
                    "common practice, no source"));
        }
        wait.filter(w -> w.seconds() > 0)
                .ifPresent(w -> findings.add(new Finding(
                        Severity.CAUTION,
                        "equivalent age",
                        "Not old enough yet: wait " + FORMAT.span(w) + " more at " + FORMAT.temperature(waiting) + ".",
                        "the definition")));
        Figure figure = new Figure(
                "Equivalent age at " + FORMAT.temperature(rule.reference()),
                FORMAT.span(new TimeSpan(age)),
                "sum of dt x rate factor over the history",
                List.of(
                        new Figure.Input("span", FORMAT.span(new TimeSpan(until)), Figure.Origin.MEASURED),
                        new Figure.Input(
                                "dependence on temperature",
                                rule.sentence(),
                                rule.origin() == RateRule.Origin.DOUBLING
                                        ? Figure.Origin.ASSUMED
                                        : Figure.Origin.DATA_SHEET)),
                "[astm-c1074]",
                List.of());
        return new EquivalentAgeResult(
                new TimeSpan(age),
                wait,
                new TimeSpan(Math.max(0, until) * rule.factorAt(meanKelvins)),
                figure,
                findings);
    }

    /** The age in seconds at a time in seconds. */
    static double ageAt(TemperatureHistory history, RateRule rule, double until) {
        double age = 0;
        double at = 0;
        for (TemperatureHistory.Piece p : withEnds(history, until)) {
            double from = Math.max(at, p.fromS());
            double to = Math.min(until, p.toS());
            if (to > from) {
                age += pieceAge(p, rule, from, to);
                at = to;
            }
        }
        return age;
    }

    /**
     * When an age is reached, in seconds since mixing; the last temperature holds for ever.
     *
     * @param history the history
     * @param rule the rule
     * @param needed the age in seconds at the rule's reference
     */
    static double timeOfAge(TemperatureHistory history, RateRule rule, double needed) {
        double age = 0;
        double at = 0;
        for (TemperatureHistory.Piece p : withEnds(history, history.end().seconds())) {
            double from = Math.max(at, p.fromS());
            double to = p.toS();
            if (to <= from) {
                continue;
            }
            double gained = pieceAge(p, rule, from, to);
            if (age + gained >= needed) {
                return within(p, rule, from, to, needed - age);
            }
            age += gained;
            at = to;
        }
        return at + (needed - age) / rule.factorAt(history.lastTemperature());
    }

    private static double within(TemperatureHistory.Piece p, RateRule rule, double from, double to, double wanted) {
        if (p.startKelvins() == p.endKelvins()) {
            return from + wanted / rule.factorAt(p.startKelvins());
        }
        return RootFinder.bracketed(t -> pieceAge(p, rule, from, t) - wanted, from, to, 1e-6)
                .orElse(to);
    }

    private static List<TemperatureHistory.Piece> withEnds(TemperatureHistory history, double until) {
        List<TemperatureHistory.Piece> all = new ArrayList<>();
        TemperatureHistory.Piece first = history.pieces().get(0);
        if (first.fromS() > 0) {
            all.add(new TemperatureHistory.Piece(0, first.fromS(), first.startKelvins(), first.startKelvins()));
        }
        all.addAll(history.pieces());
        double end = history.end().seconds();
        double k = history.lastTemperature().kelvins();
        if (until > end) {
            all.add(new TemperatureHistory.Piece(end, until, k, k));
        }
        return all;
    }

    private static double pieceAge(TemperatureHistory.Piece p, RateRule rule, double from, double to) {
        double a = p.kelvinsAt(from);
        double b = p.kelvinsAt(to);
        if (p.startKelvins() == p.endKelvins()) {
            return (to - from) * rule.factorAt(p.startKelvins());
        }
        int parts = (int) Math.max(1, Math.ceil(Math.abs(b - a) / PART_KELVINS));
        double h = (to - from) / parts;
        double sum = 0;
        for (int i = 0; i < parts; i++) {
            double mid = from + (i + 0.5) * h;
            for (int k = 0; k < NODES.length; k++) {
                sum += WEIGHTS[k] * rule.factorAt(p.kelvinsAt(mid + NODES[k] * h / 2)) * h / 2;
            }
        }
        return sum;
    }

    private static double meanKelvins(TemperatureHistory history, double until) {
        double sum = 0;
        double time = 0;
        for (TemperatureHistory.Piece p : withEnds(history, until)) {
            double from = Math.max(0, p.fromS());
            double to = Math.min(until, p.toS());
            if (to > from) {
                sum += (p.kelvinsAt(from) + p.kelvinsAt(to)) / 2 * (to - from);
                time += to - from;
            }
        }
        return time > 0 ? sum / time : history.kelvinsAt(0);
    }
}
