package fayline.method.joint;

/**
 * A double lap of elastic-plastic adhesive.
 *
 * @param inner the adherend in the middle
 * @param outer each of the outer ones
 * @param bond the adhesive, with the stress at which it flows and its plastic strain
 * @param heatK temperature less that at which the bond is free of stress
 */
public record DoubleLap(Adherend inner, Adherend outer, Adhesive bond, double heatK) {
    /**
     * Refuses an adhesive that does not say how it flows.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public DoubleLap {
        if (bond.yieldPa().isEmpty() || bond.plasticStrain().isEmpty()) {
            throw new IllegalArgumentException(
                    "the strength of a double lap needs the stress at which the adhesive flows and"
                            + " its plastic strain");
        }
    }

    /** What it bears, whatever its overlap. */
    public DoubleLapStrength strength() {
        return DoubleLapStrength.of(inner, outer, bond, heatK);
    }

    /**
     * What it bears at an overlap.
     *
     * @param overlapM overlap; positive
     * @throws IllegalArgumentException where the adherends are not equally stiff or there is heat
     */
    public DoubleLapStrength.AtOverlap at(double overlapM) {
        double si = inner.stretchNPerM();
        double so = 2 * outer.stretchNPerM();
        if (Math.abs(si - so) > 0.01 * so || (heatK != 0 && inner.alphaPerK() != outer.alphaPerK())) {
            throw new IllegalArgumentException(
                    "at an overlap the strength is known for a middle adherend as stiff as both"
                            + " outer ones together, without heat; use the adequate overlap");
        }
        if (!(overlapM > 0)) {
            throw new IllegalArgumentException("an overlap is positive, found " + overlapM + " m");
        }
        return strength().at(overlapM, bond);
    }
}
