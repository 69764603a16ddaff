package fayline.method.fitup;

/**
 * A rigid move of the part in space about a pivot.
 *
 * @param shiftMm how far the pivot goes
 * @param turnRad small turn by the right-hand rule, axis times angle
 */
public record SpaceMove(Vector shiftMm, Vector turnRad) {
    /** No move. */
    public static final SpaceMove NONE = new SpaceMove(Vector.ZERO, Vector.ZERO);

    /** A move in the plane, told in space. */
    public static SpaceMove of(Move inPlane) {
        return new SpaceMove(new Vector(inPlane.dxMm(), inPlane.dyMm(), 0), new Vector(0, 0, inPlane.turnRad()));
    }

    /** What of it lies in the plane: the shift along x and up, and the turn seen from outside. */
    public Move inPlane() {
        return new Move(shiftMm.x(), shiftMm.y(), turnRad.z());
    }

    /** Whether it does anything at all. */
    public boolean isSome() {
        return shiftMm.length() > 0 || turnRad.length() > 0;
    }

    /** The same small move without what of it lies in the plane. */
    public SpaceMove outOfPlane() {
        return new SpaceMove(new Vector(0, 0, shiftMm.z()), new Vector(turnRad.x(), turnRad.y(), 0));
    }

    /**
     * How far a place on the part goes, in mm.
     *
     * @param place before the move
     * @param pivot the pivot of this move
     */
    public Vector carries(Vector place, Vector pivot) {
        Vector arm = place.minus(pivot);
        return arm.turned(turnRad).minus(arm).plus(shiftMm);
    }

    /**
     * How far a small move carries a place along a direction, to first order, in mm: m · shift + (r × m) · turn [goldstein1980].
     *
     * @param place on the part
     * @param way the unit direction m
     * @param pivot the pivot of this move; r is the place less the pivot
     */
    public double alongMm(Vector place, Vector way, Vector pivot) {
        return way.dot(shiftMm) + place.minus(pivot).cross(way).dot(turnRad);
    }

    /** The turn in degrees. */
    public Vector turnDeg() {
        return turnRad.times(Math.toDegrees(1));
    }
}
