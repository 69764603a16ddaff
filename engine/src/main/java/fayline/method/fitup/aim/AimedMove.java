package fayline.method.fitup.aim;

import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.space.PartMove;
import java.util.List;
import java.util.Optional;

/**
 * The move that is best at one aim, with what it is worth at every other.
 *
 * @param aim the aim
 * @param status OK where every reading ends inside its limits; NO_FIT where it does not, and for the least move where none does;
 *     INFEASIBLE, MOVE_TOO_LARGE
 * @param guardMm how far inside its limits the least move was asked to bring every reading, in mm; nothing for the other aims
 * @param move the move and what it leaves; empty where INFEASIBLE or MOVE_TOO_LARGE, and for the least move where NO_FIT
 */
public record AimedMove(Aim aim, MoveStatus status, double guardMm, Optional<Left> move) {
    /**
     * A move and what it leaves.
     *
     * @param move the move about the question's pivot; of a flat part it lies in the plane
     * @param gapsMm gaps of the rigid part after it, in mm, in the order of the rows
     * @param flushes flushes of a curved part before and after it; empty for a flat one
     * @param outside readings outside their limits after it, as the straight lines on which it was sought have them
     * @param worst the largest weight times distance from nominal, in mm where weights are one
     * @param rootMeanSquare root of the mean square of weight times distance from nominal, in mm where weights are one
     * @param marginMm the smallest distance of a reading inside its limits, in mm; negative: by how much one is outside
     * @param sizeMm the size of the move, its turn brought to a shift by the scale length, in mm
     */
    public record Left(
            SpaceMove move,
            List<Double> gapsMm,
            List<PartMove.Flush> flushes,
            List<MoveReport.Outside> outside,
            double worst,
            double rootMeanSquare,
            double marginMm,
            double sizeMm) {
        /** Keeps its own copies. */
        public Left {
            gapsMm = List.copyOf(gapsMm);
            flushes = List.copyOf(flushes);
            outside = List.copyOf(outside);
        }
    }
}
