package fayline.method.fitup.move;

import fayline.basis.finding.Finding;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.Determinacy;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The answer about the best move.
 *
 * @param status how it came out
 * @param determinacy which motions the stations know
 * @param minimax the move of smallest worst deviation; empty where INFEASIBLE, UNDETERMINED_MOVE or MOVE_TOO_LARGE
 * @param leastSquares the move of least squares; empty as above
 * @param outside stations outside their limits after the minimax move
 * @param misfits proofs that no move can do it, worst first; empty where one can
 * @param relaxation the least easing of minimum gaps, where they contradict each other
 * @param refused the move that was refused as too large
 * @param weakStandardErrorMm standard error along the weak motion, where there is one and uncertainties are given
 * @param findings what to tell the builder
 */
public record BestMoveResult(
        MoveStatus status,
        Determinacy determinacy,
        Optional<MinimaxMove> minimax,
        Optional<LeastSquaresMove> leastSquares,
        List<Outside> outside,
        List<Misfit> misfits,
        Optional<Relaxation<Move>> relaxation,
        Optional<Move> refused,
        OptionalDouble weakStandardErrorMm,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public BestMoveResult {
        outside = List.copyOf(outside);
        misfits = List.copyOf(misfits);
        findings = List.copyOf(findings);
    }

    /** Whether a motion is not known. */
    public boolean undetermined() {
        return !determinacy.determined();
    }

    /**
     * A station outside its limits.
     *
     * @param station its id
     * @param gapMm its gap after the move
     * @param beyondMm how far below the lower limit (negative) or above the upper one (positive)
     */
    public record Outside(String station, double gapMm, double beyondMm) {}
}
