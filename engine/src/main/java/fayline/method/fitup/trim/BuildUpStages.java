package fayline.method.fitup.trim;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.GrowingRows;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * Least area added, then least area cut with no more added. Adding is allowed everywhere, cutting where the question allows it.
 * For a given move the least fair heights, and the least fair depths, are each a {@link FairEnvelope}; no fair line both adds and
 * cuts more than these, for a cut asks nothing of a height where both fit. Of equal ways the one that adds on the first edges named,
 * then the shortest move. Unknowns: dx, dy, turn times Λ, mean height, mean depth, mean height weighed by the order of the edges; all
 * in mm.
 */
final class BuildUpStages {
    private static final int ADDED = TrimLines.MOVE;
    private static final int CUT = ADDED + 1;
    private static final int FIRST = CUT + 1;
    private static final int UNKNOWNS = FIRST + 1;
    private static final double FAR_MM = 1e6;
    private static final double BROKEN_MM = 1e-10;
    private static final double BROKEN_MEAN_MM = 1e-11;
    private static final double SAME_MM = 1e-10;
    private static final double NOTHING_MM = 1e-6;

    private final TrimLines lines;
    private final FairEnvelope heights;
    private final FairEnvelope depths;
    private final double[] lengths;
    private final double[] share;
    private final double[] ordered;
    private final GrowingRows rows = new GrowingRows(UNKNOWNS, this::broken);

    private BuildUpStages(TrimLines lines, Set<String> edges) {
        this.lines = lines;
        heights = lines.heights(edges);
        depths = lines.depths();
        lengths = lines.lengthsMm();
        double sum = Arrays.stream(lengths).sum();
        double whole = sum > 0 ? sum : 1;
        share = Arrays.stream(lengths).map(l -> l / whole).toArray();
        ordered = Arrays.stream(lines.orderedLengthsMm()).map(l -> l / whole).toArray();
    }

    static Optional<TrimResult.BuildUp> solve(TrimQuestion question) {
        return new BuildUpStages(
                        new TrimLines(question, question.moving()),
                        new HashSet<>(question.rules().edges()))
                .solve();
    }

    private Optional<TrimResult.BuildUp> solve() {
        return least(ADDED, FAR_MM, FAR_MM).map(added -> {
            double area = area(clean(heights.at(move(added.point()))));
            CornerSearch.Corner cut = least(CUT, added.value(), FAR_MM).orElse(added);
            double most = cut.point().get(CUT);
            CornerSearch.Corner first = least(FIRST, added.value(), most).orElse(cut);
            return result(
                    area,
                    lines.shortest(rows, added.value(), most, first.point().get(FIRST))
                            .orElse(first.point()));
        });
    }

    /** The least of one unknown with those before it no more than given values; those after it do not count. */
    private Optional<CornerSearch.Corner> least(int unknown, double addedMm, double cutMm) {
        double[] low = Arrays.copyOf(lines.limit(false), UNKNOWNS);
        double[] high = Arrays.copyOf(lines.limit(true), UNKNOWNS);
        double[] most = {addedMm + SAME_MM, cutMm + SAME_MM, FAR_MM};
        for (int k = ADDED; k < UNKNOWNS; k++) {
            high[k] = most[k - ADDED];
            low[k] = k > unknown ? high[k] : 0;
        }
        double[] cost = new double[UNKNOWNS];
        cost[unknown] = 1;
        return rows.least(cost, low, high);
    }

    private TrimResult.BuildUp result(double leastMm2, List<Double> best) {
        double[] q = move(best);
        List<Double> added = clean(heights.at(q));
        List<Double> cut = clean(depths.at(q));
        return new TrimResult.BuildUp(leastMm2, area(cut), added, cut, lines.move(q));
    }

    private static double[] move(List<Double> x) {
        return move(x.stream().mapToDouble(v -> v).toArray());
    }

    private static double[] move(double[] x) {
        return Arrays.copyOf(x, TrimLines.MOVE);
    }

    private double area(List<Double> each) {
        double sum = 0;
        for (int i = 0; i < lengths.length; i++) {
            sum += lengths[i] * each.get(i);
        }
        return sum;
    }

    private static List<Double> clean(FairEnvelope.At at) {
        return Arrays.stream(at.values())
                .mapToObj(v -> v < NOTHING_MM ? 0.0 : v)
                .toList();
    }

    private List<GrowingRows.Row> broken(double[] x) {
        double[] q = move(x);
        FairEnvelope.At up = heights.at(q);
        FairEnvelope.At down = depths.at(q);
        List<GrowingRows.Row> all = new ArrayList<>();
        mean(up, share, x, ADDED).ifPresent(all::add);
        mean(down, share, x, CUT).ifPresent(all::add);
        mean(up, ordered, x, FIRST).ifPresent(all::add);
        // Least depth and least height may not both be above nothing: what is needed must leave room for what is added.
        double[] free = Arrays.stream(up.values()).map(v -> -v).toArray();
        double[] need = lines.needs(q);
        int worst = 0;
        for (int i = 1; i < need.length; i++) {
            worst = need[i] - free[i] > need[worst] - free[worst] ? i : worst;
        }
        if (need[worst] > free[worst] + BROKEN_MM) {
            double[] a = up.slope(worst);
            for (int k = 0; k < a.length; k++) {
                a[k] += lines.slope(worst)[k];
            }
            all.add(TrimLines.row(a, OptionalInt.empty(), -up.level(worst) - lines.needLevel(worst), UNKNOWNS));
        }
        return all;
    }

    private Optional<GrowingRows.Row> mean(FairEnvelope.At at, double[] weight, double[] x, int unknown) {
        double[] line = at.sumAbove(weight);
        double mean = line[TrimLines.MOVE];
        for (int k = 0; k < TrimLines.MOVE; k++) {
            mean += line[k] * x[k];
        }
        return mean > x[unknown] + BROKEN_MEAN_MM
                ? Optional.of(TrimLines.row(line, OptionalInt.of(unknown), -line[TrimLines.MOVE], UNKNOWNS))
                : Optional.empty();
    }
}
