package fayline.method.plate;

/**
 * Bending stiffnesses of a plate whose axes of material lie along its edges, per width.
 *
 * @param d11Nm along a; positive
 * @param d12Nm coupling
 * @param d22Nm along b; positive
 * @param d66Nm twist; positive
 */
public record PlateStiffness(double d11Nm, double d12Nm, double d22Nm, double d66Nm) {
    private static final double TWELFTH = 1.0 / 12;

    /**
     * Refuses what no material has.
     *
     * @throws IllegalArgumentException unless D11, D22 and D66 are positive and D12^2 is below D11 D22
     */
    public PlateStiffness {
        if (!(d11Nm > 0 && d22Nm > 0 && d66Nm > 0 && d12Nm * d12Nm < d11Nm * d22Nm)
                || !Double.isFinite(d11Nm + d22Nm + d66Nm)) {
            throw new IllegalArgumentException(
                    "bending stiffnesses must be positive and D12 squared below D11 D22, found D11 " + d11Nm + ", D12 "
                            + d12Nm + ", D22 " + d22Nm + ", D66 " + d66Nm + " N m");
        }
    }

    /**
     * Of one sheet that is alike in all directions.
     *
     * @param modulusPa Young's modulus; positive
     * @param poisson Poisson's ratio; above -1, below 0.5
     * @param thicknessM thickness; positive
     */
    public static PlateStiffness isotropic(double modulusPa, double poisson, double thicknessM) {
        if (!(poisson > -1 && poisson < 0.5)) {
            throw new IllegalArgumentException("Poisson's ratio must lie above -1 and below 0.5, found " + poisson);
        }
        return orthotropic(modulusPa, modulusPa, poisson, modulusPa / (2 * (1 + poisson)), thicknessM);
    }

    /**
     * Of one sheet with a grain along an edge.
     *
     * @param modulus1Pa Young's modulus along a; positive
     * @param modulus2Pa Young's modulus along b; positive
     * @param poisson12 Poisson's ratio of a pull along a; its size below the square root of E1/E2
     * @param shearPa shear modulus; positive
     * @param thicknessM thickness; positive
     */
    public static PlateStiffness orthotropic(
            double modulus1Pa, double modulus2Pa, double poisson12, double shearPa, double thicknessM) {
        if (!(modulus1Pa > 0 && modulus2Pa > 0 && shearPa > 0 && thicknessM > 0)) {
            throw new IllegalArgumentException("moduli and thickness must be positive, found E1 " + modulus1Pa + ", E2 "
                    + modulus2Pa + ", G12 " + shearPa + " Pa, thickness " + thicknessM + " m");
        }
        if (!(Math.abs(poisson12) < Math.sqrt(modulus1Pa / modulus2Pa))) {
            throw new IllegalArgumentException(
                    "Poisson's ratio must be smaller than the square root of E1/E2, found " + poisson12);
        }
        double d = Math.pow(thicknessM, 3) * TWELFTH;
        double q = 1 - poisson12 * poisson12 * modulus2Pa / modulus1Pa;
        return new PlateStiffness(modulus1Pa * d / q, poisson12 * modulus2Pa * d / q, modulus2Pa * d / q, shearPa * d);
    }

    /** The stiffness against bending along both axes at once: D12 + 2 D66. */
    double mixedNm() {
        return d12Nm + 2 * d66Nm;
    }
}
