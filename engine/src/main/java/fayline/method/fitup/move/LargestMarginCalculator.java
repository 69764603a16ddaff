package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Largest s with lower + s ≤ gap ≤ upper − s at every station, within the limits of the move and above all minimum gaps; among
 * equals the least move. The right aim where limits are not alike on both sides of the nominal gap.
 */
public final class LargestMarginCalculator {
    private static final double INSIDE_MM = 1e-6;
    private static final double EASE = 1e-9;
    private static final double MOST_MM = 1e5;

    private LargestMarginCalculator() {}

    private record Answer(double margin, List<Double> point, CornerSearch.Corner corner) {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static MarginMove calculate(List<FitRow> rows, Spot pivot, MoveLimits limits) {
        Optional<Settled<MoveRows, Move, Answer>> settled =
                Settled.solve(MoveRows.of(rows, pivot), r -> solve(r, limits), (r, a) -> r.move(a.point));
        if (settled.isEmpty()) {
            return new MarginMove(MoveStatus.INFEASIBLE, Double.NaN, Optional.empty(), List.of(), List.of());
        }
        Settled<MoveRows, Move, Answer> s = settled.get();
        Move move = s.move();
        if (MoveSize.tooLarge(move, limits)) {
            return new MarginMove(MoveStatus.MOVE_TOO_LARGE, Double.NaN, Optional.empty(), List.of(), List.of());
        }
        MoveStatus status = s.answer().margin >= -INSIDE_MM ? MoveStatus.OK : MoveStatus.NO_FIT;
        return new MarginMove(
                status, s.answer().margin, Optional.of(move), s.rows().gapsMm(move), deciding(s.answer(), rows));
    }

    private static List<String> deciding(Answer a, List<FitRow> rows) {
        TreeSet<Integer> all = new TreeSet<>();
        for (CornerSearch.Hold h : a.corner.holds()) {
            int i = (h.row() - 4) / 2;
            if (h.row() >= 4 && i < rows.size()) {
                all.add(i);
            }
        }
        return all.stream().map(i -> rows.get(i).station().id()).toList();
    }

    private static Optional<Answer> solve(MoveRows rows, MoveLimits limits) {
        LinearRows hard = rows.hard(limits);
        double[] low = new double[4];
        double[] high = new double[4];
        for (int j = 0; j < 3; j++) {
            low[j] = hard.low(j);
            high[j] = hard.high(j);
        }
        low[3] = -MOST_MM;
        high[3] = MOST_MM;
        LinearRows.Builder all = LinearRows.within(low, high);
        for (int i = 0; i < rows.rows().size(); i++) {
            FitRow row = rows.rows().get(i);
            double[] a = Arrays.copyOf(rows.coefficients(i), 4);
            a[3] = 1;
            all.row(a, Double.NEGATIVE_INFINITY, rows.levelMm(i) - row.lowerMm());
            a[3] = -1;
            all.row(a, rows.levelMm(i) - row.upperMm(), Double.POSITIVE_INFINITY);
        }
        for (int i = 3; i < hard.count(); i++) {
            all.row(Arrays.copyOf(hard.coefficients(i), 4), hard.low(i), hard.high(i));
        }
        return CornerSearch.least(new double[] {0, 0, 0, -1}, all.build()).map(c -> {
            double margin = -c.value();
            List<Double> least = LeastMoveCalculator.nearest(rows, limits, margin - EASE)
                    .orElse(c.point().subList(0, 3));
            return new Answer(margin, least, c);
        });
    }
}
