package fayline.method.fitup.frame;

/**
 * A direction in space, of length one.
 *
 * @param x its part along x
 * @param y along y
 * @param z along z
 */
public record Axis(double x, double y, double z) {
    /** Along x. */
    public static final Axis X = new Axis(1, 0, 0);
    /** Along y. */
    public static final Axis Y = new Axis(0, 1, 0);
    /** Along z. */
    public static final Axis Z = new Axis(0, 0, 1);

    private static final double LEAST = 1e-12;

    /**
     * Makes it of length one.
     *
     * @throws IllegalArgumentException if it has no length
     */
    public Axis {
        double length = Math.sqrt(x * x + y * y + z * z);
        if (!(length > LEAST) || Double.isInfinite(length)) {
            throw new IllegalArgumentException("no direction: " + x + ", " + y + ", " + z);
        }
        x /= length;
        y /= length;
        z /= length;
    }

    /** The direction of an arm. */
    public static Axis of(FramePoint arm) {
        return new Axis(arm.xMm(), arm.yMm(), arm.zMm());
    }

    /** The cosine of the angle to another direction. */
    public double dot(Axis other) {
        return x * other.x + y * other.y + z * other.z;
    }

    /** The direction square to this and another. */
    public Axis cross(Axis other) {
        return new Axis(y * other.z - z * other.y, z * other.x - x * other.z, x * other.y - y * other.x);
    }

    /** This direction less what of it lies along another. */
    public Axis squareTo(Axis other) {
        double d = dot(other);
        return new Axis(x - d * other.x, y - d * other.y, z - d * other.z);
    }
}
