package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;

/**
 * One place on the outline.
 *
 * @param sMm the arc length as asked
 * @param at where
 * @param nx x component of the unit outward normal of the run that holds the place
 * @param ny y component
 * @param run the run that holds the place
 * @param sharp whether it lies on a sharp corner, where no normal exists until an edge is named
 * @param turnRad traced line: how far the direction turns across the stretch it was fitted over; else 0
 */
public record EdgePoint(double sMm, Spot at, double nx, double ny, String run, boolean sharp, double turnRad) {
    private static final double MUCH_TURN = Math.toRadians(10);

    /** Whether the direction of a traced line turns more than 10 degrees across the stretch it was fitted over. */
    public boolean turnsMuch() {
        return turnRad > MUCH_TURN;
    }
}
