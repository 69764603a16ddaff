package fayline.method.fitup.frame;

/**
 * A place in space, or an arm from one place to another.
 *
 * @param xMm along x
 * @param yMm along y
 * @param zMm along z
 */
public record FramePoint(double xMm, double yMm, double zMm) {
    /** Refuses what is no number. */
    public FramePoint {
        if (!Double.isFinite(xMm) || !Double.isFinite(yMm) || !Double.isFinite(zMm)) {
            throw new IllegalArgumentException("no place: " + xMm + ", " + yMm + ", " + zMm + " mm");
        }
    }

    /** A place in the plane z = 0. */
    public static FramePoint of(double xMm, double yMm) {
        return new FramePoint(xMm, yMm, 0);
    }

    /** The arm from another place to this one. */
    public FramePoint from(FramePoint other) {
        return new FramePoint(xMm - other.xMm, yMm - other.yMm, zMm - other.zMm);
    }

    /** How long it is from the origin, or as an arm, in mm. */
    public double lengthMm() {
        return Math.sqrt(xMm * xMm + yMm * yMm + zMm * zMm);
    }

    /** The part of it along a direction, in mm. */
    public double along(Axis axis) {
        return xMm * axis.x() + yMm * axis.y() + zMm * axis.z();
    }
}
