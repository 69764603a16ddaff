package fayline.basis.units;

/**
 * A length; may be negative where a position or an offset is meant. Immutable; held in SI.
 *
 * @param metres the value in metres; finite
 */
public record Length(double metres) implements Quantity, Comparable<Length> {
    private static final double MILLIMETRES = 1e-3;
    private static final double INCHES = 0.0254;
    private static final double THOU = 0.0254e-3;
    private static final double FEET = 0.3048;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Length {
        Quantity.requireFinite("Length", metres);
    }

    /** Makes a value from metres. */
    public static Length ofMetres(double metres) {
        return new Length(metres);
    }

    /** Makes a value from millimetres. */
    public static Length ofMillimetres(double millimetres) {
        return new Length(millimetres * MILLIMETRES);
    }

    /** The value in millimetres. */
    public double millimetres() {
        return metres / MILLIMETRES;
    }

    /** Makes a value from inches. */
    public static Length ofInches(double inches) {
        return new Length(inches * INCHES);
    }

    /** The value in inches. */
    public double inches() {
        return metres / INCHES;
    }

    /** Makes a value from thou. */
    public static Length ofThou(double thou) {
        return new Length(thou * THOU);
    }

    /** The value in thou. */
    public double thou() {
        return metres / THOU;
    }

    /** Makes a value from feet. */
    public static Length ofFeet(double feet) {
        return new Length(feet * FEET);
    }

    /** The value in feet. */
    public double feet() {
        return metres / FEET;
    }

    /** The sum of this and another. */
    public Length plus(Length other) {
        return new Length(metres + other.metres);
    }

    /** This less another. */
    public Length minus(Length other) {
        return new Length(metres - other.metres);
    }

    /** This times a plain number. */
    public Length times(double factor) {
        return new Length(metres * factor);
    }

    @Override
    public double si() {
        return metres;
    }

    @Override
    public int compareTo(Length other) {
        return Double.compare(metres, other.metres);
    }
}
