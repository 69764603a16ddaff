package fayline.basis.units;

import java.util.Locale;

/**
 * A computed amount within a sentence. It is told in the reader's units only where it is read.
 *
 * @param measure what it measures
 * @param value the number in the metric unit of its measure
 * @param digits digits after the point in that unit; inch units get as many as say the same
 * @param manner how the number is written
 */
public record Amount(Measure measure, double value, int digits, Manner manner) {
    /** How a number is written. */
    public enum Manner {
        /** With all its digits. */
        PLAIN,
        /** With its sign, a plus too; nought, as it is told, has none. */
        SIGNED,
        /** Without its unit, which stands at a later number of the same sentence. */
        BARE,
        /** Without a last digit that says nothing: 0.60 as 0.6, 23.6 thou as 24. */
        SHORT
    }

    /** Checks the value. */
    public Amount {
        Quantity.requireFinite("an amount", value);
    }

    /** A gap, shift or depth of so many mm. */
    public static Amount mm(double mm, int digits) {
        return new Amount(Measure.GAP, mm, digits, Manner.PLAIN);
    }

    /** The same without its unit, for the first of two numbers that share one. */
    public static Amount bareMm(double mm, int digits) {
        return new Amount(Measure.GAP, mm, digits, Manner.BARE);
    }

    /** The same with its sign. */
    public static Amount signedMm(double mm, int digits) {
        return new Amount(Measure.GAP, mm, digits, Manner.SIGNED);
    }

    /** A shift as the hand is told it: to 0.01 mm with no trailing zero, or to a whole thou. */
    public static Amount shiftMm(double mm) {
        return new Amount(Measure.GAP, mm, 2, Manner.SHORT);
    }

    /** A place or size of so many mm. */
    public static Amount placeMm(double mm, int digits) {
        return new Amount(Measure.PLACE, mm, digits, Manner.PLAIN);
    }

    /** An area of so many mm², to a whole one. */
    public static Amount mm2(double mm2) {
        return new Amount(Measure.AREA, mm2, 0, Manner.PLAIN);
    }

    /** A temperature of so many degC, to a whole one. */
    public static Amount degC(double degC) {
        return new Amount(Measure.TEMPERATURE, degC, 0, Manner.PLAIN);
    }

    /** The same without its unit, for the first of two that share one. */
    public static Amount bareDegC(double degC) {
        return new Amount(Measure.TEMPERATURE, degC, 0, Manner.BARE);
    }

    /** A slope of so many radians, small. */
    public static Amount slope(double rad) {
        return new Amount(Measure.SLOPE, 1000 * rad, 2, Manner.SHORT);
    }

    /** A force of so many newtons. */
    public static Amount newtons(double n, int digits) {
        return new Amount(Measure.FORCE, n, digits, Manner.PLAIN);
    }

    /** A force along a line, of so many newtons per mm. */
    public static Amount newtonsPerMm(double nPerMm, int digits) {
        return new Amount(Measure.LINE_FORCE, nPerMm, digits, Manner.PLAIN);
    }

    /** As it is read in these units, as {@code 2.3 mm} or {@code 91 thou}. */
    public String in(UnitSystem system) {
        String number = manner == Manner.SHORT ? shortNumber(system) : measure.number(system, value, digits);
        boolean plus = manner == Manner.SIGNED && number.matches("[0.]*[1-9].*");
        return (plus ? "+" : "") + number + (manner == Manner.BARE ? "" : " " + measure.symbol(system));
    }

    private String shortNumber(UnitSystem system) {
        if (system == UnitSystem.INCH) {
            return String.format(
                    Locale.ROOT,
                    "%." + Math.max(0, measure.digits(system, digits) - 1) + "f",
                    measure.in(system, value));
        }
        String s = measure.number(system, value, digits);
        return s.contains(".") && s.endsWith("0") ? s.substring(0, s.length() - 1) : s;
    }

    /** In metric units. */
    @Override
    public String toString() {
        return in(UnitSystem.METRIC);
    }
}
