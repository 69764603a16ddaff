package fayline.method.fitup;

/**
 * A place in the plane of the part.
 *
 * @param xMm along x (left part: aft)
 * @param yMm up
 */
public record Spot(double xMm, double yMm) {
    /** Refuses what is no number. */
    public Spot {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm)) {
            throw new IllegalArgumentException("a place of " + xMm + ", " + yMm + " mm is none");
        }
    }

    /** This place moved on. */
    public Spot plus(double dxMm, double dyMm) {
        return new Spot(xMm + dxMm, yMm + dyMm);
    }

    /** How far another place is. */
    public double distanceMm(Spot other) {
        return Math.hypot(xMm - other.xMm, yMm - other.yMm);
    }
}
