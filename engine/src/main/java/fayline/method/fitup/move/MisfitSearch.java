package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.motion.MoveRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Looks for a sum of gaps that no move changes and that cannot be right: first two gaps that face away from each other, else the
 * weights that the linear program of the largest least gap leaves as its prices (the alternative of Farkas).
 */
final class MisfitSearch {
    private static final double CANCEL = 1e-3;
    private static final double MISSING_MM = 1e-6;
    private static final double FAR = 1e4;
    private static final int MOST_PAIRS = 6;
    private static final int MOST_STATIONS_FOR_PAIRS = 400;

    private MisfitSearch() {}

    static List<Misfit> search(MoveRows rows) {
        List<Misfit> all = new ArrayList<>();
        for (boolean tooLarge : new boolean[] {true, false}) {
            List<Misfit> pairs = pairs(rows, tooLarge);
            all.addAll(pairs);
            if (pairs.isEmpty()) {
                combination(rows, tooLarge).ifPresent(all::add);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Misfit::missingMm).reversed())
                .toList();
    }

    private static double limit(FitRow row, boolean tooLarge) {
        return tooLarge ? row.lowerMm() : row.upperMm();
    }

    private static List<Misfit> pairs(MoveRows rows, boolean tooLarge) {
        List<FitRow> r = rows.rows();
        List<Misfit> all = new ArrayList<>();
        for (int i = 0; i < r.size() && r.size() <= MOST_STATIONS_FOR_PAIRS; i++) {
            double[] a = rows.coefficients(i);
            for (int j = i + 1; j < r.size(); j++) {
                double[] b = rows.coefficients(j);
                double have = rows.levelMm(i) + rows.levelMm(j);
                double need = limit(r.get(i), tooLarge) + limit(r.get(j), tooLarge);
                double missing = tooLarge ? need - have : have - need;
                if (missing > MISSING_MM
                        && Math.abs(a[0] + b[0]) < CANCEL
                        && Math.abs(a[1] + b[1]) < CANCEL
                        && Math.abs(a[2] + b[2]) < CANCEL) {
                    all.add(new Misfit(
                            tooLarge,
                            List.of(r.get(i).station().id(), r.get(j).station().id()),
                            List.of(1.0, 1.0),
                            have,
                            need));
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Misfit::missingMm).reversed())
                .limit(MOST_PAIRS)
                .toList();
    }

    private static Optional<Misfit> combination(MoveRows rows, boolean tooLarge) {
        double[] low = {-FAR, -FAR, -FAR, -FAR};
        double[] high = {FAR, FAR, FAR, FAR};
        LinearRows.Builder all = LinearRows.within(low, high);
        double sign = tooLarge ? 1 : -1;
        for (int i = 0; i < rows.rows().size(); i++) {
            double[] a = Arrays.copyOf(rows.coefficients(i), 4);
            for (int j = 0; j < 3; j++) {
                a[j] *= sign;
            }
            a[3] = 1;
            double room = sign * (rows.levelMm(i) - limit(rows.rows().get(i), tooLarge));
            all.row(a, Double.NEGATIVE_INFINITY, room);
        }
        return CornerSearch.least(new double[] {0, 0, 0, -1}, all.build())
                .filter(c -> -c.value() < -MISSING_MM)
                .filter(c -> c.holds().stream().allMatch(h -> h.row() >= 4))
                .map(c -> told(rows, tooLarge, c.holds()));
    }

    private static Misfit told(MoveRows rows, boolean tooLarge, List<CornerSearch.Hold> holds) {
        double most = holds.stream().mapToDouble(CornerSearch.Hold::price).max().orElseThrow();
        List<String> ids = new ArrayList<>();
        List<Double> weights = new ArrayList<>();
        double have = 0;
        double need = 0;
        for (CornerSearch.Hold h : holds) {
            int i = h.row() - 4;
            double w = h.price() / most;
            ids.add(rows.rows().get(i).station().id());
            weights.add(w);
            have += w * rows.levelMm(i);
            need += w * limit(rows.rows().get(i), tooLarge);
        }
        return new Misfit(tooLarge, ids, weights, have, need);
    }
}
