package fayline.method.fitup.space;

import fayline.basis.finding.Finding;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.move.Misfit;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveStatus;
import java.util.List;
import java.util.Optional;

/**
 * Where a part, flat or curved, must sit, as it is told: the best move of smallest worst deviation.
 *
 * @param curved whether gap and flush were judged together in space; else the gaps alone, in the plane
 * @param status how it came out
 * @param determined whether every motion that was asked for is known
 * @param found the move; empty where INFEASIBLE, UNDETERMINED_MOVE or MOVE_TOO_LARGE
 * @param outside readings outside their limits after it
 * @param misfits proofs that no move can do it, worst first; empty where one can
 * @param findings what to tell the builder
 */
public record PartMove(
        boolean curved,
        MoveStatus status,
        boolean determined,
        Optional<Found> found,
        List<MoveReport.Outside> outside,
        List<Misfit> misfits,
        List<Finding> findings) {
    /** Keeps its own copies. */
    public PartMove {
        outside = List.copyOf(outside);
        misfits = List.copyOf(misfits);
        findings = List.copyOf(findings);
    }

    /** Gaps of the rigid part after the move, in the order of the rows; empty where there is no move. */
    public Optional<List<Double>> gapsMm() {
        return found.map(Found::gapsMm);
    }

    /**
     * The move and what it leaves.
     *
     * @param move the move; of a flat part it lies in the plane
     * @param pivot its pivot, in mm
     * @param gapsMm gaps of the rigid part after it, in the order of the rows
     * @param flushes flushes of a curved part before and after it; empty for a flat one
     * @param unique whether no other move does as well
     * @param deciding the stations that decide it, each once
     */
    public record Found(
            SpaceMove move,
            Vector pivot,
            List<Double> gapsMm,
            List<Flush> flushes,
            boolean unique,
            List<String> deciding) {
        /** Keeps its own copies. */
        public Found {
            gapsMm = List.copyOf(gapsMm);
            flushes = List.copyOf(flushes);
            deciding = List.copyOf(deciding);
        }
    }

    /**
     * A flush of a curved part.
     *
     * @param wanted what is wanted of it
     * @param readMm as read
     * @param afterMm of the rigid part after the move
     */
    public record Flush(Wanted wanted, double readMm, double afterMm) {}
}
