package fayline.basis.units;

/**
 * Force per area in a material: a modulus, a stress, a strength. Immutable; held in SI.
 *
 * @param pascals the value in pascals; finite
 */
public record Stress(double pascals) implements Quantity, Comparable<Stress> {
    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Stress {
        Quantity.requireFinite("Stress", pascals);
    }

    /** Makes a value from megapascals, which are newtons per square millimetre. */
    public static Stress ofMegapascals(double megapascals) {
        return new Stress(megapascals * 1e6);
    }

    /** The value in megapascals. */
    public double megapascals() {
        return pascals / 1e6;
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public int compareTo(Stress other) {
        return Double.compare(pascals, other.pascals);
    }
}
