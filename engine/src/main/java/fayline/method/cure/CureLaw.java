package fayline.method.cure;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The law by which one state of a system is reached: a time at a reference temperature, and how fast the chemistry runs at
 * others. Times are from mixing.
 *
 * <p>Where the sheet has points of the state at two or more temperatures, ln t is fitted by a straight line in 1/T
 * (Arrhenius; exact through two points, least squares through more). Else the stated activation energy, else the factor of
 * two per 10 K, shown as assumed. Of several points at one temperature the safe one counts: the shortest where the state
 * ends something, the longest where it permits something.
 *
 * @param state the state
 * @param time the time to the state at the reference temperature
 * @param rule the dependence on temperature
 * @param coldest the coldest data-sheet point behind the law
 * @param hottest the hottest data-sheet point behind the law
 * @param points the points behind the law
 */
public record CureLaw(
        CureState state,
        TimeSpan time,
        RateRule rule,
        Temperature coldest,
        Temperature hottest,
        List<SheetPoint> points) {
    private static final double ROOM_KELVINS = 296.15;
    private static final double TRUSTED_BEYOND_KELVINS = 15;
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    /** Copies the list. */
    public CureLaw {
        points = List.copyOf(points);
    }

    /**
     * The law of a state.
     *
     * @param sheet what is known of the system
     * @param state the state asked for
     * @return the law; empty where the sheet has no point of that state
     */
    public static Optional<CureLaw> of(CureSheet sheet, CureState state) {
        List<SheetPoint> points = sheet.points().stream()
                .filter(p -> p.state() == state && p.time().seconds() > 0)
                .toList();
        return points.isEmpty() ? Optional.empty() : Optional.of(through(sheet, state, oneMass(points)));
    }

    /**
     * The law through given points of one state, all of one mass and container.
     *
     * @param sheet the sheet, for the stated activation energy
     * @param state the state
     * @param points the points; at least one
     */
    public static CureLaw through(CureSheet sheet, CureState state, List<SheetPoint> points) {
        Comparator<SheetPoint> byTime = Comparator.comparing(SheetPoint::time);
        TreeMap<Double, SheetPoint> byTemperature = new TreeMap<>();
        for (SheetPoint p : points) {
            byTemperature.merge(p.at().kelvins(), p, (a, b) -> byTime.compare(a, b) <= 0 == state.runsOut() ? a : b);
        }
        SheetPoint near = byTemperature.values().stream()
                .min(Comparator.comparingDouble((SheetPoint p) -> Math.abs(p.at().kelvins() - ROOM_KELVINS))
                        .thenComparing(SheetPoint::at))
                .orElseThrow(() -> new IllegalArgumentException("a cure law needs at least one point"));
        Temperature low = new Temperature(byTemperature.firstKey());
        Temperature high = new Temperature(byTemperature.lastKey());
        List<SheetPoint> used = List.copyOf(byTemperature.values());
        if (byTemperature.size() > 1) {
            double[] line = line(byTemperature);
            double time = Math.exp(line[0] + line[1] / near.at().kelvins());
            RateRule rule =
                    new RateRule(RateRule.Origin.FITTED, near.at(), Math.max(0, line[1]) * RateRule.GAS_CONSTANT);
            return new CureLaw(state, new TimeSpan(time), rule, low, high, used);
        }
        RateRule rule = sheet.activationEnergy()
                .map(e -> RateRule.stated(near.at(), e))
                .orElseGet(() -> RateRule.doubling(near.at()));
        return new CureLaw(state, near.time(), rule, low, high, used);
    }

    /** Points of one mass and container only: those at the most temperatures, of these the smallest mass. */
    private static List<SheetPoint> oneMass(List<SheetPoint> points) {
        Map<String, List<SheetPoint>> groups = new TreeMap<>();
        for (SheetPoint p : points) {
            String key = p.mass()
                            .map(m -> String.format(java.util.Locale.ROOT, "%012.6f", m.kilograms()))
                            .orElse("")
                    + p.shape();
            groups.computeIfAbsent(key, k -> new ArrayList<>()).add(p);
        }
        List<SheetPoint> best = List.of();
        long most = 0;
        for (List<SheetPoint> group : groups.values()) {
            long temperatures =
                    group.stream().mapToDouble(p -> p.at().kelvins()).distinct().count();
            if (temperatures > most) {
                best = group;
                most = temperatures;
            }
        }
        return best;
    }

    /** Least squares of ln t = a + b/T; returns a and b. */
    private static double[] line(TreeMap<Double, SheetPoint> points) {
        double n = points.size();
        double meanX = points.keySet().stream().mapToDouble(t -> 1 / t).sum() / n;
        double meanY = points.values().stream()
                        .mapToDouble(p -> Math.log(p.time().seconds()))
                        .sum()
                / n;
        double xy = 0;
        double xx = 0;
        for (Map.Entry<Double, SheetPoint> e : points.entrySet()) {
            double dx = 1 / e.getKey() - meanX;
            xy += dx * (Math.log(e.getValue().time().seconds()) - meanY);
            xx += dx * dx;
        }
        double slope = xy / xx;
        return new double[] {meanY - slope * meanX, slope};
    }

    /** The reference temperature. */
    public Temperature reference() {
        return rule.reference();
    }

    /** How fast the chemistry runs at a temperature, as a multiple of its speed at the reference. */
    public double factorAt(Temperature temperature) {
        return rule.factorAt(temperature);
    }

    /** The time to the state at a constant temperature. */
    public TimeSpan timeAt(Temperature temperature) {
        return new TimeSpan(time.seconds() / factorAt(temperature));
    }

    /**
     * What must be said when the law is used at a temperature: nothing within 15 K of the points, a caution beyond.
     *
     * @param temperature the temperature of use
     */
    public List<Finding> cautionsAt(Temperature temperature) {
        boolean beyond = temperature.kelvins() > hottest.kelvins() + TRUSTED_BEYOND_KELVINS
                || temperature.kelvins() < coldest.kelvins() - TRUSTED_BEYOND_KELVINS;
        if (!beyond) {
            return List.of();
        }
        return List.of(new Finding(
                Severity.CAUTION,
                state.key(),
                "The time to " + state.words() + " at " + FORMAT.temperature(temperature)
                        + " lies more than 15 K outside the data-sheet points (" + FORMAT.temperature(coldest) + " to "
                        + FORMAT.temperature(hottest) + "): not covered, ask the maker or cure a trial piece.",
                "common practice, no source"));
    }

    /** How the time at a temperature comes about. */
    public Figure figureAt(Temperature temperature) {
        List<Figure.Input> inputs = new ArrayList<>();
        for (SheetPoint p : points) {
            inputs.add(new Figure.Input(
                    state.words(),
                    FORMAT.span(p.time()) + " at " + FORMAT.temperature(p.at()),
                    Figure.Origin.DATA_SHEET));
        }
        inputs.add(new Figure.Input("temperature", FORMAT.temperature(temperature), Figure.Origin.ENTERED));
        inputs.add(new Figure.Input(
                "dependence on temperature",
                rule.sentence(),
                switch (rule.origin()) {
                    case FITTED -> Figure.Origin.COMPUTED;
                    case STATED -> Figure.Origin.DATA_SHEET;
                    case DOUBLING -> Figure.Origin.ASSUMED;
                }));
        return new Figure(
                "Time to " + state.words(),
                FORMAT.span(timeAt(temperature)),
                rule.origin() == RateRule.Origin.DOUBLING
                        ? "t = t_ref 2^((T_ref - T)/10)"
                        : "t = t_ref exp((E/R)(1/T - 1/T_ref)), kelvins",
                inputs,
                rule.origin() == RateRule.Origin.DOUBLING ? "common practice, no source" : "[arrhenius1889]",
                cautionsAt(temperature).stream().map(Finding::sentence).toList());
    }
}
