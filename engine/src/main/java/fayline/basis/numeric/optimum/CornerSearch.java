package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The corner of least c · x over {@link LinearRows} with every unknown bounded. Starts at the corner of the bounds that is best
 * for the cost, then exchanges one row at a time: the row most broken comes in, the row whose price would first turn negative
 * goes out (the dual simplex method [lemke1954]). Each corner is solved afresh from its rows, so errors do not grow. Where the
 * value stands still the first broken row is taken, and among equals the first, which cannot run in circles [bland1977].
 */
public final class CornerSearch {
    private static final double BROKEN = 1e-12;
    private static final double PIVOT = 1e-11;
    private static final double PRICED = 1e-9;
    private static final int PATIENCE = 12;
    private static final int MOST_EXCHANGES = 20_000;

    private final LinearRows rows;
    private final double[] cost;
    private final int n;
    private final int[] basis;
    private final boolean[] atHigh;
    private double[][] lu = {};
    private int[] order = {};
    private double[] x = {};

    private CornerSearch(double[] cost, LinearRows rows) {
        this.rows = rows;
        this.cost = cost.clone();
        n = rows.unknowns();
        basis = new int[n];
        atHigh = new boolean[n];
        for (int j = 0; j < n; j++) {
            basis[j] = j;
            atHigh[j] = cost[j] < 0;
        }
    }

    /**
     * A row that holds the corner.
     *
     * @param row its number
     * @param atHigh whether at its upper limit
     * @param price how much the value falls per unit this limit is eased; positive
     */
    public record Hold(int row, boolean atHigh, double price) {}

    /**
     * The best corner.
     *
     * @param value least c · x
     * @param point x
     * @param holds the rows that hold it, with positive prices, in order of their number
     */
    public record Corner(double value, List<Double> point, List<Hold> holds) {
        /** Keeps its own copies. */
        public Corner {
            point = List.copyOf(point);
            holds = List.copyOf(holds);
        }
    }

    /**
     * Finds the corner.
     *
     * @param cost c, one per unknown
     * @param rows what must hold; every unknown with finite bounds
     * @return the corner, or empty where no point holds all rows
     * @throws IllegalArgumentException if a bound is infinite or the count of costs is wrong
     */
    public static Optional<Corner> least(double[] cost, LinearRows rows) {
        if (cost.length != rows.unknowns()) {
            throw new IllegalArgumentException(cost.length + " costs for " + rows.unknowns() + " unknowns");
        }
        for (int j = 0; j < cost.length; j++) {
            if (!Double.isFinite(rows.low(j)) || !Double.isFinite(rows.high(j))) {
                throw new IllegalArgumentException(
                        "unknown " + j + " is not bounded: " + rows.low(j) + " to " + rows.high(j));
            }
        }
        return new CornerSearch(cost, rows).search();
    }

    private Optional<Corner> search() {
        double best = Double.NEGATIVE_INFINITY;
        int still = 0;
        for (int k = 0; k < MOST_EXCHANGES; k++) {
            solveCorner();
            double value = Small.dot(cost, x);
            still = value > best + 1e-13 * Math.max(1, Math.abs(best)) ? 0 : still + 1;
            best = Math.max(best, value);
            Entering e = broken(still > PATIENCE);
            if (e.row < 0) {
                return Optional.of(corner());
            }
            if (!exchange(e)) {
                return Optional.empty();
            }
        }
        throw new ArithmeticException("no corner after " + MOST_EXCHANGES + " exchanges");
    }

    private record Entering(int row, boolean atHigh) {}

    private void solveCorner() {
        double[][] m = new double[n][];
        double[] b = new double[n];
        for (int j = 0; j < n; j++) {
            m[j] = rows.coefficients(basis[j]);
            b[j] = atHigh[j] ? rows.high(basis[j]) : rows.low(basis[j]);
        }
        order = Small.factor(m);
        lu = m;
        if (order.length == 0) {
            throw new ArithmeticException("rows " + Arrays.toString(basis) + " do not make a corner");
        }
        x = Small.solve(lu, order, b);
    }

    private Entering broken(boolean first) {
        double worst = 0;
        int row = -1;
        boolean high = false;
        for (int i = 0; i < rows.count(); i++) {
            double v = rows.value(i, x);
            double under = rows.low(i) - v;
            double over = v - rows.high(i);
            double most = Math.max(under, over);
            if (most > worst && most > BROKEN * Math.max(1, rows.size(i, x)) && !inBasis(i, over > under)) {
                worst = most;
                row = i;
                high = over > under;
                if (first) {
                    break;
                }
            }
        }
        return new Entering(row, high);
    }

    private boolean inBasis(int row, boolean high) {
        for (int j = 0; j < n; j++) {
            if (basis[j] == row && atHigh[j] == high) {
                return true;
            }
        }
        return false;
    }

    private double sign(int j) {
        return atHigh[j] ? -1 : 1;
    }

    private boolean exchange(Entering e) {
        double[] price = Small.solveTransposed(lu, order, cost);
        double[] share = Small.solveTransposed(lu, order, rows.coefficients(e.row));
        double s = e.atHigh ? -1 : 1;
        double largest = 0;
        for (double v : share) {
            largest = Math.max(largest, Math.abs(v));
        }
        int out = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int j = 0; j < n; j++) {
            double m = s * share[j] * sign(j);
            if (m > PIVOT * largest) {
                double ratio = Math.max(0, price[j] * sign(j)) / m;
                if (ratio < least || (ratio == least && (out < 0 || basis[j] < basis[out]))) {
                    least = ratio;
                    out = j;
                }
            }
        }
        if (out < 0) {
            return false;
        }
        basis[out] = e.row;
        atHigh[out] = e.atHigh;
        return true;
    }

    private Corner corner() {
        double[] price = Small.solveTransposed(lu, order, cost);
        double most = Arrays.stream(price).map(Math::abs).max().orElse(0);
        List<Hold> holds = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            double p = price[j] * sign(j);
            if (p > PRICED * most) {
                holds.add(new Hold(basis[j], atHigh[j], p));
            }
        }
        holds.sort((p, q) -> Integer.compare(p.row(), q.row()));
        return new Corner(Small.dot(cost, x), Arrays.stream(x).boxed().toList(), holds);
    }
}
