package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.LeastSquares;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The move of least scaled norm, the root of the sum of squares of shifts and Λ · turns, with every reading a guard inside its
 * limits: nudge it as little as needed. Λ is the root mean square distance of the stations from the pivot.
 */
public final class LeastMoveCalculator {
    private LeastMoveCalculator() {}

    /**
     * Answers the question in the plane.
     *
     * @param guardMm how far inside its limits every gap must end; usually one standard uncertainty
     * @throws IllegalArgumentException if there is no row, two rows share an id, or the guard is no number
     */
    public static LeastMove<Move> calculate(List<FitRow> rows, Spot pivot, MoveLimits limits, double guardMm) {
        MoveRows straight = MoveRows.of(rows, pivot);
        return calculate(straight, straight.box(limits), guardMm);
    }

    /**
     * Answers the question for any kind of move.
     *
     * @param lines the readings
     * @param box limits of the move
     * @param guardMm how far inside its limits every reading must end
     * @throws IllegalArgumentException if the guard is no number
     */
    public static <S extends WantedLines<S, M>, M> LeastMove<M> calculate(S lines, Box box, double guardMm) {
        if (!Double.isFinite(guardMm)) {
            throw new IllegalArgumentException("a guard of " + guardMm + " mm");
        }
        double scale = lines.scaleLengthMm();
        Optional<Settled<S, M, List<Double>>> settled =
                Settled.solve(lines, r -> nearest(r, box, guardMm), (r, x) -> r.move(x));
        if (settled.isEmpty()) {
            boolean hard = LeastSquares.nearest(nothing(lines), lines.hard(box)).isPresent();
            return none(hard ? MoveStatus.NO_FIT : MoveStatus.INFEASIBLE, scale);
        }
        M move = settled.get().move();
        if (MoveSize.tooLarge(lines, move, box)) {
            return none(MoveStatus.MOVE_TOO_LARGE, scale);
        }
        return new LeastMove<>(
                MoveStatus.OK,
                Optional.of(move),
                lines.normMm(move),
                scale,
                settled.get().rows().valuesMm(move));
    }

    private static <M> LeastMove<M> none(MoveStatus status, double scale) {
        return new LeastMove<>(status, Optional.empty(), Double.NaN, scale, List.of());
    }

    private static List<Double> nothing(WantedLines<?, ?> lines) {
        return Collections.nCopies(lines.unknowns(), 0.0);
    }

    static Optional<List<Double>> nearest(WantedLines<?, ?> lines, Box box, double insideMm) {
        LinearRows.Builder all = box.rows();
        for (int i = 0; i < lines.count(); i++) {
            Wanted w = lines.wanted(i);
            double level = lines.levelMm(i);
            double least = Math.max(w.lowerMm() + insideMm, w.minimumMm().orElse(Double.NEGATIVE_INFINITY));
            all.row(lines.coefficients(i), level - w.upperMm() + insideMm, level - least);
        }
        return LeastSquares.nearest(nothing(lines), all.build());
    }
}
