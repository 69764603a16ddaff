package fayline.basis.units;

/**
 * A force. Immutable; held in SI.
 *
 * @param newtons the value in newtons; finite
 */
public record Force(double newtons) implements Quantity, Comparable<Force> {
    private static final double KILONEWTONS = 1000;
    private static final double POUNDS_FORCE = 0.45359237 * 9.80665;
    private static final double KILOGRAMS_FORCE = 9.80665;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Force {
        Quantity.requireFinite("Force", newtons);
    }

    /** Makes a value from newtons. */
    public static Force ofNewtons(double newtons) {
        return new Force(newtons);
    }

    /** Makes a value from kilonewtons. */
    public static Force ofKilonewtons(double kilonewtons) {
        return new Force(kilonewtons * KILONEWTONS);
    }

    /** The value in kilonewtons. */
    public double kilonewtons() {
        return newtons / KILONEWTONS;
    }

    /** Makes a value from pounds force. */
    public static Force ofPoundsForce(double poundsForce) {
        return new Force(poundsForce * POUNDS_FORCE);
    }

    /** The value in pounds force. */
    public double poundsForce() {
        return newtons / POUNDS_FORCE;
    }

    /** Makes a value from kilograms force. */
    public static Force ofKilogramsForce(double kilogramsForce) {
        return new Force(kilogramsForce * KILOGRAMS_FORCE);
    }

    /** The value in kilograms force. */
    public double kilogramsForce() {
        return newtons / KILOGRAMS_FORCE;
    }

    /** The sum of this and another. */
    public Force plus(Force other) {
        return new Force(newtons + other.newtons);
    }

    /** This less another. */
    public Force minus(Force other) {
        return new Force(newtons - other.newtons);
    }

    /** This times a plain number. */
    public Force times(double factor) {
        return new Force(newtons * factor);
    }

    @Override
    public double si() {
        return newtons;
    }

    @Override
    public int compareTo(Force other) {
        return Double.compare(newtons, other.newtons);
    }
}
