package fayline.method.cure.pot;

import fayline.basis.units.Mass;
import fayline.basis.units.Temperature;
import fayline.method.cure.CureSheet;
import fayline.method.cure.PotShape;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The question how long a mixed mass can be used.
 *
 * @param sheet the sheet with its pot-life points
 * @param mass the mixed mass; the data sheet's own where none is given
 * @param temperature shop and resin temperature at mixing
 * @param shape the container
 * @param thickened whether a thickener was stirred in
 * @param exponent the mass exponent n of t = t1 (m1/m)^n, where a person states it; otherwise it is found from the sheet
 */
public record PotLife(
        CureSheet sheet,
        Optional<Mass> mass,
        Temperature temperature,
        PotShape shape,
        boolean thickened,
        OptionalDouble exponent) {
    /** A plain mass in a cup, the exponent from the sheet. */
    public static PotLife inCup(CureSheet sheet, Mass mass, Temperature temperature) {
        return new PotLife(sheet, Optional.of(mass), temperature, PotShape.CUP, false, OptionalDouble.empty());
    }

    /** The same question for another mass. */
    public PotLife withMass(Mass other) {
        return new PotLife(sheet, Optional.of(other), temperature, shape, thickened, exponent);
    }
}
