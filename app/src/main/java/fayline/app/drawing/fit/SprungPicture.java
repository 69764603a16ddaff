package fayline.app.drawing.fit;

import fayline.method.fitup.frame.FramePoint;
import java.util.List;

/**
 * What the drawing of a frame that is clamped, bonded and let go shows.
 *
 * @param name what it is
 * @param bars beams in their states
 * @param forces what the clamps do
 * @param joints places that are bonded
 * @param pins latch pins and hinge points
 */
public record SprungPicture(String name, List<Bar> bars, List<Force> forces, List<Joint> joints, List<Pin> pins) {
    /** Copies the lists. */
    public SprungPicture {
        bars = List.copyOf(bars);
        forces = List.copyOf(forces);
        joints = List.copyOf(joints);
        pins = List.copyOf(pins);
    }

    /** The farthest shift of any beam, mm. */
    double farthestMm() {
        return bars.stream()
                .flatMap(b -> b.shifts().stream())
                .mapToDouble(FramePoint::lengthMm)
                .max()
                .orElse(0);
    }

    /** The largest force, N. */
    double largestN() {
        return forces.stream().mapToDouble(f -> Math.abs(f.newtons())).max().orElse(0);
    }

    /** Whether anything lies out of the plane. */
    boolean deep() {
        return bars.stream().flatMap(b -> b.places().stream()).anyMatch(p -> p.zMm() != 0);
    }

    /** A state of beams. */
    public enum State {
        /** The carrier before anything pulls at it. */
        CARRIER,
        /** The part as it stands, free. */
        FREE,
        /** The part under its clamps. */
        CLAMPED,
        /** The part after release. */
        PART_AFTER,
        /** The carrier after release. */
        CARRIER_AFTER
    }

    /**
     * Beams one after the other.
     *
     * @param state in which state
     * @param places where they are drawn
     * @param shifts how each place lies off that
     */
    public record Bar(State state, List<FramePoint> places, List<FramePoint> shifts) {
        /** Copies the lists. */
        public Bar {
            places = List.copyOf(places);
            shifts = List.copyOf(shifts);
            if (places.size() != shifts.size()) {
                throw new IllegalArgumentException(places.size() + " places with " + shifts.size() + " shifts");
            }
        }
    }

    /**
     * What a clamp does to the part.
     *
     * @param label its words
     * @param at where
     * @param way the way in which it acts, of length one
     * @param newtons how hard, positive that way
     */
    public record Force(String label, FramePoint at, FramePoint way, double newtons) {}

    /**
     * A place that is bonded.
     *
     * @param at where
     * @param open whether it is pulled open
     */
    public record Joint(FramePoint at, boolean open) {}

    /**
     * A latch pin or hinge point.
     *
     * @param label its mark
     * @param at where
     * @param binds whether it no longer meets its hole
     */
    public record Pin(String label, FramePoint at, boolean binds) {}
}
