package fayline.flow.result.fit.frame;

import java.util.OptionalDouble;

/**
 * What one hand's frame taught of a width. A width is the same on both hands.
 *
 * @param width the width's mark
 * @param from the fit that taught it
 * @param bareMm bare width of its last trial
 * @param clampedMm width with the sheet clamped on at that trial
 * @param follow by how much the clamped width followed the bare one; empty where one trial left that open
 * @param bondTookMm by how much the width changed from that trial to as bonded, negative where it narrowed; empty where that was
 *     not read
 * @param deviationMm standard uncertainty of one width there
 */
public record WidthLesson(
        String width,
        String from,
        double bareMm,
        double clampedMm,
        OptionalDouble follow,
        OptionalDouble bondTookMm,
        double deviationMm) {
    /** By how much the sheet sprang the frame, negative where it pulled it in. */
    public double sprungMm() {
        return clampedMm - bareMm;
    }

    /**
     * The bare width at which a like frame has a width with its sheet clamped on; one for one where the share is not known.
     *
     * @param clamped width wanted with the sheet clamped on, mm
     */
    public double bareForMm(double clamped) {
        return bareMm + (clamped - clampedMm) / follow.orElse(1);
    }
}
