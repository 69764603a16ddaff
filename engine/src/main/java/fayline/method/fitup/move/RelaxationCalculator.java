package fayline.method.fitup.move;

import fayline.basis.numeric.LinearProgram;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.motion.MoveRows;
import fayline.method.fitup.motion.Settled;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The least sum of easings of minimum gaps, limits of the move kept: a linear program with one easing per minimum gap, which
 * takes in a gap only once it is undercut.
 */
public final class RelaxationCalculator {
    private static final double EASED = 1e-9;

    private RelaxationCalculator() {}

    /**
     * Answers the question.
     *
     * @throws IllegalArgumentException if there is no row or two rows share an id
     */
    public static Relaxation calculate(List<FitRow> rows, Spot pivot, MoveLimits limits) {
        Settled<MoveRows, Move, List<Double>> settled = Settled.solve(
                        MoveRows.of(rows, pivot), r -> Optional.of(least(r, limits)), MoveRows::move)
                .orElseThrow();
        Move move = settled.move();
        List<Double> gaps = settled.rows().gapsMm(move);
        List<Relaxation.Share> shares = new ArrayList<>();
        double total = 0;
        for (int i = 0; i < rows.size(); i++) {
            double under = rows.get(i).minimumMm().orElse(Double.NEGATIVE_INFINITY) - gaps.get(i);
            if (under > EASED) {
                shares.add(new Relaxation.Share(rows.get(i).station().id(), under));
                total += under;
            }
        }
        return new Relaxation(shares.isEmpty() ? MoveStatus.OK : MoveStatus.INFEASIBLE, total, shares, move);
    }

    private static List<Double> least(MoveRows rows, MoveLimits limits) {
        List<Integer> taken = new ArrayList<>();
        while (true) {
            List<Double> x = solve(rows, limits, taken);
            List<Double> gaps = rows.gapsMm(rows.move(x));
            boolean more = false;
            for (int i = 0; i < gaps.size(); i++) {
                double minimum = rows.rows().get(i).minimumMm().orElse(Double.NEGATIVE_INFINITY);
                if (gaps.get(i) < minimum - EASED && !taken.contains(i)) {
                    taken.add(i);
                    more = true;
                }
            }
            if (!more) {
                return x;
            }
        }
    }

    private static List<Double> solve(MoveRows rows, MoveLimits limits, List<Integer> taken) {
        int n = 3 + taken.size();
        double scale = rows.scaleLengthMm();
        LinearProgram.Builder p = LinearProgram.of(n)
                .bound(0, limits.dxLowMm(), limits.dxHighMm())
                .bound(1, limits.dyLowMm(), limits.dyHighMm())
                .bound(2, limits.turnLowRad() * scale, limits.turnHighRad() * scale);
        double[] cost = new double[n];
        for (int k = 0; k < taken.size(); k++) {
            int i = taken.get(k);
            double[] row = Arrays.copyOf(rows.coefficients(i), n);
            row[3 + k] = -1;
            double most = rows.levelMm(i) - rows.rows().get(i).minimumMm().orElseThrow();
            p.row(row, Double.NEGATIVE_INFINITY, most).bound(3 + k, 0, Double.POSITIVE_INFINITY);
            cost[3 + k] = 1;
        }
        return p.build().minimise(cost).point().subList(0, 3);
    }
}
