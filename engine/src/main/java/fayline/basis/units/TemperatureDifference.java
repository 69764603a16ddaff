package fayline.basis.units;

/**
 * A difference of two temperatures. One kelvin of difference is not a {@link Temperature}. Immutable; held in SI.
 *
 * @param kelvins the value in kelvins; finite
 */
public record TemperatureDifference(double kelvins) implements Quantity, Comparable<TemperatureDifference> {
    private static final double FAHRENHEIT_DEGREES = 5.0 / 9.0;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public TemperatureDifference {
        Quantity.requireFinite("TemperatureDifference", kelvins);
    }

    /** Makes a value from kelvins. */
    public static TemperatureDifference ofKelvins(double kelvins) {
        return new TemperatureDifference(kelvins);
    }

    /** Makes a value from fahrenheit degrees. */
    public static TemperatureDifference ofFahrenheitDegrees(double fahrenheitDegrees) {
        return new TemperatureDifference(fahrenheitDegrees * FAHRENHEIT_DEGREES);
    }

    /** The value in fahrenheit degrees. */
    public double fahrenheitDegrees() {
        return kelvins / FAHRENHEIT_DEGREES;
    }

    /** The sum of this and another. */
    public TemperatureDifference plus(TemperatureDifference other) {
        return new TemperatureDifference(kelvins + other.kelvins);
    }

    /** This less another. */
    public TemperatureDifference minus(TemperatureDifference other) {
        return new TemperatureDifference(kelvins - other.kelvins);
    }

    /** This times a plain number. */
    public TemperatureDifference times(double factor) {
        return new TemperatureDifference(kelvins * factor);
    }

    @Override
    public double si() {
        return kelvins;
    }

    @Override
    public int compareTo(TemperatureDifference other) {
        return Double.compare(kelvins, other.kelvins);
    }
}
