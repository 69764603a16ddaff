package fayline.basis.units;

/**
 * A plane angle. Immutable; held in SI.
 *
 * @param radians the value in radians; finite
 */
public record Angle(double radians) implements Quantity, Comparable<Angle> {
    private static final double DEGREES = Math.PI / 180;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Angle {
        Quantity.requireFinite("Angle", radians);
    }

    /** Makes a value from radians. */
    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    /** Makes a value from degrees. */
    public static Angle ofDegrees(double degrees) {
        return new Angle(degrees * DEGREES);
    }

    /** The value in degrees. */
    public double degrees() {
        return radians / DEGREES;
    }

    /** The sum of this and another. */
    public Angle plus(Angle other) {
        return new Angle(radians + other.radians);
    }

    /** This less another. */
    public Angle minus(Angle other) {
        return new Angle(radians - other.radians);
    }

    /** This times a plain number. */
    public Angle times(double factor) {
        return new Angle(radians * factor);
    }

    @Override
    public double si() {
        return radians;
    }

    @Override
    public int compareTo(Angle other) {
        return Double.compare(radians, other.radians);
    }
}
