package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.numeric.OdeIntegrator;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.function.DoubleBinaryOperator;

/**
 * Degree of cure by integrating a rate law with error control over a temperature history, piece by piece, and stopping exactly
 * where the law jumps. With a glass transition given, the rate falls to zero over the last half percent of cure below the point
 * where the glass transition has risen {@code stallAbove} over the temperature (vitrification; a model without this limit
 * promises full cure at room temperature). Not modelled: the resin's own heat, diffusion before the stall.
 */
public final class DegreeOfCureCalculator {
    private static final OdeIntegrator INTEGRATOR = new OdeIntegrator(1e-12, 1e-10);
    private static final double STALL_RAMP = 0.005;
    private static final int MOST_TIMES = 10_000;

    private DegreeOfCureCalculator() {}

    /** Answers the question. */
    public static DegreeOfCureResult calculate(DegreeOfCure question) {
        List<Finding> findings = new ArrayList<>();
        check(question, findings);
        if (!findings.isEmpty()) {
            return new DegreeOfCureResult(List.of(), Optional.empty(), figure(question, List.of()), findings);
        }
        Run run = new Run(question);
        List<Double> degrees = new ArrayList<>();
        for (TimeSpan t : question.times()) {
            run.to(t.seconds());
            degrees.add(Math.min(1, Math.max(0, run.degree)));
        }
        if (question.level().isPresent()
                && run.timeOfLevel.isEmpty()
                && question.times().isEmpty()) {
            run.to(question.history().end().seconds());
        }
        if (run.stuck()) {
            findings.add(finding(
                    Severity.CAUTION,
                    "This law does not start from a degree of cure of exactly zero; give a small start above zero."));
        }
        if (question.glass().isPresent()) {
            findings.add(finding(
                    Severity.NOTE, "The reaction is capped where the glass transition outruns the temperature."));
        } else {
            findings.add(
                    finding(
                            Severity.CAUTION,
                            "No limit by the glass transition is in this figure: a real resin that cures cold stalls before it."));
        }
        return new DegreeOfCureResult(degrees, run.timeOfLevel(), figure(question, degrees), findings);
    }

    private static void check(DegreeOfCure q, List<Finding> findings) {
        double previous = 0;
        for (TimeSpan t : q.times()) {
            if (t.seconds() < previous) {
                findings.add(finding(Severity.STOP, "The times asked for must rise from zero: not covered."));
                return;
            }
            previous = t.seconds();
        }
        if (!(q.start() >= 0 && q.start() <= 1)) {
            findings.add(finding(Severity.STOP, "A degree of cure lies between 0 and 1: not covered."));
        }
        if (q.times().size() > MOST_TIMES) {
            findings.add(finding(Severity.STOP, "More than 10000 times at once: not covered."));
        }
        if (q.glass().isPresent() && !DiBenedetto.sound(q.glass().get())) {
            findings.add(finding(
                    Severity.STOP,
                    "The glass transition at full cure must lie above that of the uncured mix, with lambda in (0, 1]:"
                            + " not covered."));
        }
        for (TemperatureHistory.Piece p : q.history().pieces()) {
            double rate = Math.max(
                    Math.abs(q.law().perSecond(0.1, p.startKelvins())),
                    Math.abs(q.law().perSecond(0.1, p.endKelvins())));
            if (!(rate < 1e6)) {
                findings.add(
                        finding(Severity.STOP, "The rate constants give a reaction faster than any: not covered."));
                return;
            }
        }
    }

    private static Figure figure(DegreeOfCure q, List<Double> degrees) {
        String last =
                degrees.isEmpty() ? "not covered" : String.format(Locale.ROOT, "%.3f", degrees.get(degrees.size() - 1));
        return new Figure(
                "Degree of cure",
                last,
                q.law().symbols() + ", integrated with error control",
                List.of(
                        new Figure.Input("rate constants", String.valueOf(q.law()), Figure.Origin.DATA_SHEET),
                        new Figure.Input(
                                "temperature history",
                                q.history().pieces().size() + " pieces",
                                Figure.Origin.MEASURED)),
                q.law() instanceof RateLaw.TwoBranch ? "[lee-loos-springer1982]" : "[kamal-sourour1973]",
                List.of("The resin's own heat is not in this figure."));
    }

    private static Finding finding(Severity severity, String sentence) {
        return new Finding(severity, "degree of cure", sentence, "[kamal-sourour1973]");
    }

    /** The integration so far. */
    private static final class Run {
        private final DegreeOfCure question;
        private final TreeSet<Double> kinks = new TreeSet<>();
        private double time;
        private double degree;
        private OptionalDouble levelSeconds = OptionalDouble.empty();
        private Optional<TimeSpan> timeOfLevel = Optional.empty();

        Run(DegreeOfCure question) {
            this.question = question;
            this.degree = question.start();
            for (TemperatureHistory.Piece p : question.history().pieces()) {
                kinks.add(p.fromS());
                kinks.add(p.toS());
            }
            if (question.level().isPresent() && degree >= question.level().getAsDouble()) {
                levelSeconds = OptionalDouble.of(0);
            }
        }

        Optional<TimeSpan> timeOfLevel() {
            levelSeconds.ifPresent(s -> timeOfLevel = Optional.of(new TimeSpan(s)));
            return timeOfLevel;
        }

        boolean stuck() {
            return time > 0 && degree == 0;
        }

        void to(double end) {
            while (time < end) {
                Double kink = kinks.higher(time);
                piece(kink == null ? end : Math.min(end, kink));
            }
        }

        private void piece(double end) {
            while (time < end) {
                OptionalDouble stop = nextStop();
                double t0 = time;
                if (stop.isPresent() && degree >= stop.getAsDouble()) {
                    pass(stop.getAsDouble());
                    continue;
                }
                if (stop.isEmpty()) {
                    degree = INTEGRATOR.integrate(rate(end), t0, degree, end);
                    time = end;
                    return;
                }
                OdeIntegrator.Stop s = INTEGRATOR.integrateUntil(rate(end), t0, degree, end, stop.getAsDouble());
                time = s.reached() ? s.time() : end;
                degree = s.value();
                if (s.reached()) {
                    pass(stop.getAsDouble());
                }
            }
        }

        /** Steps just over a level, so that the next integration starts on its far side. */
        private void pass(double level) {
            if (question.level().isPresent()
                    && levelSeconds.isEmpty()
                    && level == question.level().getAsDouble()) {
                levelSeconds = OptionalDouble.of(time);
            }
            degree = Math.max(degree, Math.nextUp(level));
        }

        private OptionalDouble nextStop() {
            double next = Double.POSITIVE_INFINITY;
            OptionalDouble jump = question.law().jump();
            if (jump.isPresent() && degree <= jump.getAsDouble()) {
                next = jump.getAsDouble();
            }
            if (question.level().isPresent()
                    && levelSeconds.isEmpty()
                    && degree <= question.level().getAsDouble()) {
                next = Math.min(next, question.level().getAsDouble());
            }
            return Double.isInfinite(next) ? OptionalDouble.empty() : OptionalDouble.of(next);
        }

        /** The rate on this side of the jump, continued smoothly beyond it, within one piece of the history. */
        private DoubleBinaryOperator rate(double end) {
            TemperatureHistory history = question.history();
            double from = time;
            boolean low = question.law().jump().isPresent()
                    && degree <= question.law().jump().getAsDouble();
            double k0 = history.kelvinsAt(from);
            double k1 = justBefore(history, from, end);
            RateLaw law = question.law();
            Optional<GlassTransition> glass = question.glass();
            return (t, a) -> {
                double kelvins = k0 + (k1 - k0) * (t - from) / (end - from);
                double free = law instanceof RateLaw.TwoBranch two
                        ? (low ? two.below(a, kelvins) : two.above(a, kelvins))
                        : law.perSecond(a, kelvins);
                return glass.isEmpty() ? free : free * brake(glass.get(), a, kelvins);
            };
        }

        private static double justBefore(TemperatureHistory history, double from, double end) {
            for (TemperatureHistory.Piece p : history.pieces()) {
                if (p.fromS() <= from && from < p.toS()) {
                    return p.kelvinsAt(end);
                }
            }
            return history.kelvinsAt(from);
        }

        private static double brake(GlassTransition glass, double degree, double kelvins) {
            double cap = DiBenedetto.stallDegree(glass, kelvins);
            return cap >= 1 ? 1 : Math.min(1, Math.max(0, (cap - degree) / STALL_RAMP));
        }
    }
}
