package fayline.method.fitup.shim;

import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;

/**
 * A place that holds the part.
 *
 * @param contact where, and the direction from the part to the stop
 * @param clearanceMm room between part and stop as the part lies; negative where they overlap
 * @param shimmed whether a shim goes there; else it holds as it is, as a pin does
 */
public record IndexPoint(Station contact, double clearanceMm, boolean shimmed) {
    /**
     * Checks the clearance.
     *
     * @throws IllegalArgumentException if it is no number
     */
    public IndexPoint {
        if (!Double.isFinite(clearanceMm)) {
            throw new IllegalArgumentException("index point " + contact.id() + " has a clearance of " + clearanceMm);
        }
    }

    /** A point that takes a shim. */
    public static IndexPoint shim(Station contact, double clearanceMm) {
        return new IndexPoint(contact, clearanceMm, true);
    }

    /**
     * Two pins in drilled holes, the second hole slotted along the line between them: pin 1 holds along x and y, pin 2 square to
     * that line. They hold the part where it lies, so their clearance is nothing.
     *
     * @throws IllegalArgumentException if both pins are in one place
     */
    public static List<IndexPoint> pins(String name, Spot pin1, Spot pin2) {
        if (!(pin1.distanceMm(pin2) > 0)) {
            throw new IllegalArgumentException(name + ": both pins at " + pin1.xMm() + ", " + pin1.yMm());
        }
        double dx = pin2.xMm() - pin1.xMm();
        double dy = pin2.yMm() - pin1.yMm();
        return List.of(
                new IndexPoint(new Station(name + " 1 x", pin1, 1, 0), 0, false),
                new IndexPoint(new Station(name + " 1 y", pin1, 0, 1), 0, false),
                new IndexPoint(new Station(name + " 2", pin2, -dy, dx), 0, false));
    }
}
