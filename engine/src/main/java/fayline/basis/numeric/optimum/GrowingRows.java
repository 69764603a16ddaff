package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Best points under rows that are too many to write down, or that are the tangents of convex functions: a row is taken in only
 * once a point breaks it, and then kept for every later question (cutting planes [kelley1960]). Where the functions are made of
 * finitely many straight pieces this ends, for no piece is taken in twice. The rows so far are the only state; the answer to a
 * question does not otherwise hang on what was asked before.
 */
public final class GrowingRows {
    private static final int MOST_ROUNDS = 20_000;

    private final int unknowns;
    private final Watch watch;
    private final List<Row> rows = new ArrayList<>();

    /**
     * Starts without rows.
     *
     * @param unknowns how many
     * @param watch tells which rows a point breaks
     */
    public GrowingRows(int unknowns, Watch watch) {
        this.unknowns = unknowns;
        this.watch = watch;
    }

    /** Tells which rows a point breaks. */
    @FunctionalInterface
    public interface Watch {
        /** Some of the rows that a point breaks, the worst among them; none where it holds all. */
        List<Row> broken(double[] point);
    }

    /** A row a · x ≤ most. */
    public static final class Row {
        private final double[] coefficients;
        private final double most;

        /** A row of these coefficients, of which it keeps a copy. */
        public Row(double[] coefficients, double most) {
            this.coefficients = coefficients.clone();
            this.most = most;
        }

        private boolean same(Row other) {
            return most == other.most && Arrays.equals(coefficients, other.coefficients);
        }
    }

    /**
     * The point of least c · x.
     *
     * @param cost c, one per unknown
     * @param low finite lower bounds
     * @param high finite upper bounds
     * @return empty where no point holds bounds and rows
     */
    public Optional<CornerSearch.Corner> least(double[] cost, double[] low, double[] high) {
        for (int k = 0; k < MOST_ROUNDS; k++) {
            LinearRows.Builder all = LinearRows.within(low, high);
            rows.forEach(r -> all.row(r.coefficients, Double.NEGATIVE_INFINITY, r.most));
            Optional<CornerSearch.Corner> corner = CornerSearch.least(cost, all.build());
            if (corner.isEmpty()
                    || !takeIn(LeastSquares.array(corner.orElseThrow().point()))) {
                return corner;
            }
        }
        throw new ArithmeticException("no corner after " + MOST_ROUNDS + " rounds");
    }

    /**
     * The point nearest to a wanted one. An unknown whose bounds are equal is held there and does not count.
     *
     * @param wanted the point wanted
     * @param low lower bounds; may be infinite
     * @param high upper bounds
     * @return empty where no point holds bounds and rows
     */
    public Optional<List<Double>> nearest(double[] wanted, double[] low, double[] high) {
        for (int k = 0; k < MOST_ROUNDS; k++) {
            Optional<double[]> point = nearestSoFar(wanted, low, high);
            if (point.isEmpty() || !takeIn(point.orElseThrow())) {
                return point.map(LeastSquares::list);
            }
        }
        throw new ArithmeticException("no nearest point after " + MOST_ROUNDS + " rounds");
    }

    private Optional<double[]> nearestSoFar(double[] wanted, double[] low, double[] high) {
        int[] free = IntStream.range(0, unknowns).filter(j -> low[j] < high[j]).toArray();
        LinearRows.Builder all = LinearRows.within(pick(low, free), pick(high, free));
        for (Row r : rows) {
            double held = 0;
            for (int j = 0; j < unknowns; j++) {
                held += low[j] < high[j] ? 0 : r.coefficients[j] * low[j];
            }
            double[] a = pick(r.coefficients, free);
            if (Small.norm(a) > 0) {
                all.row(a, Double.NEGATIVE_INFINITY, r.most - held);
            } else if (held > r.most) {
                return Optional.empty();
            }
        }
        return Nearest.point(pick(wanted, free), all.build()).map(found -> {
            double[] x = low.clone();
            for (int j = 0; j < free.length; j++) {
                x[free[j]] = found[j];
            }
            return x;
        });
    }

    private static double[] pick(double[] all, int[] which) {
        return Arrays.stream(which).mapToDouble(j -> all[j]).toArray();
    }

    /** Takes in what a point breaks; false where that is nothing new, so that the point stands. */
    private boolean takeIn(double[] point) {
        boolean more = false;
        for (Row r : watch.broken(point)) {
            if (rows.stream().noneMatch(r::same)) {
                rows.add(r);
                more = true;
            }
        }
        return more;
    }
}
