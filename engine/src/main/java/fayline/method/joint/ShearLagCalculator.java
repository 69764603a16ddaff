package fayline.method.joint;

/** Shear lag of a lap joint alone, where nothing is known of bending ([volkersen1938]). */
public final class ShearLagCalculator {
    private ShearLagCalculator() {}

    /**
     * Shear lag; of a double lap half the load and half the middle adherend belong to each bond line.
     *
     * @param kind how it is built
     * @param loadNPerM pull per width; positive
     * @param overlapM overlap; positive
     * @param stretch1NPerM modulus times thickness of adherend 1, of a double lap that in the middle; positive
     * @param stretch2NPerM the same of adherend 2, of a double lap of each outer one; positive
     * @param bond the adhesive; its Young's modulus does not count
     * @throws IllegalArgumentException outside these
     */
    public static ShearLag calculate(
            LapJoint.Kind kind,
            double loadNPerM,
            double overlapM,
            double stretch1NPerM,
            double stretch2NPerM,
            Adhesive bond) {
        if (!(loadNPerM > 0 && overlapM > 0 && stretch1NPerM > 0 && stretch2NPerM > 0)
                || !Double.isFinite(loadNPerM + overlapM + stretch1NPerM + stretch2NPerM)) {
            throw new IllegalArgumentException("load, overlap and stiffness of a joint must be positive, found "
                    + loadNPerM + " N/m, " + overlapM + " m, " + stretch1NPerM + " and " + stretch2NPerM + " N/m");
        }
        double half = kind.isTwofold() ? 0.5 : 1;
        return ShearLag.of(loadNPerM * half, overlapM, stretch1NPerM * half, stretch2NPerM, bond);
    }
}
