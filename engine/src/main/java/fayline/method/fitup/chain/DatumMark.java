package fayline.method.fitup.chain;

import fayline.method.fitup.Spot;

/**
 * A mark that can be found on the bench and on the airframe.
 *
 * @param id the mark
 * @param onBench where it is on the bench
 * @param inPlace where it is in the final frame
 * @param benchMm standard uncertainty of its place on the bench, along each axis
 * @param inPlaceMm standard uncertainty of its place in the final frame
 */
public record DatumMark(String id, Spot onBench, Spot inPlace, double benchMm, double inPlaceMm) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException unless one of the uncertainties is above zero and neither below
     */
    public DatumMark {
        if (!(benchMm >= 0 && inPlaceMm >= 0 && benchMm + inPlaceMm > 0) || Double.isInfinite(benchMm + inPlaceMm)) {
            throw new IllegalArgumentException("mark " + id + " has uncertainties " + benchMm + " and " + inPlaceMm);
        }
    }

    double variance() {
        return benchMm * benchMm + inPlaceMm * inPlaceMm;
    }
}
