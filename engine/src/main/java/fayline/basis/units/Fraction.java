package fayline.basis.units;

/**
 * A dimensionless fraction, 1 being the whole; the field that holds it says of what and by mass or by volume. Immutable; held in SI.
 *
 * @param ratio the value in ratio; finite
 */
public record Fraction(double ratio) implements Quantity, Comparable<Fraction> {
    private static final double PERCENT = 0.01;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Fraction {
        Quantity.requireFinite("Fraction", ratio);
    }

    /** Makes a value from ratio. */
    public static Fraction ofRatio(double ratio) {
        return new Fraction(ratio);
    }

    /** Makes a value from percent. */
    public static Fraction ofPercent(double percent) {
        return new Fraction(percent * PERCENT);
    }

    /** The value in percent. */
    public double percent() {
        return ratio / PERCENT;
    }

    /** The sum of this and another. */
    public Fraction plus(Fraction other) {
        return new Fraction(ratio + other.ratio);
    }

    /** This less another. */
    public Fraction minus(Fraction other) {
        return new Fraction(ratio - other.ratio);
    }

    /** This times a plain number. */
    public Fraction times(double factor) {
        return new Fraction(ratio * factor);
    }

    @Override
    public double si() {
        return ratio;
    }

    @Override
    public int compareTo(Fraction other) {
        return Double.compare(ratio, other.ratio);
    }
}
