package fayline.method.fitup.space;

/**
 * A rigid move of the part in space about a pivot.
 *
 * @param shiftMm how far the pivot goes
 * @param turnRad small turn by the right-hand rule, axis times angle
 */
public record SpaceMove(Vector shiftMm, Vector turnRad) {
    /** No move. */
    public static final SpaceMove NONE = new SpaceMove(Vector.ZERO, Vector.ZERO);

    /** The turn in degrees. */
    public Vector turnDeg() {
        return turnRad.times(Math.toDegrees(1));
    }
}
