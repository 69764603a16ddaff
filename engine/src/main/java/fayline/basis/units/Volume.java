package fayline.basis.units;

/**
 * A volume. Immutable; held in SI.
 *
 * @param cubicMetres the value in cubic metres; finite
 */
public record Volume(double cubicMetres) implements Quantity, Comparable<Volume> {
    private static final double LITRES = 1e-3;
    private static final double GALLONS = 231 * 0.0254 * 0.0254 * 0.0254;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Volume {
        Quantity.requireFinite("Volume", cubicMetres);
    }

    /** Makes a value from cubic metres. */
    public static Volume ofCubicMetres(double cubicMetres) {
        return new Volume(cubicMetres);
    }

    /** Makes a value from litres. */
    public static Volume ofLitres(double litres) {
        return new Volume(litres * LITRES);
    }

    /** The value in litres. */
    public double litres() {
        return cubicMetres / LITRES;
    }

    /** Makes a value from gallons. */
    public static Volume ofGallons(double gallons) {
        return new Volume(gallons * GALLONS);
    }

    /** The value in gallons. */
    public double gallons() {
        return cubicMetres / GALLONS;
    }

    /** The sum of this and another. */
    public Volume plus(Volume other) {
        return new Volume(cubicMetres + other.cubicMetres);
    }

    /** This less another. */
    public Volume minus(Volume other) {
        return new Volume(cubicMetres - other.cubicMetres);
    }

    /** This times a plain number. */
    public Volume times(double factor) {
        return new Volume(cubicMetres * factor);
    }

    @Override
    public double si() {
        return cubicMetres;
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(cubicMetres, other.cubicMetres);
    }
}
