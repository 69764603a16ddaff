package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The point whose largest weighted deviation is smallest, and what is special about it. The largest deviation is unique, the
 * point often is not; then the one of least sum of squares among the best, and if that leaves a direction free, the one of least
 * norm.
 */
public final class MinimaxFit {
    private static final double EASE = 1e-9;
    private static final double MOST_EASE = 1e-6;

    private final Equations equations;
    private final LinearRows hard;

    private MinimaxFit(Equations equations, LinearRows hard) {
        this.equations = equations;
        this.hard = hard;
    }

    /**
     * A row that decides the smallest worst deviation.
     *
     * @param row its number, among the equations or among the limits
     * @param atHigh of an equation: whether a · x lies above what is wanted; of a limit: whether it is the upper one
     * @param price how much the worst deviation falls per unit the row is eased
     */
    public record Decider(int row, boolean atHigh, double price) {}

    /**
     * The answer.
     *
     * @param worst the smallest possible largest weighted deviation
     * @param point where it is reached
     * @param extents over how far each unknown may still range without losing it
     * @param equations the equations that decide it
     * @param limits the limits that decide it
     */
    public record Fit(
            double worst, List<Double> point, List<Double> extents, List<Decider> equations, List<Decider> limits) {
        /** Keeps its own copies. */
        public Fit {
            point = List.copyOf(point);
            extents = List.copyOf(extents);
            equations = List.copyOf(equations);
            limits = List.copyOf(limits);
        }
    }

    /**
     * Fits.
     *
     * @param equations what is wanted
     * @param hard what must hold
     * @return the fit, or empty where no point holds the hard rows
     */
    public static Optional<Fit> fit(Equations equations, LinearRows hard) {
        boolean all = true;
        for (int j = 0; j < hard.unknowns(); j++) {
            all &= Double.isFinite(hard.low(j)) && Double.isFinite(hard.high(j));
        }
        return new MinimaxFit(equations, all ? hard : bounded(equations, hard)).search();
    }

    private Optional<Fit> search() {
        Optional<CornerSearch.Corner> corner = CornerSearch.least(lastUnknownOnly(), lifted());
        return corner.map(this::finished);
    }

    private Fit finished(CornerSearch.Corner corner) {
        int n = equations.unknowns();
        List<Double> vertex = corner.point().subList(0, n);
        double worst = Math.max(0, corner.value());
        List<Decider> deciding = new ArrayList<>();
        List<Decider> limits = new ArrayList<>();
        for (CornerSearch.Hold h : corner.holds()) {
            int i = h.row() - (n + 1);
            if (h.row() < n) {
                limits.add(new Decider(h.row(), h.atHigh(), h.price()));
            } else if (i >= 0 && i < 2 * equations.count()) {
                deciding.add(new Decider(i / 2, i % 2 == 1, h.price()));
            } else if (i >= 0) {
                limits.add(new Decider(i - 2 * equations.count() + n, h.atHigh(), h.price()));
            }
        }
        LinearRows face = face(worst + EASE);
        return new Fit(worst, balanced(vertex, worst), extents(face), deciding, limits);
    }

    private List<Double> balanced(List<Double> vertex, double worst) {
        for (double ease = EASE; ease <= MOST_EASE; ease *= 10) {
            Optional<List<Double>> point = LeastSquares.within(equations, face(worst + ease));
            if (point.isPresent() && equations.worst(point.get()) <= worst + 2 * ease) {
                return point.get();
            }
        }
        return vertex;
    }

    private static List<Double> extents(LinearRows face) {
        int n = face.unknowns();
        List<Double> all = new ArrayList<>();
        for (int j = 0; j < n; j++) {
            double[] cost = new double[n];
            cost[j] = 1;
            Optional<CornerSearch.Corner> low = CornerSearch.least(cost, face);
            cost[j] = -1;
            Optional<CornerSearch.Corner> high = CornerSearch.least(cost, face);
            boolean both = low.isPresent() && high.isPresent();
            all.add(
                    both
                            ? Math.max(
                                    0,
                                    -high.orElseThrow().value()
                                            - low.orElseThrow().value())
                            : 0.0);
        }
        return all;
    }

    private LinearRows face(double worst) {
        LinearRows.Builder all = LinearRows.within(limits(hard, false), limits(hard, true));
        for (int i = 0; i < equations.count(); i++) {
            double half = worst / equations.weight(i);
            all.row(equations.coefficients(i), equations.wanted(i) - half, equations.wanted(i) + half);
        }
        return all.rowsOf(hard).build();
    }

    private double[] lastUnknownOnly() {
        double[] cost = new double[equations.unknowns() + 1];
        cost[cost.length - 1] = 1;
        return cost;
    }

    /** The program with the worst deviation as a further unknown. */
    private LinearRows lifted() {
        int n = equations.unknowns();
        double[] low = Arrays.copyOf(limits(hard, false), n + 1);
        double[] high = Arrays.copyOf(limits(hard, true), n + 1);
        double most = 1;
        double[] far = new double[n];
        for (int j = 0; j < n; j++) {
            far[j] = Math.max(Math.abs(low[j]), Math.abs(high[j]));
        }
        for (int i = 0; i < equations.count(); i++) {
            double reach = Math.abs(equations.wanted(i));
            double[] a = equations.coefficients(i);
            for (int j = 0; j < n; j++) {
                reach += Math.abs(a[j]) * far[j];
            }
            most = Math.max(most, 2 * equations.weight(i) * reach);
        }
        high[n] = most;
        LinearRows.Builder all = LinearRows.within(low, high);
        for (int i = 0; i < equations.count(); i++) {
            double w = equations.weight(i);
            double[] a = weighted(equations.coefficients(i), w, 1);
            all.row(a, w * equations.wanted(i), Double.POSITIVE_INFINITY);
            double[] b = weighted(equations.coefficients(i), w, -1);
            all.row(b, Double.NEGATIVE_INFINITY, w * equations.wanted(i));
        }
        for (int i = n; i < hard.count(); i++) {
            all.row(weighted(hard.coefficients(i), 1, 0), hard.low(i), hard.high(i));
        }
        return all.build();
    }

    private static double[] weighted(double[] a, double weight, double last) {
        double[] all = Arrays.copyOf(a, a.length + 1);
        for (int j = 0; j < a.length; j++) {
            all[j] *= weight;
        }
        all[a.length] = last;
        return all;
    }

    private static double[] limits(LinearRows rows, boolean high) {
        double[] all = new double[rows.unknowns()];
        for (int j = 0; j < all.length; j++) {
            all[j] = high ? rows.high(j) : rows.low(j);
        }
        return all;
    }

    /**
     * Bounds for what is not bounded: the worst deviation at some point that holds the hard rows is a ceiling, and no better
     * point lies farther from that point than twice the root of the number of rows times the ceiling over the smallest
     * singular value.
     */
    private static LinearRows bounded(Equations equations, LinearRows hard) {
        int n = equations.unknowns();
        double[] low = limits(hard, false);
        double[] high = limits(hard, true);
        LeastSquares.Fit fit = LeastSquares.fit(equations);
        List<Double> start = LeastSquares.within(equations, hard).orElse(fit.point());
        double smallest = fit.rank() == 0 ? 1 : fit.singularValues().get(fit.rank() - 1);
        double reach = 1 + 4 * Math.sqrt(equations.count()) * equations.worst(start) / smallest;
        for (int j = 0; j < n; j++) {
            low[j] = Double.isInfinite(low[j]) ? Math.min(start.get(j), high[j]) - reach : low[j];
            high[j] = Double.isInfinite(high[j]) ? Math.max(start.get(j), low[j]) + reach : high[j];
        }
        return LinearRows.within(low, high).rowsOf(hard).build();
    }
}
