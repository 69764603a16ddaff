package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * The moves out of the plane that bring a flat part flush.
 *
 * @param rank how many of shift and two tilts the readings know
 * @param leastSquares least squares
 * @param minimax smallest worst deviation; among equals least squares, then the least
 * @param findings what to tell the builder
 */
public record FlushPlaneResult(int rank, Solution leastSquares, Solution minimax, List<Finding> findings) {
    /** Keeps its own copies. */
    public FlushPlaneResult {
        findings = List.copyOf(findings);
    }

    /**
     * One move and what it leaves.
     *
     * @param move the move
     * @param flushMm flush after it, in the order of the readings
     * @param worstDeviation the largest weight times distance from nominal
     * @param sumSquares the sum of squares of these
     */
    public record Solution(FlushMove move, List<Double> flushMm, double worstDeviation, double sumSquares) {
        /** Keeps its own copies. */
        public Solution {
            flushMm = List.copyOf(flushMm);
        }
    }
}
