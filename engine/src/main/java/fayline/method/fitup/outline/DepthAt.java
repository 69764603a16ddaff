package fayline.method.fitup.outline;

/**
 * How deep to cut at one place of the outline, square to it and inwards.
 *
 * @param sMm arc length
 * @param depthMm how deep; not negative
 */
public record DepthAt(double sMm, double depthMm) {
    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if it is negative or no number
     */
    public DepthAt {
        if (!Double.isFinite(sMm) || !(depthMm >= 0) || Double.isInfinite(depthMm)) {
            throw new IllegalArgumentException("a cut of " + depthMm + " mm at " + sMm + " mm is none");
        }
    }
}
