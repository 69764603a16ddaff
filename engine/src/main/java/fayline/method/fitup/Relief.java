package fayline.method.fitup;

/**
 * How a part stands out of its plane at one place: how high, how its gap looks in or out, and which way its surface looks.
 *
 * @param heightMm outboard of the plane
 * @param normalZ z component of the unit normal of the gap; negative where the neighbour lies inboard
 * @param surface unit normal of the surface, looking outboard
 */
public record Relief(double heightMm, double normalZ, Vector surface) {
    /** In the plane, its surface looking straight outboard. */
    public static final Relief FLAT = new Relief(0, 0, new Vector(0, 0, 1));

    private static final double LEAST = 1e-9;

    /**
     * Makes the surface normal a unit vector.
     *
     * @throws IllegalArgumentException if the surface looks nowhere or a number is none
     */
    public Relief {
        double length = surface.length();
        if (!(length > LEAST) || !Double.isFinite(heightMm) || !Double.isFinite(normalZ)) {
            throw new IllegalArgumentException(
                    "no relief: height " + heightMm + " mm, normal out " + normalZ + ", surface " + surface);
        }
        // Adding nothing makes a negative zero a plain one, so that what is flat is seen to be.
        heightMm += 0.0;
        normalZ += 0.0;
        surface = surface.times(1 / length).plus(Vector.ZERO);
    }

    /** Whether it lies in the plane. */
    public boolean isFlat() {
        return equals(FLAT);
    }
}
