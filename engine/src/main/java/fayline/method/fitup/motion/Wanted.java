package fayline.method.fitup.motion;

import java.util.OptionalDouble;

/**
 * What is wanted of one reading.
 *
 * @param station the mark at the bench
 * @param named how it is called where a station has more than one reading: the mark, and "flush" behind it where it is one
 * @param lowerMm least in tolerance
 * @param nominalMm wanted
 * @param upperMm most in tolerance
 * @param minimumMm what must never be undercut, where there is such a limit
 * @param weight how much a millimetre here counts; positive
 */
public record Wanted(
        String station,
        String named,
        double lowerMm,
        double nominalMm,
        double upperMm,
        OptionalDouble minimumMm,
        double weight) {

    /** How far a value is beyond its limits: below the lower one (negative), above the upper one (positive), else nothing. */
    public double beyondMm(double valueMm) {
        return valueMm < lowerMm ? valueMm - lowerMm : Math.max(0, valueMm - upperMm);
    }

    /** Whether it is a flush. */
    public boolean flush() {
        return !named.equals(station);
    }
}
