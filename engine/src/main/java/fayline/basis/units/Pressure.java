package fayline.basis.units;

/**
 * An absolute pressure. A gauge reading below ambient is a {@link Vacuum}. Immutable; held in SI.
 *
 * @param pascals the value in pascals; finite
 */
public record Pressure(double pascals) implements Quantity, Comparable<Pressure> {
    private static final double KILOPASCALS = 1000;
    private static final double HECTOPASCALS = 100;
    private static final double BAR = 1e5;
    private static final double POUNDS_PER_SQUARE_INCH = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
    private static final double INCHES_OF_MERCURY = 3386.389;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Pressure {
        Quantity.requireFinite("Pressure", pascals);
    }

    /** Makes a value from pascals. */
    public static Pressure ofPascals(double pascals) {
        return new Pressure(pascals);
    }

    /** Makes a value from kilopascals. */
    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals * KILOPASCALS);
    }

    /** The value in kilopascals. */
    public double kilopascals() {
        return pascals / KILOPASCALS;
    }

    /** Makes a value from hectopascals. */
    public static Pressure ofHectopascals(double hectopascals) {
        return new Pressure(hectopascals * HECTOPASCALS);
    }

    /** The value in hectopascals. */
    public double hectopascals() {
        return pascals / HECTOPASCALS;
    }

    /** Makes a value from bar. */
    public static Pressure ofBar(double bar) {
        return new Pressure(bar * BAR);
    }

    /** The value in bar. */
    public double bar() {
        return pascals / BAR;
    }

    /** Makes a value from pounds per square inch. */
    public static Pressure ofPoundsPerSquareInch(double poundsPerSquareInch) {
        return new Pressure(poundsPerSquareInch * POUNDS_PER_SQUARE_INCH);
    }

    /** The value in pounds per square inch. */
    public double poundsPerSquareInch() {
        return pascals / POUNDS_PER_SQUARE_INCH;
    }

    /** Makes a value from inches of mercury. */
    public static Pressure ofInchesOfMercury(double inchesOfMercury) {
        return new Pressure(inchesOfMercury * INCHES_OF_MERCURY);
    }

    /** The value in inches of mercury. */
    public double inchesOfMercury() {
        return pascals / INCHES_OF_MERCURY;
    }

    /** The sum of this and another. */
    public Pressure plus(Pressure other) {
        return new Pressure(pascals + other.pascals);
    }

    /** This less another. */
    public Pressure minus(Pressure other) {
        return new Pressure(pascals - other.pascals);
    }

    /** This times a plain number. */
    public Pressure times(double factor) {
        return new Pressure(pascals * factor);
    }

    @Override
    public double si() {
        return pascals;
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(pascals, other.pascals);
    }
}
