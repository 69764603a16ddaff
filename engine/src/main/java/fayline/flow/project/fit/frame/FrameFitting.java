package fayline.flow.project.fit.frame;

import fayline.flow.project.catalog.Keyed;
import fayline.method.fitup.frame.FramePoint;

/**
 * A latch pin or a hinge point.
 *
 * @param id its mark
 * @param name what it is called
 * @param at the place to which it is fixed
 * @param arm from that place to the pin
 * @param on what it is fixed to
 * @param axis the way the pin slides in, or the hinge's axis; a shift's
 * @param clearanceMm free play all round
 * @param hole what its hole is fixed to
 */
public record FrameFitting(
        String id, String name, String at, FramePoint arm, Body on, FrameWay axis, double clearanceMm, Body hole)
        implements Keyed {
    /** What something is fixed to. */
    public enum Body {
        /** The part. */
        PART,
        /** What carries it. */
        CARRIER,
        /** Neither: it stands still. */
        STILL
    }
}
