package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.move.Misfit;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.move.Relaxation;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer about the best move in space.
 *
 * @param status how it came out, judged at the minimax move
 * @param determinacy which motions the readings know
 * @param minimax smallest worst deviation, then least squares, then least; empty where INFEASIBLE, UNDETERMINED_MOVE or
 *     MOVE_TOO_LARGE
 * @param leastSquares empty as above
 * @param outside readings outside their limits after the minimax move
 * @param misfits proofs that no move can do it, worst first; empty where one can
 * @param relaxation the least easing of minimum gaps, where they contradict each other
 * @param refused the move that was refused as too large
 * @param weakStandardErrorMm standard error along the weak motion, where there is one and uncertainties are given
 * @param findings what to tell the builder
 */
public record SpaceMoveResult(
        MoveStatus status,
        SpaceDeterminacy determinacy,
        Optional<Solution> minimax,
        Optional<Solution> leastSquares,
        List<Outside> outside,
        List<Misfit> misfits,
        Optional<Relaxation<SpaceMove>> relaxation,
        Optional<SpaceMove> refused,
        OptionalDouble weakStandardErrorMm,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public SpaceMoveResult {
        outside = List.copyOf(outside);
        misfits = List.copyOf(misfits);
        findings = List.copyOf(findings);
    }

    /**
     * A reading outside its limits.
     *
     * @param station its mark
     * @param named the mark, with "flush" behind it where it is one
     * @param valueMm its value after the move
     * @param beyondMm how far below the lower limit (negative) or above the upper one (positive)
     */
    public record Outside(String station, String named, double valueMm, double beyondMm) {}

    /**
     * One move and what it leaves.
     *
     * @param move the move
     * @param valuesMm readings after it, straight lines, in their order
     * @param exactValuesMm readings of the rigid part
     * @param worstDeviation the largest weight times distance from nominal
     * @param sumSquares the sum of squares of these
     * @param unique whether no other move does as well (least squares: whether every motion is known)
     * @param playMm over how far a shift may range without losing it; nothing for least squares
     * @param deciding the readings that decide it, a flush with "flush" behind its mark; empty for least squares
     * @param straightErrorMm largest difference between straight lines and rigid part at the first solution
     * @param rounds how often it was straightened anew; 0 where the first solution was good
     * @param still whether the move came to rest
     * @param known how well the move of least squares is known; empty for the other, where uncertainties were not given, and
     *     where a motion is not known
     */
    public record Solution(
            SpaceMove move,
            List<Double> valuesMm,
            List<Double> exactValuesMm,
            double worstDeviation,
            double sumSquares,
            boolean unique,
            double playMm,
            List<String> deciding,
            double straightErrorMm,
            int rounds,
            boolean still,
            Optional<Known> known) {
        /** Keeps its own copies. */
        public Solution {
            valuesMm = List.copyOf(valuesMm);
            exactValuesMm = List.copyOf(exactValuesMm);
            deciding = List.copyOf(deciding);
        }
    }

    /**
     * How well a move is known.
     *
     * @param covariance six by six over shifts (mm) and turns (rad)
     * @param valueErrorsMm the standard error that the doubt of the move gives to each reading after it
     */
    public record Known(DenseMatrix covariance, List<Double> valueErrorsMm) {
        /** Keeps its own copy. */
        public Known {
            valueErrorsMm = List.copyOf(valueErrorsMm);
        }

        /** The standard errors of the move. */
        public SpaceMove standardError() {
            return new SpaceMove(new Vector(error(0), error(1), error(2)), new Vector(error(3), error(4), error(5)));
        }

        private double error(int k) {
            return Math.sqrt(covariance.get(k, k));
        }
    }
}
