package fayline.method.joint;

import java.util.OptionalDouble;

/**
 * A layer of adhesive.
 *
 * @param shearPa shear modulus; positive
 * @param modulusPa Young's modulus; positive
 * @param thicknessM thickness of the bond line; positive
 * @param yieldPa shear stress at which it flows, where that is known
 * @param plasticStrain shear strain it flows by after that, in addition to the elastic one, where that is known
 */
public record Adhesive(
        double shearPa, double modulusPa, double thicknessM, OptionalDouble yieldPa, OptionalDouble plasticStrain) {
    /**
     * Refuses what no adhesive has.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public Adhesive {
        if (!(shearPa > 0 && modulusPa > 0 && thicknessM > 0) || !Double.isFinite(shearPa + modulusPa + thicknessM)) {
            throw new IllegalArgumentException("moduli and thickness of an adhesive must be positive, found G "
                    + shearPa + " Pa, E " + modulusPa + " Pa, " + thicknessM + " m");
        }
        if (!(modulusPa < 3 * shearPa * (1 + 1e-6)) || !(modulusPa > shearPa)) {
            throw new IllegalArgumentException("Young's modulus of an adhesive lies between G and 3 G, found E "
                    + modulusPa + " Pa with G " + shearPa + " Pa");
        }
        if ((yieldPa.isPresent() && !(yieldPa.getAsDouble() > 0))
                || (plasticStrain.isPresent() && !(plasticStrain.getAsDouble() >= 0))) {
            throw new IllegalArgumentException(
                    "the stress at which an adhesive flows is positive and its plastic strain not" + " negative");
        }
    }

    /** An adhesive that stays elastic. */
    public static Adhesive elastic(double shearPa, double modulusPa, double thicknessM) {
        return new Adhesive(shearPa, modulusPa, thicknessM, OptionalDouble.empty(), OptionalDouble.empty());
    }
}
