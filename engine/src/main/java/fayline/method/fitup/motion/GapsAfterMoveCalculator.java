package fayline.method.fitup.motion;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;

/** Gaps after a given move: straight g − n · shift − lever · turn, and exact n · (q − c − R r − shift) with q on the neighbour. */
public final class GapsAfterMoveCalculator {
    private GapsAfterMoveCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static GapsAfterMove calculate(List<FitRow> rows, Spot pivot, Move move) {
        MoveRows straight = MoveRows.of(rows, pivot);
        return new GapsAfterMove(straight.valuesMm(move), straight.exactMm(move), straight.errorMm(move));
    }
}
