package fayline.method.fitup.after;

import fayline.method.fitup.Station;

/**
 * One gap as built.
 *
 * @param station where
 * @param predictedMm gap that was predicted
 * @param predictedUncertaintyMm standard uncertainty of the prediction; not negative
 * @param measuredMm gap that was measured after the bond
 * @param measuredUncertaintyMm standard uncertainty of that reading; not negative
 */
public record BuiltGap(
        Station station,
        double predictedMm,
        double predictedUncertaintyMm,
        double measuredMm,
        double measuredUncertaintyMm) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the station
     */
    public BuiltGap {
        if (!Double.isFinite(predictedMm) || !Double.isFinite(measuredMm)) {
            throw new IllegalArgumentException(
                    "station " + station.id() + ": predicted " + predictedMm + ", measured " + measuredMm);
        }
        if (!(predictedUncertaintyMm >= 0)
                || !(measuredUncertaintyMm >= 0)
                || Double.isInfinite(predictedUncertaintyMm + measuredUncertaintyMm)) {
            throw new IllegalArgumentException("station " + station.id() + ": uncertainties " + predictedUncertaintyMm
                    + " and " + measuredUncertaintyMm);
        }
    }

    /** Measured less predicted: positive where the gap came out larger. */
    public double residualMm() {
        return measuredMm - predictedMm;
    }
}
