package fayline.method.joint;

/**
 * A lap joint under a pull.
 *
 * @param kind how it is built
 * @param one adherend 1: of a double lap or double strap the one in the middle
 * @param two adherend 2: of a double lap or double strap each of the outer ones
 * @param bond the adhesive
 * @param overlapM overlap; of a strap the part on one side of the gap; positive
 * @param loadNPerM pull per width; positive
 * @param freeM length of each adherend beyond the overlap to where it can turn; positive
 */
public record LapJoint(
        Kind kind, Adherend one, Adherend two, Adhesive bond, double overlapM, double loadNPerM, double freeM) {
    /** How a joint is built. */
    public enum Kind {
        /** One bond line. */
        SINGLE("single lap"),
        /** Two bond lines on either side of the middle adherend. */
        DOUBLE("double lap"),
        /** Two straps over a gap: each half is a double lap. */
        DOUBLE_STRAP("double strap");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /** As it is written. */
        public String words() {
            return words;
        }

        /** Whether two bond lines share the load. */
        public boolean isTwofold() {
            return this != SINGLE;
        }
    }

    /**
     * Refuses what is no such joint.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public LapJoint {
        if (!(overlapM > 0 && freeM > 0) || !Double.isFinite(overlapM + freeM)) {
            throw new IllegalArgumentException(
                    "overlap and free length must be positive, found " + overlapM + " m and " + freeM + " m");
        }
        if (!(loadNPerM > 0) || Double.isInfinite(loadNPerM)) {
            throw new IllegalArgumentException(
                    "the load of a joint is a pull: a push may buckle it, which is not reckoned;" + " found "
                            + loadNPerM + " N/m");
        }
        if (overlapM < 2 * Math.max(one.thicknessM(), two.thicknessM())) {
            throw new IllegalArgumentException(
                    "adherends count as beams from an overlap of two thicknesses on, found " + overlapM + " m");
        }
    }

    /** Load per width that one bond line carries, in N/m. */
    double perBondNPerM() {
        return kind.isTwofold() ? loadNPerM / 2 : loadNPerM;
    }

    /** Adherend 1 as one bond line sees it. */
    Adherend oneAsSeen() {
        return kind.isTwofold() ? one.halved() : one;
    }

    /** Whether both adherends are alike, which the bending-corrected formula needs. */
    public boolean isBalanced() {
        return near(one.thicknessM(), two.thicknessM()) && near(one.modulusPa(), two.modulusPa());
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= 0.01 * Math.max(a, b);
    }
}
