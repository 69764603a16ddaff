package fayline.method.fitup.space;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.motion.Box;
import java.util.List;

/**
 * Where a part, flat or curved, must sit.
 *
 * @param gaps what is known and wanted of each gap; at least one
 * @param flushes flush readings that count beside the gaps where the part is curved
 * @param curved whether any station of the part stands out of its plane; then every motion and every reading counts together
 * @param pivot the pivot of every move in the answer, in mm; of a flat part its height does not matter
 * @param room how far the part may be moved in its plane
 * @param lift how far it may be moved out of it
 * @param uncertaintiesMm standard uncertainty of each gap, then of each flush where the part is curved; empty where not given
 */
public record PartQuestion(
        List<FitRow> gaps,
        List<SpaceReading> flushes,
        boolean curved,
        Vector pivot,
        MoveLimits room,
        LiftLimits lift,
        List<Double> uncertaintiesMm) {
    /**
     * Keeps its own copies.
     *
     * @throws IllegalArgumentException if there is no gap
     */
    public PartQuestion {
        gaps = List.copyOf(gaps);
        flushes = List.copyOf(flushes);
        uncertaintiesMm = List.copyOf(uncertaintiesMm);
        if (gaps.isEmpty()) {
            throw new IllegalArgumentException("no gaps, so no move");
        }
    }

    /** The pivot as it lies in the plane. */
    public Spot flatPivot() {
        return new Spot(pivot.x(), pivot.y());
    }

    /** Gaps, then flushes, as straight-line functions of a move in space. */
    public SpaceRows rows() {
        return SpaceRows.of(gaps, flushes, pivot);
    }

    /** The limits of a move in space, in the unknowns of the rows. */
    public Box box() {
        return rows().box(lift.with(room));
    }
}
