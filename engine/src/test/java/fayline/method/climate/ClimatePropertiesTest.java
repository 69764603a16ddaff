package fayline.method.climate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Severity;
import fayline.basis.units.Fraction;
import fayline.basis.units.Pressure;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ClimatePropertiesTest {
    private static final AirLimits LIMITS = new AirLimits(
            Optional.of(Temperature.ofCelsius(17)),
            Optional.of(Fraction.ofPercent(70)),
            Optional.of(new TemperatureDifference(3)));

    @Test
    void should_return_the_vapour_pressure_when_the_dew_point_saturates() {
        Random random = new Random(7);
        for (int i = 0; i < 300; i++) {
            double kelvins = 275 + 30 * random.nextDouble();
            double humidity = 0.4 + 0.6 * random.nextDouble();
            for (Saturation formula : Saturation.values()) {
                double vapour = humidity * formula.pascals(kelvins);
                if (formula == Saturation.HYLAND_WEXLER && vapour < formula.pascals(273.15)) {
                    continue;
                }
                double dew = formula.dewPointKelvins(vapour).orElseThrow();
                assertEquals(vapour, formula.pascals(dew), vapour * 1e-9);
                assertTrue(dew <= kelvins + 1e-9);
            }
        }
    }

    @Test
    void should_agree_between_wet_bulb_and_humidity_when_asked_both_ways() {
        MoistAirResult wet = MoistAirCalculator.calculate(new MoistAir(
                Temperature.ofCelsius(25),
                Optional.of(Temperature.ofCelsius(18)),
                Optional.empty(),
                Pressure.ofHectopascals(1000)));
        MoistAirResult back = MoistAirCalculator.calculate(new MoistAir(
                Temperature.ofCelsius(25), Optional.empty(), wet.humidity(), Pressure.ofHectopascals(1000)));
        assertEquals(wet.humidityRatio().orElseThrow(), back.humidityRatio().orElseThrow(), 1e-12);
    }

    @Test
    void should_keep_the_margin_when_the_surface_is_as_warm_as_needed() {
        ShopAirResult cold = ShopAirCalculator.calculate(
                ShopAir.of(Temperature.ofCelsius(19), Fraction.ofPercent(68), Temperature.ofCelsius(14), LIMITS));
        assertFalse(cold.ok());
        Temperature needed = cold.surfaceNeeded().orElseThrow();
        Temperature warmed = needed.compareTo(Temperature.ofCelsius(17)) < 0 ? Temperature.ofCelsius(17) : needed;
        assertTrue(ShopAirCalculator.calculate(
                        ShopAir.of(Temperature.ofCelsius(19), Fraction.ofPercent(68), warmed, LIMITS))
                .ok());
    }

    @Test
    void should_say_not_covered_when_the_humidity_is_impossible() {
        for (double humidity : new double[] {0, -0.1, 1.2}) {
            ShopAirResult result = ShopAirCalculator.calculate(
                    ShopAir.of(Temperature.ofCelsius(20), new Fraction(humidity), Temperature.ofCelsius(20), LIMITS));
            assertTrue(result.dewPoint().isEmpty());
            assertFalse(result.ok());
            assertTrue(result.findings().stream()
                    .anyMatch(f -> f.severity() == Severity.STOP && f.sentence().contains("not covered")));
        }
    }
}
