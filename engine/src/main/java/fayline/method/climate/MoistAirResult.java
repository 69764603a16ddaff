package fayline.method.climate;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The state of moist air; empty figures where the question is not covered.
 *
 * @param humidityRatio kilograms of water per kilogram of dry air
 * @param dewPoint dew point
 * @param humidity relative humidity
 * @param enthalpyJPerKg enthalpy in J per kilogram of dry air, zero for dry air at 0 degrees Celsius
 * @param specificVolumeM3PerKg volume in m3 per kilogram of dry air
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record MoistAirResult(
        OptionalDouble humidityRatio,
        Optional<Temperature> dewPoint,
        Optional<Fraction> humidity,
        OptionalDouble enthalpyJPerKg,
        OptionalDouble specificVolumeM3PerKg,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public MoistAirResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
