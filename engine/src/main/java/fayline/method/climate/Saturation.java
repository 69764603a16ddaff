package fayline.method.climate;

import fayline.basis.numeric.RootFinder;
import java.util.OptionalDouble;

/**
 * Saturation pressure of water vapour over water. The formulas differ by hundredths of a kelvin in the dew point; their
 * coefficients must never be mixed.
 */
public enum Saturation {
    /** 6.112 exp(17.62 T/(243.12 + T)) hPa, T in degrees Celsius, -45 to 60 [wmo8]. */
    MAGNUS(-45, 60),
    /** 6.1121 exp((18.678 - T/234.5) T/(257.14 + T)) hPa, T in degrees Celsius, taken here for -40 to 80 [buck1996]. */
    BUCK(-40, 80),
    /** Hyland and Wexler's equation for liquid water, 0 to 200 degrees Celsius [ashrae-f2017] eq. 6. */
    HYLAND_WEXLER(0, 200);

    private static final double[] HW = {-5.8002206e3, 1.3914993, -4.8640239e-2, 4.1764768e-5, -1.4452093e-8, 6.5459673};

    private final double coldestC;
    private final double hottestC;

    Saturation(double coldestC, double hottestC) {
        this.coldestC = coldestC;
        this.hottestC = hottestC;
    }

    /** Whether a temperature lies in the range of the formula. */
    public boolean covers(double kelvins) {
        double c = kelvins - 273.15;
        return c >= coldestC - 1e-9 && c <= hottestC + 1e-9;
    }

    /** The range in words. */
    String range() {
        return String.format(java.util.Locale.ROOT, "%.0f to %.0f degC", coldestC, hottestC);
    }

    /**
     * Saturation pressure in Pa.
     *
     * @param kelvins temperature; in the range of the formula
     */
    public double pascals(double kelvins) {
        double c = kelvins - 273.15;
        return switch (this) {
            case MAGNUS -> 611.2 * Math.exp(17.62 * c / (243.12 + c));
            case BUCK -> 611.21 * Math.exp((18.678 - c / 234.5) * c / (257.14 + c));
            case HYLAND_WEXLER ->
                Math.exp(HW[0] / kelvins
                        + HW[1]
                        + kelvins * (HW[2] + kelvins * (HW[3] + kelvins * HW[4]))
                        + HW[5] * Math.log(kelvins));
        };
    }

    /**
     * Dew point in kelvins: the temperature at which a vapour pressure saturates.
     *
     * @param pascals vapour pressure
     * @return empty where it lies outside the range of the formula
     */
    public OptionalDouble dewPointKelvins(double pascals) {
        if (!(pascals > 0)) {
            return OptionalDouble.empty();
        }
        if (this == MAGNUS) {
            double g = Math.log(pascals / 611.2);
            double kelvins = 243.12 * g / (17.62 - g) + 273.15;
            return g < 17.62 && covers(kelvins) ? OptionalDouble.of(kelvins) : OptionalDouble.empty();
        }
        return RootFinder.bracketed(t -> Math.log(pascals(t) / pascals), coldestC + 273.15, hottestC + 273.15, 1e-9);
    }
}
