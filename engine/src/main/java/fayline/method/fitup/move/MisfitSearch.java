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
import java.util.function.ToDoubleFunction;

/**
 * Looks for a sum of readings that no move changes and that cannot be right: first two gaps that face away from each other, else
 * the weights that the linear program of the largest least margin leaves as its prices (the alternative of Farkas), at first with
 * lower limits alone or upper ones alone; where those can be held, with both: then the shapes differ.
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
        if (all.isEmpty()) {
            new MisfitSearch(lines, true).shape().ifPresent(all::add);
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
        double sign = tooLarge ? 1 : -1;
        LinearRows.Builder all = bounds();
        for (int i = 0; i < lines.count(); i++) {
            all.row(side(i, sign), Double.NEGATIVE_INFINITY, sign * (lines.levelMm(i) - limit(i)));
        }
        return missing(all)
                .map(holds -> told(holds.stream().map(h -> h.row() - first()).toList(), weights(holds, h -> 1)));
    }

    /** Readings that are too small beside others that are too large. */
    private Optional<Misfit> shape() {
        LinearRows.Builder all = bounds();
        for (int i = 0; i < lines.count(); i++) {
            Wanted w = lines.wanted(i);
            all.row(side(i, 1), Double.NEGATIVE_INFINITY, lines.levelMm(i) - w.lowerMm());
            all.row(side(i, -1), Double.NEGATIVE_INFINITY, w.upperMm() - lines.levelMm(i));
        }
        return missing(all)
                .map(holds -> told(
                        holds.stream().map(h -> (h.row() - first()) / 2).toList(),
                        weights(holds, h -> (h.row() - first()) % 2 == 0 ? 1 : -1)));
    }

    private int first() {
        return lines.unknowns() + 1;
    }

    private LinearRows.Builder bounds() {
        double[] high = new double[first()];
        Arrays.fill(high, FAR);
        return LinearRows.within(Arrays.stream(high).map(v -> -v).toArray(), high);
    }

    /** A reading's distance from one of its limits, with the margin as a further unknown. */
    private double[] side(int i, double sign) {
        double[] a = Arrays.copyOf(coefficients[i], first());
        for (int j = 0; j < lines.unknowns(); j++) {
            a[j] *= sign;
        }
        a[lines.unknowns()] = 1;
        return a;
    }

    /** The rows that hold the largest margin where that is negative, the move being free. */
    private Optional<List<CornerSearch.Hold>> missing(LinearRows.Builder rows) {
        double[] cost = new double[first()];
        cost[lines.unknowns()] = -1;
        return CornerSearch.least(cost, rows.build())
                .filter(c -> -c.value() < -MISSING_MM)
                .map(CornerSearch.Corner::holds)
                .filter(holds -> holds.stream().allMatch(h -> h.row() >= first()));
    }

    private static List<Double> weights(List<CornerSearch.Hold> holds, ToDoubleFunction<CornerSearch.Hold> sign) {
        double most = holds.stream().mapToDouble(CornerSearch.Hold::price).max().orElseThrow();
        return holds.stream().map(h -> sign.applyAsDouble(h) * h.price() / most).toList();
    }

    private Misfit told(List<Integer> readings, List<Double> weights) {
        List<String> names = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        double have = 0;
        double need = 0;
        boolean flush = false;
        for (int k = 0; k < readings.size(); k++) {
            int i = readings.get(k);
            Wanted w = lines.wanted(i);
            names.add(w.named());
            values.add(lines.levelMm(i));
            have += weights.get(k) * lines.levelMm(i);
            need += weights.get(k) * (weights.get(k) < 0 ? w.upperMm() : limit(i));
            flush |= w.flush();
        }
        return new Misfit(tooLarge, flush, names, values, weights, have, need);
    }
}
