package fayline.basis.units;

/**
 * A temperature on an absolute scale. Differences are {@link TemperatureDifference}. Immutable; held in kelvins.
 *
 * @param kelvins the value in kelvins; finite, not below absolute zero
 */
public record Temperature(double kelvins) implements Quantity, Comparable<Temperature> {
    private static final double ICE_POINT_KELVINS = 273.15;
    private static final double FAHRENHEIT_DEGREE = 5.0 / 9.0;

    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException if the value is not finite or lies below absolute zero
     */
    public Temperature {
        Quantity.requireFinite("Temperature", kelvins);
        if (kelvins < 0) {
            throw new IllegalArgumentException("Temperature below absolute zero: " + kelvins + " K");
        }
    }

    /** Makes a value from kelvins. */
    public static Temperature ofKelvins(double kelvins) {
        return new Temperature(kelvins);
    }

    /** Makes a value from degrees Celsius. */
    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius + ICE_POINT_KELVINS);
    }

    /** Makes a value from degrees Fahrenheit. */
    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature((fahrenheit - 32) * FAHRENHEIT_DEGREE + ICE_POINT_KELVINS);
    }

    /** The value in degrees Celsius. */
    public double celsius() {
        return kelvins - ICE_POINT_KELVINS;
    }

    /** The value in degrees Fahrenheit. */
    public double fahrenheit() {
        return celsius() / FAHRENHEIT_DEGREE + 32;
    }

    /** This temperature raised by a difference. */
    public Temperature plus(TemperatureDifference difference) {
        return new Temperature(kelvins + difference.kelvins());
    }

    /** The difference of this over another. */
    public TemperatureDifference minus(Temperature other) {
        return new TemperatureDifference(kelvins - other.kelvins);
    }

    @Override
    public double si() {
        return kelvins;
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(kelvins, other.kelvins);
    }
}
