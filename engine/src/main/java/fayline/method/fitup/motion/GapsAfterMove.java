package fayline.method.fitup.motion;

import java.util.List;

/**
 * Gaps after a move, in the order of the rows.
 *
 * @param straightMm to first order in the turn
 * @param exactMm of the rigid part, the neighbour's edge taken as straight and square to the normal
 * @param largestErrorMm the largest difference of the two
 */
public record GapsAfterMove(List<Double> straightMm, List<Double> exactMm, double largestErrorMm) {
    /** Keeps its own copies. */
    public GapsAfterMove {
        straightMm = List.copyOf(straightMm);
        exactMm = List.copyOf(exactMm);
    }
}
