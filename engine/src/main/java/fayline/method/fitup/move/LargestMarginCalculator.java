package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.CornerSearch;
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
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Largest s with lower + s ≤ reading ≤ upper − s at every station, within the limits of the move and above all minimum gaps;
 * among equals the least move. The right aim where limits are not alike on both sides of the nominal gap.
 */
public final class LargestMarginCalculator {
    private static final double INSIDE_MM = 1e-6;
    private static final double EASE = 1e-9;
    private static final double MOST_MM = 1e5;

    private LargestMarginCalculator() {}

    private record Answer(double margin, List<Double> point, CornerSearch.Corner corner) {}

    /**
     * Answers the question in the plane.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static MarginMove<Move> calculate(List<FitRow> rows, Spot pivot, MoveLimits limits) {
        MoveRows straight = MoveRows.of(rows, pivot);
        return calculate(straight, straight.box(limits));
    }

    /**
     * Answers the question for any kind of move.
     *
     * @param lines the readings, at least one of them with a limit
     * @param box limits of the move
     */
    public static <S extends WantedLines<S, M>, M> MarginMove<M> calculate(S lines, Box box) {
        Optional<Settled<S, M, Answer>> settled = Settled.solve(lines, r -> solve(r, box), (r, a) -> r.move(a.point));
        if (settled.isEmpty()) {
            return new MarginMove<>(MoveStatus.INFEASIBLE, Double.NaN, Optional.empty(), List.of(), List.of());
        }
        Settled<S, M, Answer> s = settled.get();
        M move = s.move();
        if (MoveSize.tooLarge(lines, move, box)) {
            return new MarginMove<>(MoveStatus.MOVE_TOO_LARGE, Double.NaN, Optional.empty(), List.of(), List.of());
        }
        MoveStatus status = s.answer().margin >= -INSIDE_MM ? MoveStatus.OK : MoveStatus.NO_FIT;
        return new MarginMove<>(
                status, s.answer().margin, Optional.of(move), s.rows().valuesMm(move), deciding(s.answer(), lines));
    }

    private static List<String> deciding(Answer a, WantedLines<?, ?> lines) {
        int first = lines.unknowns() + 1;
        TreeSet<Integer> all = new TreeSet<>();
        for (CornerSearch.Hold h : a.corner.holds()) {
            int i = (h.row() - first) / 2;
            if (h.row() >= first && i < lines.count()) {
                all.add(i);
            }
        }
        return all.stream().map(i -> lines.wanted(i).named()).toList();
    }

    private static Optional<Answer> solve(WantedLines<?, ?> lines, Box box) {
        int n = lines.unknowns();
        Box finite = box.finite();
        double[] low = Arrays.copyOf(finite.lows(), n + 1);
        double[] high = Arrays.copyOf(finite.highs(), n + 1);
        low[n] = -MOST_MM;
        high[n] = MOST_MM;
        LinearRows.Builder all = LinearRows.within(low, high);
        for (int i = 0; i < lines.count(); i++) {
            Wanted w = lines.wanted(i);
            double[] a = Arrays.copyOf(lines.coefficients(i), n + 1);
            a[n] = 1;
            all.row(a, Double.NEGATIVE_INFINITY, lines.levelMm(i) - w.lowerMm());
            a[n] = -1;
            all.row(a, lines.levelMm(i) - w.upperMm(), Double.POSITIVE_INFINITY);
        }
        LinearRows hard = lines.hard(finite);
        for (int i = n; i < hard.count(); i++) {
            all.row(Arrays.copyOf(hard.coefficients(i), n + 1), hard.low(i), hard.high(i));
        }
        double[] cost = new double[n + 1];
        cost[n] = -1;
        return CornerSearch.least(cost, all.build()).map(c -> {
            double margin = -c.value();
            List<Double> least = LeastMoveCalculator.nearest(lines, box, margin - EASE)
                    .orElse(c.point().subList(0, n));
            return new Answer(margin, least, c);
        });
    }
}
