package fayline.method.fitup.frame.trial;

/**
 * One trial: the frame set to a bare width, the sheet clamped on.
 *
 * @param bareMm width of the bare frame
 * @param clampedMm width with the sheet trial-clamped
 */
public record Trial(double bareMm, double clampedMm) {
    /** Refuses what is no width. */
    public Trial {
        if (!(bareMm > 0) || !(clampedMm > 0) || Double.isInfinite(bareMm) || Double.isInfinite(clampedMm)) {
            throw new IllegalArgumentException("widths are above zero, found " + bareMm + " and " + clampedMm + " mm");
        }
    }

    /** By how much the sheet springs the frame out, negative where it pulls it in. */
    public double sprungMm() {
        return clampedMm - bareMm;
    }
}
