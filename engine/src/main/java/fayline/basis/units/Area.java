package fayline.basis.units;

/**
 * An area. Immutable; held in SI.
 *
 * @param squareMetres the value in square metres; finite
 */
public record Area(double squareMetres) implements Quantity, Comparable<Area> {
    private static final double SQUARE_MILLIMETRES = 1e-6;
    private static final double SQUARE_FEET = 0.3048 * 0.3048;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Area {
        Quantity.requireFinite("Area", squareMetres);
    }

    /** Makes a value from square metres. */
    public static Area ofSquareMetres(double squareMetres) {
        return new Area(squareMetres);
    }

    /** Makes a value from square millimetres. */
    public static Area ofSquareMillimetres(double squareMillimetres) {
        return new Area(squareMillimetres * SQUARE_MILLIMETRES);
    }

    /** The value in square millimetres. */
    public double squareMillimetres() {
        return squareMetres / SQUARE_MILLIMETRES;
    }

    /** Makes a value from square feet. */
    public static Area ofSquareFeet(double squareFeet) {
        return new Area(squareFeet * SQUARE_FEET);
    }

    /** The value in square feet. */
    public double squareFeet() {
        return squareMetres / SQUARE_FEET;
    }

    /** The sum of this and another. */
    public Area plus(Area other) {
        return new Area(squareMetres + other.squareMetres);
    }

    /** This less another. */
    public Area minus(Area other) {
        return new Area(squareMetres - other.squareMetres);
    }

    /** This times a plain number. */
    public Area times(double factor) {
        return new Area(squareMetres * factor);
    }

    @Override
    public double si() {
        return squareMetres;
    }

    @Override
    public int compareTo(Area other) {
        return Double.compare(squareMetres, other.squareMetres);
    }
}
