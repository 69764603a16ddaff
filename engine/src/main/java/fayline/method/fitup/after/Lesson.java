package fayline.method.fitup.after;

import fayline.basis.numeric.DenseMatrix;
import fayline.method.fitup.Move;
import java.util.Optional;

/**
 * What builds have taught about a way of locating: expect this move again, and aim off by it.
 *
 * @param move the move to expect, drawn in from what was fitted towards none by as much as that is doubtful
 * @param covariance how well it is known now
 * @param builds how many builds taught it
 */
public record Lesson(Move move, MoveCovariance covariance, int builds) {
    /** Where the move comes from. */
    public enum Cause {
        /** The tool, and the other hand's tool is its mirror image. */
        MIRRORED_TOOL,
        /** The tool, which serves both hands as it is or was made anew. */
        TOOL_NOT_MIRRORED,
        /** A habit of the hand or eye. */
        HABIT,
        /** A gauge that reads wrong. */
        GAUGE,
        /** Heat. */
        HEAT,
        /** Nobody knows. */
        UNKNOWN
    }

    /** The same move in the mirror: dx and turn the other way. */
    public Lesson mirrored() {
        double[] sign = {-1, 1, -1};
        return new Lesson(
                new Move(-move.dxMm(), move.dyMm(), -move.turnRad()),
                MoveCovariance.of(
                        DenseMatrix.diagonal(sign).times(covariance.matrix()).times(DenseMatrix.diagonal(sign))),
                builds);
    }

    /**
     * What the opposite hand takes from it.
     *
     * @param cause where the move comes from
     * @return the mirrored lesson where the cause is in a tool that was mirrored too; otherwise nothing, since habits, gauges and
     *     heat do not mirror
     */
    public Optional<Lesson> forOppositeHand(Cause cause) {
        return cause == Cause.MIRRORED_TOOL ? Optional.of(mirrored()) : Optional.empty();
    }
}
