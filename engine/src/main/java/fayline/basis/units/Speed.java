package fayline.basis.units;

/**
 * A speed. Immutable; held in SI.
 *
 * @param metresPerSecond the value in metres per second; finite
 */
public record Speed(double metresPerSecond) implements Quantity, Comparable<Speed> {
    private static final double KNOTS = 1852.0 / 3600;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Speed {
        Quantity.requireFinite("Speed", metresPerSecond);
    }

    /** Makes a value from metres per second. */
    public static Speed ofMetresPerSecond(double metresPerSecond) {
        return new Speed(metresPerSecond);
    }

    /** Makes a value from knots. */
    public static Speed ofKnots(double knots) {
        return new Speed(knots * KNOTS);
    }

    /** The value in knots. */
    public double knots() {
        return metresPerSecond / KNOTS;
    }

    /** The sum of this and another. */
    public Speed plus(Speed other) {
        return new Speed(metresPerSecond + other.metresPerSecond);
    }

    /** This less another. */
    public Speed minus(Speed other) {
        return new Speed(metresPerSecond - other.metresPerSecond);
    }

    /** This times a plain number. */
    public Speed times(double factor) {
        return new Speed(metresPerSecond * factor);
    }

    @Override
    public double si() {
        return metresPerSecond;
    }

    @Override
    public int compareTo(Speed other) {
        return Double.compare(metresPerSecond, other.metresPerSecond);
    }
}
