package fayline.method.vacuum;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Force;
import fayline.basis.units.Fraction;
import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.UnitSystem;
import fayline.method.atmosphere.StandardAtmosphere;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Clamp pressure p = p_ambient - p_bag, its share of ambient, and the force F = p A (balance of forces; standard atmosphere
 * [iso2533]). An acceptance in inHg must fall with elevation and weather: percent of ambient or absolute pressure holds
 * everywhere.
 */
public final class ClampPressureCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final Length SEA_LEVEL = new Length(0);

    private ClampPressureCalculator() {}

    /** Answers the question. */
    public static ClampPressureResult calculate(ClampPressure bag) {
        Optional<Pressure> ambient = bag.ambient().isPresent()
                ? bag.ambient()
                : StandardAtmosphere.at(bag.elevation().orElse(SEA_LEVEL));
        if (ambient.isEmpty()) {
            return refused(Optional.empty(), "The standard atmosphere holds from -5000 to 20000 m: not covered.");
        }
        double outside = ambient.get().pascals();
        double clamp = bag.gauge()
                .map(g -> g.pascalsBelowAmbient())
                .orElseGet(
                        () -> outside - bag.bagAbsolute().map(Pressure::pascals).orElse(0.0));
        boolean gaugeAlone = bag.gauge().isPresent()
                && bag.ambient().isEmpty()
                && bag.elevation().isEmpty();
        if (!(outside > 0)
                || clamp < 0
                || (clamp > outside && !gaugeAlone)
                || bag.area().map(a -> a.squareMetres() < 0).orElse(false)) {
            return refused(
                    ambient,
                    String.format(
                            Locale.ROOT,
                            "A bag pulls between nothing and the air pressure of %.1f kPa, found %.1f kPa: not covered,"
                                    + " check gauge and elevation.",
                            outside / 1000,
                            clamp / 1000));
        }
        Pressure p = new Pressure(clamp);
        Optional<Force> force = bag.area().map(a -> new Force(clamp * a.squareMetres()));
        return new ClampPressureResult(
                ambient,
                Optional.of(p),
                Optional.of(new Fraction(clamp / outside)),
                force,
                figures(bag, ambient.get(), p, force),
                findings(bag, force));
    }

    private static List<Figure> figures(ClampPressure bag, Pressure ambient, Pressure clamp, Optional<Force> force) {
        List<Figure.Input> inputs = new ArrayList<>();
        inputs.add(new Figure.Input(
                "air pressure",
                kilopascals(ambient),
                bag.ambient().isPresent() ? Figure.Origin.MEASURED : Figure.Origin.ASSUMED));
        bag.gauge()
                .ifPresent(g ->
                        inputs.add(new Figure.Input("gauge, below ambient", FORMAT.vacuum(g), Figure.Origin.MEASURED)));
        bag.bagAbsolute()
                .ifPresent(a -> inputs.add(new Figure.Input("bag, absolute", kilopascals(a), Figure.Origin.MEASURED)));
        List<Figure> all = new ArrayList<>();
        all.add(new Figure("Clamp pressure", kilopascals(clamp), "p_ambient - p_bag", inputs, "[iso2533]", List.of()));
        force.ifPresent(f -> all.add(new Figure(
                "Force",
                String.format(Locale.ROOT, "%.1f kN, as the weight of %.0f kg", f.kilonewtons(), f.kilogramsForce()),
                "clamp pressure x area",
                List.of(
                        new Figure.Input("clamp pressure", kilopascals(clamp), Figure.Origin.COMPUTED),
                        new Figure.Input("area", bag.area().map(FORMAT::area).orElse(""), Figure.Origin.ENTERED)),
                "balance of forces",
                List.of("Anything hollow is crushed unless it is vented."))));
        return all;
    }

    private static List<Finding> findings(ClampPressure bag, Optional<Force> force) {
        if (force.isEmpty() && !bag.hollow()) {
            return List.of();
        }
        String weight = force.map(f -> String.format(
                        Locale.ROOT, "The air presses with the weight of %.1f tonnes. ", f.kilogramsForce() / 1000))
                .orElse("");
        return List.of(new Finding(
                bag.hollow() ? Severity.STOP : Severity.CAUTION,
                "vacuum",
                weight
                        + "Vent or support anything hollow before pulling vacuum: boxes, panels and closed moulds implode.",
                "common practice, no source"));
    }

    private static String kilopascals(Pressure p) {
        return String.format(Locale.ROOT, "%.1f kPa", p.kilopascals());
    }

    private static ClampPressureResult refused(Optional<Pressure> ambient, String sentence) {
        return new ClampPressureResult(
                ambient,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(new Finding(Severity.STOP, "vacuum", sentence, "[iso2533]")));
    }
}
