package fayline.method.plate;

/**
 * A flat rectangular plate of one material under even pressure.
 *
 * @param aM length along 1; positive
 * @param bM width along 2; positive
 * @param thicknessM thickness; positive, at most a tenth of the shorter side
 * @param stiffness bending stiffnesses
 * @param pressurePa pressure
 * @param edges how all four edges are held
 */
public record FlatPlate(
        double aM, double bM, double thicknessM, PlateStiffness stiffness, double pressurePa, Edges edges) {
    /** Thicker than this part of its short side a plate shears noticeably; common practice, no source. */
    private static final double THIN = 0.1;

    /**
     * Refuses what is no thin plate.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public FlatPlate {
        if (!(aM > 0 && bM > 0 && thicknessM > 0) || !Double.isFinite(aM + bM + thicknessM + pressurePa)) {
            throw new IllegalArgumentException("a plate has positive sides and thickness and a finite pressure, found "
                    + aM + " by " + bM + " by " + thicknessM + " m, " + pressurePa + " Pa");
        }
        if (thicknessM > THIN * Math.min(aM, bM)) {
            throw new IllegalArgumentException("a thin plate is at most a tenth of its shorter side thick, found "
                    + thicknessM + " m on " + Math.min(aM, bM) + " m");
        }
    }
}
