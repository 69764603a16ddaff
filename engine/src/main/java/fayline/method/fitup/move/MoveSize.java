package fayline.method.fitup.move;

import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;

/** Whether a move is small enough for small motions to describe it: 10 mm and 2 degrees (common practice, no source). */
final class MoveSize {
    static final double LARGEST_SHIFT_MM = 10;
    private static final double LARGEST_TURN_RAD = Math.toRadians(2);
    private static final double ROUNDING = 1e-9;

    private MoveSize() {}

    /** Whether a move is beyond that, or would be if limits of that size did not stop it. */
    static boolean tooLarge(Move move, MoveLimits limits) {
        return move.shiftMm() > LARGEST_SHIFT_MM + ROUNDING
                || Math.abs(move.turnRad()) > LARGEST_TURN_RAD + ROUNDING
                || stoppedAt(move.dxMm(), limits.dxLowMm(), limits.dxHighMm(), LARGEST_SHIFT_MM)
                || stoppedAt(move.dyMm(), limits.dyLowMm(), limits.dyHighMm(), LARGEST_SHIFT_MM)
                || stoppedAt(move.turnRad(), limits.turnLowRad(), limits.turnHighRad(), LARGEST_TURN_RAD);
    }

    private static boolean stoppedAt(double value, double low, double high, double largest) {
        return (high >= largest - ROUNDING && value >= high - ROUNDING)
                || (low <= -largest + ROUNDING && value <= low + ROUNDING);
    }
}
