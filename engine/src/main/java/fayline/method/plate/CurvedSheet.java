package fayline.method.plate;

/**
 * A sheet curved one way with the pressure on its hollow side, as a piece of a closed cylinder: membrane stress only
 * [timoshenko1959]. The frame bends its edges besides.
 *
 * @param radiusM radius; positive, at least ten thicknesses
 * @param thicknessM thickness; positive
 * @param modulusPa Young's modulus; positive
 * @param poisson Poisson's ratio; above -1, below 0.5
 * @param pressurePa pressure on the hollow side; not negative: from outside the sheet may buckle, which is not reckoned
 */
public record CurvedSheet(double radiusM, double thicknessM, double modulusPa, double poisson, double pressurePa) {
    private static final double THIN = 10;

    /**
     * Refuses what is no thin shell or presses from outside.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public CurvedSheet {
        if (!(thicknessM > 0 && modulusPa > 0 && radiusM >= THIN * thicknessM)
                || !Double.isFinite(radiusM + modulusPa)) {
            throw new IllegalArgumentException("a thin curved sheet has a radius of at least ten thicknesses, found "
                    + radiusM + " m on " + thicknessM + " m");
        }
        if (!(poisson > -1 && poisson < 0.5)) {
            throw new IllegalArgumentException("Poisson's ratio must lie above -1 and below 0.5, found " + poisson);
        }
        if (!(pressurePa >= 0)) {
            throw new IllegalArgumentException("pressure from outside may buckle a curved sheet, which is not reckoned:"
                    + " it must not be negative, found " + pressurePa + " Pa");
        }
    }

    /** Stress around the curve: p R / t, in pascals. */
    public double hoopStressPa() {
        return pressurePa * radiusM / thicknessM;
    }

    /** Growth of the radius with closed ends: p R^2 (1 - nu/2) / (E t), in metres. */
    public double growthM() {
        return hoopStressPa() * radiusM * (1 - poisson / 2) / modulusPa;
    }
}
