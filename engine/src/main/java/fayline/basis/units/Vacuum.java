package fayline.basis.units;

/**
 * A pressure below ambient, as a dial gauge on a bag shows it. Never added to a {@link Pressure} unseen. Immutable; held in SI.
 *
 * @param pascalsBelowAmbient the value in pascals below ambient; finite
 */
public record Vacuum(double pascalsBelowAmbient) implements Quantity, Comparable<Vacuum> {
    private static final double KILOPASCALS = 1000;
    private static final double HECTOPASCALS = 100;
    private static final double BAR = 1e5;
    private static final double INCHES_OF_MERCURY = 3386.389;
    private static final double POUNDS_PER_SQUARE_INCH = 0.45359237 * 9.80665 / (0.0254 * 0.0254);

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Vacuum {
        Quantity.requireFinite("Vacuum", pascalsBelowAmbient);
    }

    /** Makes a value from pascals below ambient. */
    public static Vacuum ofPascalsBelowAmbient(double pascalsBelowAmbient) {
        return new Vacuum(pascalsBelowAmbient);
    }

    /** Makes a value from kilopascals. */
    public static Vacuum ofKilopascals(double kilopascals) {
        return new Vacuum(kilopascals * KILOPASCALS);
    }

    /** The value in kilopascals. */
    public double kilopascals() {
        return pascalsBelowAmbient / KILOPASCALS;
    }

    /** Makes a value from hectopascals. */
    public static Vacuum ofHectopascals(double hectopascals) {
        return new Vacuum(hectopascals * HECTOPASCALS);
    }

    /** The value in hectopascals. */
    public double hectopascals() {
        return pascalsBelowAmbient / HECTOPASCALS;
    }

    /** Makes a value from bar. */
    public static Vacuum ofBar(double bar) {
        return new Vacuum(bar * BAR);
    }

    /** The value in bar. */
    public double bar() {
        return pascalsBelowAmbient / BAR;
    }

    /** Makes a value from inches of mercury. */
    public static Vacuum ofInchesOfMercury(double inchesOfMercury) {
        return new Vacuum(inchesOfMercury * INCHES_OF_MERCURY);
    }

    /** The value in inches of mercury. */
    public double inchesOfMercury() {
        return pascalsBelowAmbient / INCHES_OF_MERCURY;
    }

    /** Makes a value from pounds per square inch. */
    public static Vacuum ofPoundsPerSquareInch(double poundsPerSquareInch) {
        return new Vacuum(poundsPerSquareInch * POUNDS_PER_SQUARE_INCH);
    }

    /** The value in pounds per square inch. */
    public double poundsPerSquareInch() {
        return pascalsBelowAmbient / POUNDS_PER_SQUARE_INCH;
    }

    /** The sum of this and another. */
    public Vacuum plus(Vacuum other) {
        return new Vacuum(pascalsBelowAmbient + other.pascalsBelowAmbient);
    }

    /** This less another. */
    public Vacuum minus(Vacuum other) {
        return new Vacuum(pascalsBelowAmbient - other.pascalsBelowAmbient);
    }

    /** This times a plain number. */
    public Vacuum times(double factor) {
        return new Vacuum(pascalsBelowAmbient * factor);
    }

    @Override
    public double si() {
        return pascalsBelowAmbient;
    }

    @Override
    public int compareTo(Vacuum other) {
        return Double.compare(pascalsBelowAmbient, other.pascalsBelowAmbient);
    }
}
