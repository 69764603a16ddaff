package fayline.basis.units;

/**
 * A mass. Immutable; held in SI.
 *
 * @param kilograms the value in kilograms; finite
 */
public record Mass(double kilograms) implements Quantity, Comparable<Mass> {
    private static final double GRAMS = 1e-3;
    private static final double POUNDS = 0.45359237;
    private static final double OUNCES = 0.45359237 / 16;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Mass {
        Quantity.requireFinite("Mass", kilograms);
    }

    /** Makes a value from kilograms. */
    public static Mass ofKilograms(double kilograms) {
        return new Mass(kilograms);
    }

    /** Makes a value from grams. */
    public static Mass ofGrams(double grams) {
        return new Mass(grams * GRAMS);
    }

    /** The value in grams. */
    public double grams() {
        return kilograms / GRAMS;
    }

    /** Makes a value from pounds. */
    public static Mass ofPounds(double pounds) {
        return new Mass(pounds * POUNDS);
    }

    /** The value in pounds. */
    public double pounds() {
        return kilograms / POUNDS;
    }

    /** Makes a value from ounces. */
    public static Mass ofOunces(double ounces) {
        return new Mass(ounces * OUNCES);
    }

    /** The value in ounces. */
    public double ounces() {
        return kilograms / OUNCES;
    }

    /** The sum of this and another. */
    public Mass plus(Mass other) {
        return new Mass(kilograms + other.kilograms);
    }

    /** This less another. */
    public Mass minus(Mass other) {
        return new Mass(kilograms - other.kilograms);
    }

    /** This times a plain number. */
    public Mass times(double factor) {
        return new Mass(kilograms * factor);
    }

    @Override
    public double si() {
        return kilograms;
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(kilograms, other.kilograms);
    }
}
