package fayline.method.fitup.move;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.LinearRows;
import fayline.method.fitup.motion.Wanted;
import fayline.method.fitup.motion.WantedLines;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Looks for a sum of readings that no move changes and that cannot be right: first two gaps that face away from each other, else
 * the weights that the linear program of the largest least margin leaves as its prices (the alternative of Farkas).
 */
public final class MisfitSearch {
    private static final double CANCEL = 1e-3;
    private static final double MISSING_MM = 1e-6;
    private static final double FAR = 1e4;
    private static final int MOST_PAIRS = 6;
    private static final int MOST_READINGS_FOR_PAIRS = 400;

    private final WantedLines<?, ?> lines;
    private final double[][] coefficients;
    private final boolean tooLarge;

    private MisfitSearch(WantedLines<?, ?> lines, boolean tooLarge) {
        this.lines = lines;
        this.tooLarge = tooLarge;
        coefficients = new double[lines.count()][];
        Arrays.setAll(coefficients, lines::coefficients);
    }

    /** What proves that no move can do it, the worst first; nothing where no such sum is found. */
    public static List<Misfit> search(WantedLines<?, ?> lines) {
        List<Misfit> all = new ArrayList<>();
        for (boolean tooLarge : new boolean[] {true, false}) {
            MisfitSearch s = new MisfitSearch(lines, tooLarge);
            List<Misfit> pairs = s.pairs();
            all.addAll(pairs);
            if (pairs.isEmpty()) {
                s.combination().ifPresent(all::add);
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Misfit::missingMm).reversed())
                .toList();
    }

    private double limit(int i) {
        Wanted w = lines.wanted(i);
        return tooLarge ? w.lowerMm() : w.upperMm();
    }

    private List<Misfit> pairs() {
        List<Misfit> all = new ArrayList<>();
        int n = lines.count();
        for (int i = 0; i < n && n <= MOST_READINGS_FOR_PAIRS; i++) {
            for (int j = i + 1; j < n; j++) {
                double have = lines.levelMm(i) + lines.levelMm(j);
                double need = limit(i) + limit(j);
                double missing = tooLarge ? need - have : have - need;
                if (missing > MISSING_MM && cancel(i, j)) {
                    all.add(told(List.of(i, j), List.of(1.0, 1.0)));
                }
            }
        }
        return all.stream()
                .sorted(Comparator.comparingDouble(Misfit::missingMm).reversed())
                .limit(MOST_PAIRS)
                .toList();
    }

    private boolean cancel(int i, int j) {
        for (int k = 0; k < lines.unknowns(); k++) {
            if (!(Math.abs(coefficients[i][k] + coefficients[j][k]) < CANCEL)) {
                return false;
            }
        }
        return true;
    }

    private Optional<Misfit> combination() {
        int n = lines.unknowns();
        double[] high = new double[n + 1];
        Arrays.fill(high, FAR);
        LinearRows.Builder all =
                LinearRows.within(Arrays.stream(high).map(v -> -v).toArray(), high);
        double sign = tooLarge ? 1 : -1;
        for (int i = 0; i < lines.count(); i++) {
            double[] a = Arrays.copyOf(coefficients[i], n + 1);
            for (int j = 0; j < n; j++) {
                a[j] *= sign;
            }
            a[n] = 1;
            all.row(a, Double.NEGATIVE_INFINITY, sign * (lines.levelMm(i) - limit(i)));
        }
        double[] cost = new double[n + 1];
        cost[n] = -1;
        return CornerSearch.least(cost, all.build())
                .filter(c -> -c.value() < -MISSING_MM)
                .filter(c -> c.holds().stream().allMatch(h -> h.row() > n))
                .map(c -> told(c.holds()));
    }

    private Misfit told(List<CornerSearch.Hold> holds) {
        double most = holds.stream().mapToDouble(CornerSearch.Hold::price).max().orElseThrow();
        return told(
                holds.stream().map(h -> h.row() - (lines.unknowns() + 1)).toList(),
                holds.stream().map(h -> h.price() / most).toList());
    }

    private Misfit told(List<Integer> readings, List<Double> weights) {
        List<String> names = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        double have = 0;
        double need = 0;
        boolean flush = false;
        for (int k = 0; k < readings.size(); k++) {
            int i = readings.get(k);
            names.add(lines.wanted(i).named());
            values.add(lines.levelMm(i));
            have += weights.get(k) * lines.levelMm(i);
            need += weights.get(k) * limit(i);
            flush |= lines.wanted(i).flush();
        }
        return new Misfit(tooLarge, flush, names, values, weights, have, need);
    }
}
