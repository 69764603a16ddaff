package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.GrowingRows;
import fayline.basis.numeric.optimum.LeastSquares;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The least sum of easings of minimum gaps, limits of the move kept. For a given move the easings are known, and their sum is
 * convex in the move and made of straight pieces, which are taken in one by one [kelley1960]. Of the moves
 * that need no more the least.
 */
public final class RelaxationCalculator {
    private static final double EASED = 1e-7;
    private static final double EASE = 1e-9;
    private static final double BROKEN_MM = 1e-11;
    private static final double MOST_MM = 1e6;

    private RelaxationCalculator() {}

    /**
     * Answers the question in the plane.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static Relaxation<Move> calculate(List<FitRow> rows, Spot pivot, MoveLimits limits) {
        MoveRows straight = MoveRows.of(rows, pivot);
        return calculate(straight, straight.box(limits));
    }

    /**
     * Answers the question for any kind of move.
     *
     * @param lines the readings
     * @param box limits of the move
     */
    public static <S extends WantedLines<S, M>, M> Relaxation<M> calculate(S lines, Box box) {
        Settled<S, M, List<Double>> settled = Settled.solve(lines, r -> Optional.of(least(r, box)), (r, x) -> r.move(x))
                .orElseThrow();
        M move = settled.move();
        double[] x = settled.rows().unknowns(move);
        List<Relaxation.Share> shares = new ArrayList<>();
        double total = 0;
        for (int i = 0; i < lines.count(); i++) {
            double under = underMm(settled.rows(), i, x);
            if (under > EASED) {
                shares.add(new Relaxation.Share(lines.wanted(i).named(), under));
                total += under;
            }
        }
        return new Relaxation<>(shares.isEmpty() ? MoveStatus.OK : MoveStatus.INFEASIBLE, total, shares, move);
    }

    private static double underMm(WantedLines<?, ?> lines, int i, double[] x) {
        return lines.wanted(i).minimumMm().orElse(Double.NEGATIVE_INFINITY) - lines.valueMm(i, x);
    }

    private static List<Double> least(WantedLines<?, ?> lines, Box box) {
        int n = lines.unknowns();
        return LeastSquares.nearest(Collections.nCopies(n, 0.0), lines.hard(box))
                .orElseGet(() -> {
                    Box all = box.finite().with(MOST_MM);
                    double[] cost = new double[n + 1];
                    cost[n] = 1;
                    GrowingRows rows = new GrowingRows(n + 1, x -> tangent(lines, x));
                    // The limits of the move hold at some point, and the last unknown takes any sum there.
                    CornerSearch.Corner corner =
                            rows.least(cost, all.lows(), all.highs()).orElseThrow();
                    double[] low = all.lows();
                    double[] high = all.highs();
                    low[n] = corner.value() + EASE;
                    high[n] = low[n];
                    return rows.nearest(new double[n + 1], low, high)
                            .orElse(corner.point())
                            .subList(0, n);
                });
    }

    /** The mean easing at a move as a straight line, where the last unknown says less. */
    private static List<GrowingRows.Row> tangent(WantedLines<?, ?> lines, double[] x) {
        int n = lines.unknowns();
        double[] move = Arrays.copyOf(x, n);
        double[] slope = new double[n + 1];
        double level = 0;
        double mean = 0;
        for (int i = 0; i < lines.count(); i++) {
            double under = underMm(lines, i, move) / lines.count();
            if (under > 0) {
                Wanted w = lines.wanted(i);
                double[] a = lines.coefficients(i);
                for (int j = 0; j < n; j++) {
                    slope[j] += a[j] / lines.count();
                }
                level += (w.minimumMm().orElseThrow() - lines.levelMm(i)) / lines.count();
                mean += under;
            }
        }
        slope[n] = -1;
        return mean > x[n] + BROKEN_MM ? List.of(new GrowingRows.Row(slope, -level)) : List.of();
    }
}
