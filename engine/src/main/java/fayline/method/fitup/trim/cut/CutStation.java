package fayline.method.fitup.trim.cut;

/**
 * How much comes off at a station.
 *
 * @param id its mark
 * @param edge the edge it lies on, a name among the plan's edges
 * @param sMm arc length
 * @param depthMm how deep; 0 or more
 * @param deviationMm standard uncertainty of its gap
 */
public record CutStation(String id, String edge, double sMm, double depthMm, double deviationMm) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException naming the station
     */
    public CutStation {
        if (!Double.isFinite(sMm)
                || !(depthMm >= 0)
                || Double.isInfinite(depthMm)
                || !(deviationMm >= 0)
                || Double.isInfinite(deviationMm)) {
            throw new IllegalArgumentException("station " + id + " at " + sMm + " mm is cut by " + depthMm
                    + " mm, sure to " + deviationMm + " mm");
        }
    }
}
