package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import java.util.List;
import java.util.Optional;

/**
 * The move of least scaled norm √(dx² + dy² + (Λ turn)²) with every gap a guard inside its limits: nudge it as little as needed.
 * Λ is the root mean square distance of the stations from the pivot.
 */
public final class LeastMoveCalculator {
    private LeastMoveCalculator() {}

    /**
     * Answers the question.
     *
     * @param guardMm how far inside its limits every gap must end; usually one standard uncertainty
     * @throws IllegalArgumentException if there is no row, two rows share an id, or the guard is no number
     */
    public static LeastMove calculate(List<FitRow> rows, Spot pivot, MoveLimits limits, double guardMm) {
        if (!Double.isFinite(guardMm)) {
            throw new IllegalArgumentException("a guard of " + guardMm + " mm");
        }
        MoveRows straight = MoveRows.of(rows, pivot);
        double scale = straight.scaleLengthMm();
        Optional<Settled<MoveRows, Move, List<Double>>> settled =
                Settled.solve(straight, r -> nearest(r, limits, guardMm), MoveRows::move);
        if (settled.isEmpty()) {
            boolean hard = LeastSquares.nearest(List.of(0.0, 0.0, 0.0), straight.hard(limits))
                    .isPresent();
            return none(hard ? MoveStatus.NO_FIT : MoveStatus.INFEASIBLE, scale);
        }
        Move move = settled.get().move();
        if (MoveSize.tooLarge(move, limits)) {
            return none(MoveStatus.MOVE_TOO_LARGE, scale);
        }
        return new LeastMove(
                MoveStatus.OK,
                Optional.of(move),
                straight.normMm(move),
                scale,
                settled.get().rows().gapsMm(move));
    }

    private static LeastMove none(MoveStatus status, double scale) {
        return new LeastMove(status, Optional.empty(), Double.NaN, scale, List.of());
    }

    static Optional<List<Double>> nearest(MoveRows rows, MoveLimits limits, double insideMm) {
        LinearRows.Builder all = rows.within(limits);
        for (int i = 0; i < rows.rows().size(); i++) {
            FitRow row = rows.rows().get(i);
            double level = rows.levelMm(i);
            double least = Math.max(row.lowerMm() + insideMm, row.minimumMm().orElse(Double.NEGATIVE_INFINITY));
            all.row(rows.coefficients(i), level - row.upperMm() + insideMm, level - least);
        }
        return LeastSquares.nearest(List.of(0.0, 0.0, 0.0), all.build());
    }
}
