package fayline.method.climate;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.QuantityFormat;
import fayline.basis.units.Temperature;
import fayline.basis.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Moist air after [ashrae-f2017], chapter 1: saturation by Hyland and Wexler (eq. 6), humidity ratio from the wet bulb (eq. 33),
 * relative humidity (eq. 22), enthalpy h = 1.006 t + W (2501 + 1.86 t) kJ/kg (eq. 30), specific volume
 * 0.287042 T (1 + 1.607858 W)/p (eq. 26). Air and wet bulb from 0 to 200 degrees Celsius over water.
 */
public final class MoistAirCalculator {
    private static final double MASS_RATIO = 0.621945;
    private static final double DRY_AIR_J_PER_KG_K = 287.042;
    private static final Saturation WATER = Saturation.HYLAND_WEXLER;
    private static final QuantityFormat FORMAT = new QuantityFormat(UnitSystem.METRIC);

    private MoistAirCalculator() {}

    /** Answers the question. */
    public static MoistAirResult calculate(MoistAir air) {
        double t = air.dryBulb().celsius();
        double p = air.pressure().pascals();
        double saturation = WATER.covers(air.dryBulb().kelvins())
                ? WATER.pascals(air.dryBulb().kelvins())
                : Double.NaN;
        if (!(saturation < p)) {
            return refused("The air must lie between 0 and 200 degC and below its boiling point: not covered.");
        }
        double w;
        if (air.wetBulb().isPresent()) {
            Temperature wet = air.wetBulb().get();
            if (!WATER.covers(wet.kelvins()) || wet.compareTo(air.dryBulb()) > 0) {
                return refused("The wet bulb must lie between 0 degC and the air temperature: not covered.");
            }
            double ws = ratio(WATER.pascals(wet.kelvins()), p);
            double c = wet.celsius();
            w = ((2501 - 2.326 * c) * ws - 1.006 * (t - c)) / (2501 + 1.86 * t - 4.186 * c);
        } else if (air.humidity().isPresent()
                && air.humidity().get().ratio() >= 0
                && air.humidity().get().ratio() <= 1) {
            w = ratio(air.humidity().get().ratio() * saturation, p);
        } else {
            return refused("A wet bulb or a relative humidity between 0 and 100 percent is needed: not covered.");
        }
        if (w < 0) {
            return refused("The wet bulb is colder than perfectly dry air would make it: not covered, read it again.");
        }
        return result(air, t, p, saturation, w);
    }

    private static MoistAirResult result(MoistAir air, double t, double p, double saturation, double w) {
        double vapour = w * p / (MASS_RATIO + w);
        OptionalDouble dew = WATER.dewPointKelvins(vapour);
        double enthalpy = 1000 * (1.006 * t + w * (2501 + 1.86 * t));
        double volume = DRY_AIR_J_PER_KG_K * air.dryBulb().kelvins() * (1 + 1.607858 * w) / p;
        Figure figure = new Figure(
                "Humidity ratio",
                String.format(Locale.ROOT, "%.5f kg/kg", w),
                air.wetBulb().isPresent()
                        ? "W = ((2501 - 2.326 t*) Ws* - 1.006 (t - t*))/(2501 + 1.86 t - 4.186 t*)"
                        : "W = 0.621945 RH pws/(p - RH pws)",
                List.of(
                        new Figure.Input("air", FORMAT.temperature(air.dryBulb()), Figure.Origin.MEASURED),
                        new Figure.Input(
                                "wet bulb",
                                air.wetBulb().map(FORMAT::temperature).orElse("not read"),
                                Figure.Origin.MEASURED),
                        new Figure.Input(
                                "pressure", String.format(Locale.ROOT, "%.1f hPa", p / 100), Figure.Origin.ENTERED)),
                "[ashrae-f2017]",
                List.of());
        List<Finding> findings = dew.isPresent()
                ? List.of()
                : List.of(new Finding(
                        Severity.NOTE, "dew point", "The dew point lies below 0 degC: not covered.", "[ashrae-f2017]"));
        return new MoistAirResult(
                OptionalDouble.of(w),
                dew.isPresent() ? Optional.of(new Temperature(dew.getAsDouble())) : Optional.empty(),
                Optional.of(new Fraction(vapour / saturation)),
                OptionalDouble.of(enthalpy),
                OptionalDouble.of(volume),
                List.of(figure),
                findings);
    }

    private static double ratio(double vapour, double pressure) {
        return MASS_RATIO * vapour / (pressure - vapour);
    }

    private static MoistAirResult refused(String sentence) {
        return new MoistAirResult(
                OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                List.of(),
                List.of(new Finding(Severity.STOP, "moist air", sentence, "[ashrae-f2017]")));
    }
}
