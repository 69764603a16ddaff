package fayline.flow.project.fit.frame;

import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Freedom;
import java.util.Locale;

/** A way in which a place of a frame can go, in the part's frame seen from outside. */
public enum FrameWay {
    /** Along x: aft on a left part, forward on a right one. */
    ALONG(Freedom.UX, Axis.X),
    /** Up. */
    UP(Freedom.UY, Axis.Y),
    /** Out of the plane, away from the aircraft. */
    OUT(Freedom.UZ, Axis.Z),
    /** Turning about the way along. */
    TURN_ALONG(Freedom.RX, Axis.X),
    /** Turning about the way up. */
    TURN_UP(Freedom.RY, Axis.Y),
    /** Turning in the plane of the part. */
    TURN_OUT(Freedom.RZ, Axis.Z);

    private final Freedom freedom;
    private final Axis axis;

    FrameWay(Freedom freedom, Axis axis) {
        this.freedom = freedom;
        this.axis = axis;
    }

    /** The freedom that beams know. */
    public Freedom freedom() {
        return freedom;
    }

    /** The direction. */
    public Axis axis() {
        return axis;
    }

    /** Whether it is a shift. */
    public boolean isShift() {
        return !freedom.isTurn();
    }

    /** The word for files, as {@code turn-up}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
