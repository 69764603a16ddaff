package fayline.method.fitup.space;

import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;

/**
 * How far a part may be moved out of its plane, either way.
 *
 * @param outMm outboard or inboard, not negative
 * @param tiltRad about any line in the plane, not negative
 */
public record LiftLimits(double outMm, double tiltRad) {
    /** Within 10 mm and 2 degrees, beyond which the part is in the wrong place and should be read again. */
    public static final LiftLimits WIDEST = new LiftLimits(10, Math.toRadians(2));

    /**
     * Checks the signs.
     *
     * @throws IllegalArgumentException if one is negative or no number
     */
    public LiftLimits {
        if (!(outMm >= 0) || !(tiltRad >= 0)) {
            throw new IllegalArgumentException("room out of the plane of " + outMm + " mm and " + tiltRad + " rad");
        }
    }

    /** Together with the room in the plane. */
    public SpaceLimits with(MoveLimits m) {
        return new SpaceLimits(
                lifted(new Move(m.dxLowMm(), m.dyLowMm(), m.turnLowRad()), -1),
                lifted(new Move(m.dxHighMm(), m.dyHighMm(), m.turnHighRad()), 1));
    }

    private SpaceMove lifted(Move m, double sign) {
        return new SpaceMove(
                new Vector(m.dxMm(), m.dyMm(), sign * outMm), new Vector(sign * tiltRad, sign * tiltRad, m.turnRad()));
    }
}
