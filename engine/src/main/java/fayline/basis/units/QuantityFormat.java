package fayline.basis.units;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Shows quantities in the units that a person prefers, with digits that fit a shop: gaps to 0.1 mm or 1 thou, masses to the
 * gram. For display only; nothing computed is ever rounded by this class before use.
 *
 * @param system the person's units
 */
public record QuantityFormat(UnitSystem system) {
    private static final double TENTH_INCH = 2.54e-3;

    /** Millimetres below one metre, else metres; thou below a tenth of an inch, else inches. */
    public String length(Length v) {
        double abs = Math.abs(v.metres());
        if (system == UnitSystem.METRIC) {
            return abs >= 1 ? number(v.metres(), 2) + " m" : number(v.millimetres(), abs < 0.1 ? 1 : 0) + " mm";
        }
        return abs < TENTH_INCH ? number(v.thou(), 0) + " thou" : number(v.inches(), abs < 0.5 ? 2 : 1) + " in";
    }

    /** A gap, shift or depth however large: tenths of a millimetre, or thou. */
    public String gap(Length v) {
        return Amount.mm(v.millimetres(), 1).in(system);
    }

    /** A gap or shim told more finely: hundredths of a millimetre, or tenths of a thou. */
    public String fineGap(Length v) {
        return Amount.mm(v.millimetres(), 2).in(system);
    }

    /** Square metres, or square feet. */
    public String area(Area v) {
        return system == UnitSystem.METRIC ? number(v.squareMetres(), 2) + " m2" : number(v.squareFeet(), 1) + " ft2";
    }

    /** Grams below one kilogram, else kilograms; ounces below one pound, else pounds. */
    public String mass(Mass v) {
        double abs = Math.abs(v.kilograms());
        if (system == UnitSystem.METRIC) {
            return abs < 1 ? number(v.grams(), abs < 0.01 ? 1 : 0) + " g" : number(v.kilograms(), 2) + " kg";
        }
        return Math.abs(v.pounds()) < 1 ? number(v.ounces(), 1) + " oz" : number(v.pounds(), 2) + " lb";
    }

    /** Grams always, to the scale's step of one gram or a tenth below a hundred grams: what stands on a mix list. */
    public String scaleMass(Mass v) {
        return number(v.grams(), v.grams() < 100 ? 1 : 0) + " g";
    }

    /** Cloth weight. */
    public String arealMass(ArealMass v) {
        return system == UnitSystem.METRIC
                ? number(v.gramsPerSquareMetre(), 0) + " g/m2"
                : number(v.ouncesPerSquareYard(), 1) + " oz/yd2";
    }

    /** Degrees Celsius or Fahrenheit to a tenth or a whole degree. */
    public String temperature(Temperature v) {
        return system == UnitSystem.METRIC ? number(v.celsius(), 1) + " degC" : number(v.fahrenheit(), 0) + " degF";
    }

    /** Kelvins, or Fahrenheit degrees of difference. */
    public String difference(TemperatureDifference v) {
        return system == UnitSystem.METRIC ? number(v.kelvins(), 1) + " K" : number(v.fahrenheitDegrees(), 1) + " degF";
    }

    /** Bar or inches of mercury below ambient. */
    public String vacuum(Vacuum v) {
        return system == UnitSystem.METRIC ? number(v.bar(), 2) + " bar" : number(v.inchesOfMercury(), 1) + " inHg";
    }

    /** Hours and minutes, or days and hours from two days up. */
    public String span(TimeSpan v) {
        long minutes = Math.round(v.minutes());
        String sign = minutes < 0 ? "-" : "";
        minutes = Math.abs(minutes);
        if (minutes < 60) {
            return sign + minutes + " min";
        }
        if (minutes < 48 * 60) {
            return sign + minutes / 60 + " h" + (minutes % 60 == 0 ? "" : " " + minutes % 60 + " min");
        }
        long hours = Math.round(minutes / 60.0);
        return sign + hours / 24 + " d" + (hours % 24 == 0 ? "" : " " + hours % 24 + " h");
    }

    /** A percentage to a whole percent. */
    public String percent(Fraction v) {
        return number(v.percent(), 0) + " %";
    }

    private static String number(double value, int decimals) {
        // As "%.nf" would write it, at a fraction of the time: a page shows thousands of figures.
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }
}
