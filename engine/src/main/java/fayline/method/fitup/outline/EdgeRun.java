package fayline.method.fitup.outline;

/**
 * A stretch of the outline with a name.
 *
 * @param name E1, C2, or the builder's own, as "aft"
 * @param fromMm arc length of its start
 * @param lengthMm how long; not negative
 */
public record EdgeRun(String name, double fromMm, double lengthMm) {
    /**
     * Checks the length.
     *
     * @throws IllegalArgumentException if it is negative or no number
     */
    public EdgeRun {
        if (!Double.isFinite(fromMm) || !(lengthMm >= 0) || Double.isInfinite(lengthMm)) {
            throw new IllegalArgumentException("run " + name + " goes from " + fromMm + " over " + lengthMm + " mm");
        }
    }

    /** Arc length of its end; may be more than the perimeter. */
    public double toMm() {
        return fromMm + lengthMm;
    }
}
