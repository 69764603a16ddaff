package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import fayline.method.cure.TemperatureHistory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * Glass transition so far against a planned heat. The glass transition comes from a measurement, else from published kinetics
 * with DiBenedetto's relation [dibenedetto1987] and the stall, else it is estimated as the highest temperature the part has
 * seen plus the stall distance (common practice, no source), never above full cure. Without kinetics it is held during the
 * heat, which is on the safe side. A part that comes within the margin of its glass transition sags: the result lists what to
 * support and unload.
 */
public final class HeatPlanCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final int STEPS = 200;
    private static final String SOURCE = "[dibenedetto1987]";

    private HeatPlanCalculator() {}

    /** Answers the question. */
    public static HeatPlanResult calculate(HeatPlan question) {
        if (!DiBenedetto.sound(question.glass())) {
            return new HeatPlanResult(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    List.of(),
                    Optional.empty(),
                    List.of(new Finding(
                            Severity.STOP,
                            "glass transition",
                            "The glass transition at full cure must lie above that of the uncured mix, with lambda in"
                                    + " (0, 1]: not covered.",
                            SOURCE)));
        }
        double before = before(question);
        List<TimeSpan> times = times(question.plan());
        List<Double> transitions = during(question, before, times);
        int tightest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < times.size(); i++) {
            double margin =
                    transitions.get(i) - question.plan().kelvinsAt(times.get(i).seconds());
            if (margin < least) {
                least = margin;
                tightest = i;
            }
        }
        boolean softens = least < question.margin().kelvins();
        double after = transitions.get(transitions.size() - 1);
        double highest = Math.max(1, before - question.margin().kelvins());
        return new HeatPlanResult(
                Optional.of(new Temperature(before)),
                Optional.of(new Temperature(after)),
                Optional.of(new TemperatureDifference(least)),
                Optional.of(times.get(tightest)),
                Optional.of(new Temperature(highest)),
                softens,
                list(question.loads(), softens),
                Optional.of(figure(question, before, least)),
                findings(question, before, least, times.get(tightest), softens));
    }

    private static double before(HeatPlan q) {
        if (q.measured().isPresent()) {
            return q.measured().get().kelvins();
        }
        if (q.kinetics().isPresent()) {
            return DiBenedetto.kelvinsAt(
                    q.glass(), degree(q, q.past(), 0, List.of(q.past().end())).get(0));
        }
        double seen = q.past().hottestUntil(q.past().end()).kelvins();
        return Math.min(
                q.glass().full().kelvins(), seen + q.glass().stallAbove().kelvins());
    }

    private static List<Double> degree(HeatPlan q, TemperatureHistory history, double start, List<TimeSpan> times) {
        RateLaw law = new RateLaw.Autocatalytic(q.kinetics().orElseThrow());
        List<Double> degrees = DegreeOfCureCalculator.calculate(
                        new DegreeOfCure(law, history, start, times, OptionalDouble.empty(), Optional.of(q.glass())))
                .degrees();
        return degrees.isEmpty() ? times.stream().map(t -> start).toList() : degrees;
    }

    private static List<Double> during(HeatPlan q, double before, List<TimeSpan> times) {
        if (q.kinetics().isEmpty()) {
            return times.stream().map(t -> before).toList();
        }
        double start = before <= q.glass().uncured().kelvins()
                ? 0
                : DiBenedetto.degreeAt(q.glass(), before).orElse(1);
        List<Double> all = new ArrayList<>();
        for (double a : degree(q, q.plan(), start, times)) {
            all.add(Math.max(before, DiBenedetto.kelvinsAt(q.glass(), a)));
        }
        return all;
    }

    /** Even times plus the kinks, where a margin is least. */
    private static List<TimeSpan> times(TemperatureHistory plan) {
        TreeSet<Double> all = new TreeSet<>();
        double end = plan.end().seconds();
        for (int i = 0; i <= STEPS; i++) {
            all.add(end * i / STEPS);
        }
        for (TemperatureHistory.Piece p : plan.pieces()) {
            if (p.fromS() >= 0) {
                all.add(p.fromS());
            }
        }
        return all.stream().map(TimeSpan::new).toList();
    }

    private static List<String> list(List<HeatPlan.Load> loads, boolean softens) {
        if (!softens) {
            return List.of();
        }
        return loads.stream()
                .map(l -> switch (l.kind()) {
                    case STRUT -> "Take off the strut: " + l.name() + ".";
                    case SPRING -> "Slacken the spring: " + l.name() + ".";
                    case SEAL -> "Take the seal out or leave it uncompressed: " + l.name() + ".";
                    case OWN_WEIGHT -> "Support over the whole length or leave in the mould: " + l.name() + ".";
                    case OTHER -> "Unload: " + l.name() + ".";
                })
                .toList();
    }

    private static List<Finding> findings(HeatPlan q, double before, double least, TimeSpan at, boolean softens) {
        List<Finding> all = new ArrayList<>();
        String tg = FORMAT.temperature(new Temperature(before));
        if (softens) {
            all.add(new Finding(
                    Severity.STOP,
                    "planned heat",
                    (least < 0
                                    ? "The part gets " + FORMAT.difference(new TemperatureDifference(-least))
                                            + " hotter than"
                                    : "The part comes within " + FORMAT.difference(new TemperatureDifference(least))
                                            + " of")
                            + " its glass transition (" + tg + " before the heat) after " + FORMAT.span(at)
                            + ", a margin of " + FORMAT.difference(q.margin())
                            + " is asked for: heat slower, hold lower first, or support and unload it.",
                    "the definition"));
        }
        if (q.measured().isEmpty()) {
            all.add(new Finding(
                    Severity.CAUTION,
                    "glass transition",
                    q.kinetics().isPresent()
                            ? "The glass transition is computed from rate constants, not measured."
                            : "The glass transition (" + tg + ") is estimated from the highest temperature seen, not"
                                    + " measured.",
                    q.kinetics().isPresent() ? SOURCE : "common practice, no source"));
        }
        return all;
    }

    private static Figure figure(HeatPlan q, double before, double least) {
        return new Figure(
                "Least distance of the glass transition above the part",
                FORMAT.difference(new TemperatureDifference(least)),
                "least of Tg - T over the planned heat",
                List.of(
                        new Figure.Input(
                                "glass transition before",
                                FORMAT.temperature(new Temperature(before)),
                                q.measured().isPresent()
                                        ? Figure.Origin.MEASURED
                                        : q.kinetics().isPresent() ? Figure.Origin.COMPUTED : Figure.Origin.ASSUMED),
                        new Figure.Input(
                                "hottest planned",
                                FORMAT.temperature(
                                        q.plan().hottestUntil(q.plan().end())),
                                Figure.Origin.ENTERED)),
                SOURCE,
                List.of("The part's own heat is not in this figure."));
    }
}
