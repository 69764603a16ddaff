package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.method.fitup.move.MoveStatus;
import java.util.List;
import java.util.Optional;

/**
 * The answer about the best move in space.
 *
 * @param status OK, NO_FIT, INFEASIBLE or MOVE_TOO_LARGE, judged at the minimax move
 * @param rank how many of the six motions the readings know
 * @param singularValues of the rows with turns brought to shifts, largest first
 * @param scaleLengthMm the length that did so
 * @param free directions that no reading notices, as unit moves (turns at the scale length)
 * @param minimax smallest worst deviation, then least squares, then least; empty where INFEASIBLE or MOVE_TOO_LARGE
 * @param leastSquares empty as above
 * @param outside stations with a reading outside its limits after the minimax move
 * @param findings what to tell the builder
 */
public record SpaceMoveResult(
        MoveStatus status,
        int rank,
        List<Double> singularValues,
        double scaleLengthMm,
        List<SpaceMove> free,
        Optional<Solution> minimax,
        Optional<Solution> leastSquares,
        List<String> outside,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public SpaceMoveResult {
        singularValues = List.copyOf(singularValues);
        free = List.copyOf(free);
        outside = List.copyOf(outside);
        findings = List.copyOf(findings);
    }

    /**
     * One move and what it leaves.
     *
     * @param move the move
     * @param valuesMm readings after it, straight lines, in their order
     * @param worstDeviation the largest weight times distance from nominal
     * @param sumSquares the sum of squares of these
     * @param unique whether no other move does as well (least squares: whether every motion is known)
     * @param deciding the stations that decide it; empty for least squares
     * @param straightErrorMm largest difference between straight lines and rigid part at the first solution
     */
    public record Solution(
            SpaceMove move,
            List<Double> valuesMm,
            double worstDeviation,
            double sumSquares,
            boolean unique,
            List<String> deciding,
            double straightErrorMm) {
        /** Keeps its own copies. */
        public Solution {
            valuesMm = List.copyOf(valuesMm);
            deciding = List.copyOf(deciding);
        }
    }
}
