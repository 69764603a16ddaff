package fayline.method.fitup.trim;

import fayline.basis.numeric.optimum.CornerSearch;
import fayline.basis.numeric.optimum.GrowingRows;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.motion.Box;
import fayline.method.fitup.motion.WantedLines;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Least area added, then least area cut with no more added. Adding is allowed everywhere, cutting where the question allows it.
 * For a given move the least fair heights, and the least fair depths, are each a {@link FairEnvelope}; no fair line both adds and
 * cuts more than these, for a cut asks nothing of a height where both fit. Of equal ways the one that adds on the first edges named,
 * then the shortest move. Unknowns: shifts, turns times Λ, mean height, mean depth, mean height weighed by the order of the edges; all
 * in mm.
 */
final class BuildUpStages {
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
    private final int moves;
    private final int addedAt;
    private final int cutAt;
    private final int firstAt;
    private final int unknowns;
    private final GrowingRows rows;

    private BuildUpStages(TrimLines lines, Set<String> edges) {
        this.lines = lines;
        moves = lines.unknowns();
        addedAt = moves;
        cutAt = addedAt + 1;
        firstAt = cutAt + 1;
        unknowns = firstAt + 1;
        rows = new GrowingRows(unknowns, this::broken);
        heights = lines.heights(edges);
        depths = lines.depths();
        lengths = lines.lengthsMm();
        double sum = Arrays.stream(lengths).sum();
        double whole = sum > 0 ? sum : 1;
        share = Arrays.stream(lengths).map(l -> l / whole).toArray();
        ordered = Arrays.stream(lines.orderedLengthsMm()).map(l -> l / whole).toArray();
    }

    /**
     * Solves a question.
     *
     * @param moving its gaps, and of a curved part its flushes, straight about no move
     * @param box the limits of the move, finite
     */
    static <M> Optional<TrimResult.BuildUp> solve(
            TrimQuestion question, WantedLines<?, M> moving, Box box, Function<M, SpaceMove> told) {
        return new BuildUpStages(
                        new TrimLines(question, moving, box),
                        new HashSet<>(question.rules().edges()))
                .solve(q -> told.apply(moving.move(q)));
    }

    private Optional<TrimResult.BuildUp> solve(Function<List<Double>, SpaceMove> told) {
        return least(addedAt, FAR_MM, FAR_MM).map(added -> {
            double area = area(clean(heights.at(move(added.point()))));
            CornerSearch.Corner cut = least(cutAt, added.value(), FAR_MM).orElse(added);
            double most = cut.point().get(cutAt);
            CornerSearch.Corner first = least(firstAt, added.value(), most).orElse(cut);
            return result(
                    told,
                    area,
                    lines.shortest(rows, added.value(), most, first.point().get(firstAt))
                            .orElse(first.point()));
        });
    }

    /** The least of one unknown with those before it no more than given values; those after it do not count. */
    private Optional<CornerSearch.Corner> least(int unknown, double addedMm, double cutMm) {
        double[] low = Arrays.copyOf(lines.limit(false), unknowns);
        double[] high = Arrays.copyOf(lines.limit(true), unknowns);
        double[] most = {addedMm + SAME_MM, cutMm + SAME_MM, FAR_MM};
        for (int k = addedAt; k < unknowns; k++) {
            high[k] = most[k - addedAt];
            low[k] = k > unknown ? high[k] : 0;
        }
        double[] cost = new double[unknowns];
        cost[unknown] = 1;
        return rows.least(cost, low, high);
    }

    private TrimResult.BuildUp result(Function<List<Double>, SpaceMove> told, double leastMm2, List<Double> best) {
        double[] q = move(best);
        List<Double> added = clean(heights.at(q));
        List<Double> cut = clean(depths.at(q));
        return new TrimResult.BuildUp(leastMm2, area(cut), added, cut, told.apply(best));
    }

    private double[] move(List<Double> x) {
        return move(x.stream().mapToDouble(v -> v).toArray());
    }

    private double[] move(double[] x) {
        return Arrays.copyOf(x, moves);
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
        List<GrowingRows.Row> all = lines.flushesBroken(q, unknowns);
        mean(up, share, x, addedAt).ifPresent(all::add);
        mean(down, share, x, cutAt).ifPresent(all::add);
        mean(up, ordered, x, firstAt).ifPresent(all::add);
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
            all.add(lines.row(a, OptionalInt.empty(), -up.level(worst) - lines.needLevel(worst), unknowns));
        }
        return all;
    }

    private Optional<GrowingRows.Row> mean(FairEnvelope.At at, double[] weight, double[] x, int unknown) {
        double[] line = at.sumAbove(weight);
        double mean = line[moves];
        for (int k = 0; k < moves; k++) {
            mean += line[k] * x[k];
        }
        return mean > x[unknown] + BROKEN_MEAN_MM
                ? Optional.of(lines.row(line, OptionalInt.of(unknown), -line[moves], unknowns))
                : Optional.empty();
    }
}
