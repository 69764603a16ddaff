package fayline.method.fitup;

/**
 * A rigid move of the part in its plane about a pivot c: x goes to c + R(turn)(x − c) + (dx, dy). The shift depends on the
 * pivot, so a move is never told without it.
 *
 * @param dxMm along x
 * @param dyMm up
 * @param turnRad counter-clockwise seen from outside
 */
public record Move(double dxMm, double dyMm, double turnRad) {
    /** No move. */
    public static final Move NONE = new Move(0, 0, 0);

    /** Refuses what is no number. */
    public Move {
        if (!Double.isFinite(dxMm) || !Double.isFinite(dyMm) || !Double.isFinite(turnRad)) {
            throw new IllegalArgumentException("no move: " + dxMm + ", " + dyMm + " mm, " + turnRad + " rad");
        }
    }

    /** The turn in degrees. */
    public double turnDeg() {
        return Math.toDegrees(turnRad);
    }

    /** How far the pivot shifts, in mm. */
    public double shiftMm() {
        return Math.hypot(dxMm, dyMm);
    }

    /**
     * Where a place on the part goes.
     *
     * @param place before the move
     * @param pivot the pivot of this move
     */
    public Spot of(Spot place, Spot pivot) {
        double rx = place.xMm() - pivot.xMm();
        double ry = place.yMm() - pivot.yMm();
        double c = Math.cos(turnRad);
        double s = Math.sin(turnRad);
        return new Spot(pivot.xMm() + c * rx - s * ry + dxMm, pivot.yMm() + s * rx + c * ry + dyMm);
    }

    /** The same rigid motion told about another pivot. */
    public Move about(Spot from, Spot to) {
        Spot moved = of(to, from);
        return new Move(moved.xMm() - to.xMm(), moved.yMm() - to.yMm(), turnRad);
    }
}
