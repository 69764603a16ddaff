package fayline.method.fitup.frame.pin;

import fayline.method.fitup.frame.Axis;
import java.util.Optional;

/**
 * A latch pin, or a hinge point with its own axis.
 *
 * @param id its name
 * @param place where it sits
 * @param axis the way it slides in, or the hinge's axis
 * @param radialClearanceMm free play all round; not negative
 * @param striker where its hole sits, where that moves too; else the hole stands still at nominal
 */
public record LatchPin(String id, PinPlace place, Axis axis, double radialClearanceMm, Optional<PinPlace> striker) {
    /** Refuses a negative clearance. */
    public LatchPin {
        if (!(radialClearanceMm >= 0) || Double.isInfinite(radialClearanceMm)) {
            throw new IllegalArgumentException("pin " + id + " has a clearance of " + radialClearanceMm + " mm");
        }
    }
}
