package fayline.method.climate;

import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import java.util.Optional;

/**
 * What the air must be before wet work begins.
 *
 * @param coldest least air and surface temperature
 * @param dampest most relative humidity of the room air
 * @param dewMargin least distance of the coldest surface above the dew point; 3 K is coating practice
 */
public record AirLimits(
        Optional<Temperature> coldest, Optional<Fraction> dampest, Optional<TemperatureDifference> dewMargin) {
    /** No limit at all. */
    public static AirLimits none() {
        return new AirLimits(Optional.empty(), Optional.empty(), Optional.empty());
    }
}
