package fayline.method.fitup.odds;

/**
 * A gap that is expected at one station.
 *
 * @param id the station
 * @param predictedMm most likely gap
 * @param lowerMm least allowed
 * @param upperMm most allowed
 * @param independentMm standard uncertainty that this station shares with no other; not negative
 */
public record ExpectedGap(String id, double predictedMm, double lowerMm, double upperMm, double independentMm) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the station
     */
    public ExpectedGap {
        if (!Double.isFinite(predictedMm) || !(lowerMm <= upperMm)) {
            throw new IllegalArgumentException(
                    "station " + id + ": gap " + predictedMm + " with limits " + lowerMm + " to " + upperMm);
        }
        if (!(independentMm >= 0) || Double.isInfinite(independentMm)) {
            throw new IllegalArgumentException("station " + id + " has an uncertainty of " + independentMm);
        }
    }

    /** The same gap, expected larger by a shift. */
    public ExpectedGap shifted(double byMm) {
        return new ExpectedGap(id, predictedMm + byMm, lowerMm, upperMm, independentMm);
    }
}
