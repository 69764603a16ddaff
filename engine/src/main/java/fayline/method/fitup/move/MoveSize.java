package fayline.method.fitup.move;

import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.WantedLines;

/** Whether a move is small enough for small motions to describe it: 10 mm and 2 degrees (common practice, no source). */
public final class MoveSize {
    static final double LARGEST_SHIFT_MM = 10;
    private static final double LARGEST_TURN_RAD = Math.toRadians(2);
    private static final double ROUNDING = 1e-9;

    private MoveSize() {}

    /** Whether a move is beyond that, or would be if limits of that size did not stop it. */
    public static <S, M> boolean tooLarge(WantedLines<S, M> lines, M move, Box box) {
        double[] x = lines.unknowns(move);
        boolean far =
                lines.shiftMm(move) > LARGEST_SHIFT_MM + ROUNDING || lines.turnRad(move) > LARGEST_TURN_RAD + ROUNDING;
        for (int j = 0; j < x.length; j++) {
            boolean shift = j < lines.shifts();
            double unit = shift ? 1 : lines.scaleLengthMm();
            far |= stoppedAt(
                    x[j] / unit,
                    box.low().get(j) / unit,
                    box.high().get(j) / unit,
                    shift ? LARGEST_SHIFT_MM : LARGEST_TURN_RAD);
        }
        return far;
    }

    private static boolean stoppedAt(double value, double low, double high, double largest) {
        return (high >= largest - ROUNDING && value >= high - ROUNDING)
                || (low <= -largest + ROUNDING && value <= low + ROUNDING);
    }
}
