package fayline.method.fitup.space;

import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;

/**
 * How far the part may be moved in space, axis by axis.
 *
 * @param least the least of each shift and turn
 * @param most the most
 */
public record SpaceLimits(SpaceMove least, SpaceMove most) {
    /** Within 10 mm and 2 degrees along and about every axis. */
    public static final SpaceLimits WIDEST = of(10, Math.toRadians(2));

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if a least is above its most
     */
    public SpaceLimits {
        Vector shift = most.shiftMm().minus(least.shiftMm());
        Vector turn = most.turnRad().minus(least.turnRad());
        if (shift.x() < 0 || shift.y() < 0 || shift.z() < 0 || turn.x() < 0 || turn.y() < 0 || turn.z() < 0) {
            throw new IllegalArgumentException("move limits stand the wrong way round: " + least + " to " + most);
        }
    }

    /** The same along and about every axis, both ways. */
    public static SpaceLimits of(double shiftMm, double turnRad) {
        Vector shift = new Vector(shiftMm, shiftMm, shiftMm);
        Vector turn = new Vector(turnRad, turnRad, turnRad);
        return new SpaceLimits(new SpaceMove(shift.times(-1), turn.times(-1)), new SpaceMove(shift, turn));
    }
}
