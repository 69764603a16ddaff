package fayline.method.climate;

import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import java.util.Optional;

/**
 * The question whether the shop's air allows coating, laminating and bonding on a surface.
 *
 * @param air air temperature
 * @param humidity relative humidity of the air, where it is known
 * @param surface the coldest surface: a mould is colder than the air in the morning
 * @param limits the limits
 * @param formula the saturation formula; Magnus unless there is a reason
 */
public record ShopAir(
        Temperature air,
        Optional<Fraction> humidity,
        Optional<Temperature> surface,
        AirLimits limits,
        Saturation formula) {
    /** Air of known humidity against a surface, by Magnus' formula. */
    public static ShopAir of(Temperature air, Fraction humidity, Temperature surface, AirLimits limits) {
        return new ShopAir(air, Optional.of(humidity), Optional.of(surface), limits, Saturation.MAGNUS);
    }
}
