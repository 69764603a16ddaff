package fayline.flow.project.fit.frame;

import fayline.method.fitup.frame.Axis;
import fayline.method.fitup.frame.Freedom;
import java.util.Locale;

/** A way in which a place of a frame can go, in the part's frame seen from outside. */
public enum FrameWay {
    /** Along x: aft on a left part, forward on a right one. */
    ALONG(Freedom.UX),
    /** Up. */
    UP(Freedom.UY),
    /** Out of the plane, away from the aircraft. */
    OUT(Freedom.UZ),
    /** Turning about the way along. */
    TURN_ALONG(Freedom.RX),
    /** Turning about the way up. */
    TURN_UP(Freedom.RY),
    /** Turning in the plane of the part. */
    TURN_OUT(Freedom.RZ);

    private final Freedom freedom;

    FrameWay(Freedom freedom) {
        this.freedom = freedom;
    }

    /** The freedom that beams know. */
    public Freedom freedom() {
        return freedom;
    }

    /** The direction. */
    public Axis axis() {
        return switch (this) {
            case ALONG, TURN_ALONG -> Axis.X;
            case UP, TURN_UP -> Axis.Y;
            case OUT, TURN_OUT -> Axis.Z;
        };
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
