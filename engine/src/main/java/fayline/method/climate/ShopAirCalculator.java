package fayline.method.climate;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Dew point, its margin at the coldest surface, the humidity there, and the verdict against the limits. Dew point from the
 * chosen saturation formula [wmo8], [buck1996], [ashrae-f2017]; humidity at the surface = RH e_s(T_air)/e_s(T_surface). The
 * margin of 3 K is coating practice [iso8502-4] (5 degF in US charts).
 */
public final class ShopAirCalculator {
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);
    private static final double BLOOM_HUMIDITY = 0.85;
    private static final String LIMIT = "the definition";

    private ShopAirCalculator() {}

    /** Answers the question. */
    public static ShopAirResult calculate(ShopAir air) {
        List<Finding> findings = new ArrayList<>();
        Saturation formula = air.formula();
        double kelvins = air.air().kelvins();
        boolean covered = formula.covers(kelvins);
        Optional<Fraction> humidity = air.humidity().filter(h -> h.ratio() > 0 && h.ratio() <= 1);
        if (!covered) {
            findings.add(stop("Air at " + FORMAT.temperature(air.air()) + " lies outside the formula's range ("
                    + formula.range() + "): not covered."));
        }
        if (air.humidity().isPresent() && humidity.isEmpty()) {
            findings.add(stop("A relative humidity lies above 0 and up to 100 percent, found "
                    + FORMAT.percent(air.humidity().get()) + ": not covered."));
        }
        Optional<Pressure> saturation =
                covered ? Optional.of(new Pressure(formula.pascals(kelvins))) : Optional.empty();
        Optional<Temperature> dew = Optional.empty();
        Optional<Fraction> atSurface = Optional.empty();
        if (covered && humidity.isPresent()) {
            double vapour = humidity.get().ratio() * formula.pascals(kelvins);
            OptionalDouble point = formula.dewPointKelvins(vapour);
            if (point.isPresent()) {
                dew = Optional.of(new Temperature(point.getAsDouble()));
            } else {
                findings.add(
                        stop("The air is so dry that its dew point lies outside the formula's range: not covered."));
            }
            atSurface = air.surface()
                    .filter(s -> formula.covers(s.kelvins()))
                    .map(s -> new Fraction(vapour / formula.pascals(s.kelvins())));
        }
        Optional<Temperature> dewPoint = dew;
        Optional<TemperatureDifference> margin = air.surface().flatMap(s -> dewPoint.map(d -> s.minus(d)));
        Optional<Temperature> needed = air.limits().dewMargin().flatMap(m -> dewPoint.map(d -> d.plus(m)));
        boolean broken = judge(air, margin, atSurface, needed, findings);
        return new ShopAirResult(
                saturation,
                dew,
                margin,
                atSurface,
                needed,
                !broken && findings.stream().noneMatch(f -> f.severity() == Severity.STOP),
                figures(air, dew, margin, atSurface),
                findings);
    }

    /** Adds what the limits say; returns whether one is broken. */
    private static boolean judge(
            ShopAir air,
            Optional<TemperatureDifference> margin,
            Optional<Fraction> atSurface,
            Optional<Temperature> needed,
            List<Finding> findings) {
        AirLimits limits = air.limits();
        int before = findings.size();
        if (limits.dewMargin().isPresent()
                && margin.isPresent()
                && margin.get().kelvins() < limits.dewMargin().get().kelvins() - 1e-9) {
            findings.add(new Finding(
                    Severity.STOP,
                    "dew point",
                    "The surface is only " + FORMAT.difference(margin.get()) + " above the dew point, "
                            + FORMAT.difference(limits.dewMargin().get()) + " is asked for: warm it to "
                            + needed.map(FORMAT::temperature).orElse("") + " or dry the air.",
                    "[iso8502-4]"));
        }
        Temperature coldest =
                air.surface().filter(s -> s.compareTo(air.air()) < 0).orElse(air.air());
        if (limits.coldest().isPresent() && coldest.compareTo(limits.coldest().get()) < 0) {
            findings.add(new Finding(
                    Severity.STOP,
                    "temperature",
                    "It is " + FORMAT.temperature(coldest) + " at the coldest, the limit is "
                            + FORMAT.temperature(limits.coldest().get()) + ": warm the stand first.",
                    LIMIT));
        }
        if (limits.dampest().isPresent()
                && air.humidity().isPresent()
                && air.humidity().get().compareTo(limits.dampest().get()) > 0) {
            findings.add(new Finding(
                    Severity.STOP,
                    "humidity",
                    "The air holds " + FORMAT.percent(air.humidity().get()) + " relative humidity, the limit is "
                            + FORMAT.percent(limits.dampest().get()) + ": dry or warm the air first.",
                    LIMIT));
        }
        boolean broken = findings.size() > before;
        if (atSurface.isPresent() && atSurface.get().ratio() > BLOOM_HUMIDITY) {
            findings.add(new Finding(
                    Severity.CAUTION,
                    "humidity",
                    String.format(
                            Locale.ROOT,
                            "At the surface the air holds %.0f percent: danger of amine bloom, even where the room is drier.",
                            atSurface.get().percent()),
                    "common practice, no source"));
        }
        return broken;
    }

    private static List<Figure> figures(
            ShopAir air,
            Optional<Temperature> dew,
            Optional<TemperatureDifference> margin,
            Optional<Fraction> atSurface) {
        List<Figure.Input> inputs = new ArrayList<>();
        inputs.add(new Figure.Input("air", FORMAT.temperature(air.air()), Figure.Origin.MEASURED));
        air.humidity()
                .ifPresent(h ->
                        inputs.add(new Figure.Input("relative humidity", FORMAT.percent(h), Figure.Origin.MEASURED)));
        List<Figure> figures = new ArrayList<>();
        String source = switch (air.formula()) {
            case MAGNUS -> "[wmo8]";
            case BUCK -> "[buck1996]";
            case HYLAND_WEXLER -> "[ashrae-f2017]";
        };
        dew.ifPresent(d -> figures.add(new Figure(
                "Dew point",
                FORMAT.temperature(d),
                "temperature at which RH e_s(T_air) saturates",
                inputs,
                source,
                List.of())));
        List<Figure.Input> withSurface = new ArrayList<>(inputs);
        air.surface()
                .ifPresent(s -> withSurface.add(
                        new Figure.Input("coldest surface", FORMAT.temperature(s), Figure.Origin.MEASURED)));
        margin.ifPresent(m -> figures.add(new Figure(
                "Margin to the dew point",
                FORMAT.difference(m),
                "coldest surface - dew point",
                withSurface,
                "[iso8502-4]",
                List.of("Read the coldest surface, not the air: a mould is colder in the morning."))));
        atSurface.ifPresent(h -> figures.add(new Figure(
                "Relative humidity at the surface",
                FORMAT.percent(h),
                "RH e_s(T_air)/e_s(T_surface)",
                withSurface,
                source,
                List.of())));
        return figures;
    }

    private static Finding stop(String sentence) {
        return new Finding(Severity.STOP, "climate", sentence, "[wmo8]");
    }
}
