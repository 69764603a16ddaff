package fayline.method.fitup;

/**
 * Three numbers along x, y, z: a place or a shift in mm, a direction, or a small turn in rad by the right-hand rule.
 *
 * @param x along x
 * @param y along y
 * @param z outboard
 */
public record Vector(double x, double y, double z) {
    /** Nothing along any axis. */
    public static final Vector ZERO = new Vector(0, 0, 0);

    /** Refuses what is no number. */
    public Vector {
        if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(z)) {
            throw new IllegalArgumentException("no vector: " + x + ", " + y + ", " + z);
        }
    }

    /** A place in the plane, lifted. */
    public static Vector of(Spot spot, double z) {
        return new Vector(spot.xMm(), spot.yMm(), z);
    }

    /** The sum. */
    public Vector plus(Vector o) {
        return new Vector(x + o.x, y + o.y, z + o.z);
    }

    /** The difference. */
    public Vector minus(Vector o) {
        return new Vector(x - o.x, y - o.y, z - o.z);
    }

    /** This times a number. */
    public Vector times(double factor) {
        return new Vector(x * factor, y * factor, z * factor);
    }

    /** The inner product. */
    public double dot(Vector o) {
        return x * o.x + y * o.y + z * o.z;
    }

    /** The outer product. */
    public Vector cross(Vector o) {
        return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    /** The length. */
    public double length() {
        return Math.sqrt(dot(this));
    }

    /**
     * Turned by a rotation vector.
     *
     * @param turnRad axis times angle
     */
    public Vector turned(Vector turnRad) {
        double angle = turnRad.length();
        if (angle == 0) {
            return this;
        }
        double half = Math.sin(angle / 2) / angle;
        Vector once = turnRad.cross(this);
        return plus(once.times(Math.sin(angle) / angle))
                .plus(turnRad.cross(once).times(2 * half * half));
    }
}
