package fayline.basis.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.hipparchus.exception.MathIllegalStateException;
import org.hipparchus.optim.LocalizedOptimFormats;
import org.hipparchus.optim.MaxIter;
import org.hipparchus.optim.linear.LinearConstraintSet;
import org.hipparchus.optim.linear.LinearObjectiveFunction;
import org.hipparchus.optim.linear.NonNegativeConstraint;
import org.hipparchus.optim.linear.PivotSelectionRule;
import org.hipparchus.optim.linear.SimplexSolver;
import org.hipparchus.optim.nonlinear.scalar.GoalType;

/**
 * The second calculation of the tests, by a general solver: a linear program of moderate size: least or largest c · x where every unknown lies between its bounds and every row between
 * its limits. Unit-less: the caller's units go in and come out. Two-phase dense simplex on a problem whose rows and columns were
 * brought to like size by powers of two; an answer that does not hold its own rows is tried again under Bland's rule
 * [bland1977] and coarser tolerances, so ties do not make it run in circles. Memory grows with rows times (rows + unknowns): up
 * to some 500 rows. Immutable; start at {@link #of}.
 */
public final class LinearProgram {
    private static final int MOST_PIVOTS = 50_000;
    private static final double[] TOLERANCES = {1e-9, 1e-8, 1e-10, 1e-7};
    private static final double CUT_OFF = 1e-12;
    private static final int ULPS = 10;
    private static final double HOLDS = 1e-7;

    final double[] low;
    final double[] high;
    final double[][] rows;
    final double[] rowLow;
    final double[] rowHigh;

    private LinearProgram(Builder b) {
        low = b.low.clone();
        high = b.high.clone();
        rows = b.rows.stream().map(double[]::clone).toArray(double[][]::new);
        rowLow = b.limits.stream().mapToDouble(l -> l[0]).toArray();
        rowHigh = b.limits.stream().mapToDouble(l -> l[1]).toArray();
    }

    /** How a program came out. */
    public enum Status {
        /** The best point is known. */
        OPTIMAL,
        /** No point holds all bounds and rows. */
        INFEASIBLE,
        /** The objective has no end. */
        UNBOUNDED
    }

    /**
     * The answer.
     *
     * @param status how it came out
     * @param value the objective at the best point; not a number unless OPTIMAL
     * @param point the best point; empty unless OPTIMAL
     */
    public record Outcome(Status status, double value, List<Double> point) {
        /** Keeps its own copy. */
        public Outcome {
            point = List.copyOf(point);
        }

        /** Whether there is a best point. */
        public boolean optimal() {
            return status == Status.OPTIMAL;
        }

        /**
         * One unknown at the best point.
         *
         * @throws IllegalArgumentException unless OPTIMAL
         */
        public double at(int unknown) {
            if (!optimal()) {
                throw new IllegalArgumentException("no best point: " + status);
            }
            return point.get(unknown);
        }
    }

    /** Gathers unknowns and rows. Every unknown is free until bounded. */
    public static final class Builder {
        private final double[] low;
        private final double[] high;
        private final List<double[]> rows = new ArrayList<>();
        private final List<double[]> limits = new ArrayList<>();

        private Builder(int unknowns) {
            low = new double[unknowns];
            high = new double[unknowns];
            Arrays.fill(low, Double.NEGATIVE_INFINITY);
            Arrays.fill(high, Double.POSITIVE_INFINITY);
        }

        /**
         * Bounds an unknown; either end may be infinite.
         *
         * @throws IllegalArgumentException if an end is no number
         */
        public Builder bound(int unknown, double from, double to) {
            requireLimits("unknown " + unknown, from, to);
            low[unknown] = from;
            high[unknown] = to;
            return this;
        }

        /**
         * Adds a row from ≤ a · x ≤ to; either end may be infinite.
         *
         * @param coefficients a, one per unknown
         * @throws IllegalArgumentException if the count is wrong or a value is no number
         */
        public Builder row(double[] coefficients, double from, double to) {
            if (coefficients.length != low.length) {
                throw new IllegalArgumentException(
                        "a row of " + coefficients.length + " coefficients for " + low.length + " unknowns");
            }
            for (double c : coefficients) {
                if (!Double.isFinite(c)) {
                    throw new IllegalArgumentException("row " + rows.size() + " has a coefficient " + c);
                }
            }
            requireLimits("row " + rows.size(), from, to);
            rows.add(coefficients.clone());
            limits.add(new double[] {from, to});
            return this;
        }

        /** The program as gathered so far; the builder may go on and be used again. */
        public LinearProgram build() {
            return new LinearProgram(this);
        }

        private static void requireLimits(String what, double from, double to) {
            if (Double.isNaN(from)
                    || Double.isNaN(to)
                    || from == Double.POSITIVE_INFINITY
                    || to == Double.NEGATIVE_INFINITY) {
                throw new IllegalArgumentException(what + " is limited by " + from + " and " + to);
            }
        }
    }

    /**
     * Starts a program.
     *
     * @param unknowns how many; at least one
     * @throws IllegalArgumentException if there is none
     */
    public static Builder of(int unknowns) {
        if (unknowns < 1) {
            throw new IllegalArgumentException("a program of " + unknowns + " unknowns");
        }
        return new Builder(unknowns);
    }

    /**
     * The point of least c · x.
     *
     * @param cost c, one per unknown
     * @throws IllegalArgumentException if the count is wrong or a value is no number
     */
    public Outcome minimise(double... cost) {
        if (cost.length != low.length) {
            throw new IllegalArgumentException(cost.length + " costs for " + low.length + " unknowns");
        }
        for (double c : cost) {
            if (!Double.isFinite(c)) {
                throw new IllegalArgumentException("a cost of " + c);
            }
        }
        if (contradictsItself()) {
            return new Outcome(Status.INFEASIBLE, Double.NaN, List.of());
        }
        return solve(cost.clone());
    }

    /** The point of largest c · x; otherwise as {@link #minimise}. */
    public Outcome maximise(double... gain) {
        double[] cost = gain.clone();
        for (int j = 0; j < cost.length; j++) {
            cost[j] = -cost[j];
        }
        Outcome o = minimise(cost);
        return new Outcome(o.status(), 0 - o.value(), o.point());
    }

    private boolean contradictsItself() {
        for (int j = 0; j < low.length; j++) {
            if (low[j] > high[j]) {
                return true;
            }
        }
        for (int i = 0; i < rows.length; i++) {
            if (rowLow[i] > rowHigh[i]) {
                return true;
            }
        }
        return false;
    }

    private Outcome solve(double[] cost) {
        Status last = Status.INFEASIBLE;
        StandardForm form = new StandardForm(this, cost);
        for (PivotSelectionRule rule : PivotSelectionRule.values()) {
            for (double tolerance : TOLERANCES) {
                try {
                    double[] x = form.back(new SimplexSolver(tolerance, ULPS, CUT_OFF)
                            .optimize(
                                    new MaxIter(MOST_PIVOTS),
                                    new LinearObjectiveFunction(form.cost(), 0),
                                    new LinearConstraintSet(form.constraints()),
                                    GoalType.MINIMIZE,
                                    new NonNegativeConstraint(true),
                                    rule)
                            .getPoint());
                    if (holds(x)) {
                        return new Outcome(
                                Status.OPTIMAL,
                                dot(cost, x),
                                Arrays.stream(x).boxed().toList());
                    }
                } catch (MathIllegalStateException e) {
                    last = e.getSpecifier() == LocalizedOptimFormats.UNBOUNDED_SOLUTION
                            ? Status.UNBOUNDED
                            : Status.INFEASIBLE;
                }
            }
        }
        return new Outcome(last, Double.NaN, List.of());
    }

    private boolean holds(double[] x) {
        for (int j = 0; j < x.length; j++) {
            double slack = HOLDS * Math.max(1, Math.abs(x[j]));
            if (x[j] < low[j] - slack || x[j] > high[j] + slack) {
                return false;
            }
            x[j] = Math.min(high[j], Math.max(low[j], x[j]));
        }
        for (int i = 0; i < rows.length; i++) {
            double size = 1;
            for (int j = 0; j < x.length; j++) {
                size = Math.max(size, Math.abs(rows[i][j] * x[j]));
            }
            double v = dot(rows[i], x);
            if (!(v >= rowLow[i] - HOLDS * size && v <= rowHigh[i] + HOLDS * size)) {
                return false;
            }
        }
        return true;
    }

    static double dot(double[] a, double[] b) {
        double s = 0;
        for (int j = 0; j < a.length; j++) {
            s += a[j] * b[j];
        }
        return s;
    }
}
