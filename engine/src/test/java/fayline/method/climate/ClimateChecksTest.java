package fayline.method.climate;

import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.checks.CheckTable;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the climate table and the climate rows of the published one; sources stand in the tables. */
class ClimateChecksTest {
    static List<CheckTable.Row> rows() {
        return CheckTable.rows("shop/climate.csv");
    }

    static List<CheckTable.Row> published() {
        return CheckTable.rows("shop/published.csv").stream()
                .filter(r -> r.asks("saturation") || r.gives("wet_bulb"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("rows")
    void should_hold_when_computed(CheckTable.Row row) {
        ShopAirResult result = ShopAirCalculator.calculate(new ShopAir(
                new Temperature(row.si("air")),
                Optional.of(new Fraction(row.si("rh"))),
                row.gives("surface") ? Optional.of(new Temperature(row.si("surface"))) : Optional.empty(),
                new AirLimits(
                        Optional.empty(),
                        Optional.empty(),
                        row.gives("required_margin")
                                ? Optional.of(new TemperatureDifference(row.si("required_margin")))
                                : Optional.empty()),
                row.asks("saturation") ? Saturation.BUCK : Saturation.MAGNUS));
        boolean fahrenheit = row.raw("air") > 60;
        if (row.asks("dew_point")) {
            Temperature dew = result.dewPoint().orElseThrow();
            row.holds("dew_point", fahrenheit ? dew.fahrenheit() : dew.celsius());
        }
        if (row.asks("saturation")) {
            row.holds("saturation", result.saturation().orElseThrow().hectopascals());
        }
        if (row.asks("margin")) {
            row.holds("margin", result.margin().orElseThrow().kelvins());
            row.holds("ok", result.ok());
        }
        if (row.asks("rh_at_surface")) {
            row.holds("rh_at_surface", result.humidityAtSurface().orElseThrow().percent());
        }
        assertTrue(result.dewPoint().isPresent());
    }

    @ParameterizedTest
    @MethodSource("published")
    void should_hold_when_printed(CheckTable.Row row) {
        if (row.asks("saturation")) {
            for (Saturation formula : Saturation.values()) {
                row.holds(
                        "saturation",
                        row.list("air").stream()
                                .map(c -> formula.pascals(c + 273.15) / 100)
                                .toList());
            }
            return;
        }
        MoistAirResult result = MoistAirCalculator.calculate(new MoistAir(
                new Temperature(row.si("air")),
                Optional.of(new Temperature(row.si("wet_bulb"))),
                Optional.empty(),
                new Pressure(row.si("pressure"))));
        row.holds("humidity_ratio", result.humidityRatio().orElseThrow());
        row.holds("dew_point", result.dewPoint().orElseThrow().celsius());
        row.holds("rh", result.humidity().orElseThrow().percent());
        row.holds("enthalpy", result.enthalpyJPerKg().orElseThrow() / 1000);
        row.holds("specific_volume", result.specificVolumeM3PerKg().orElseThrow());
    }
}
