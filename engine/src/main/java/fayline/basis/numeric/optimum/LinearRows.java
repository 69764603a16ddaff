package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a point must hold: every unknown within its bounds, every further row low ≤ a · x ≤ high. The bounds are the first rows,
 * one per unknown, so a row number says both. Immutable.
 */
public final class LinearRows {
    private final int unknowns;
    private final double[] a;
    private final double[] low;
    private final double[] high;

    private LinearRows(Builder b) {
        unknowns = b.unknowns;
        low = new double[b.limits.size()];
        high = new double[low.length];
        a = new double[low.length * unknowns];
        for (int i = 0; i < low.length; i++) {
            low[i] = b.limits.get(i)[0];
            high[i] = b.limits.get(i)[1];
            System.arraycopy(b.rows.get(i), 0, a, i * unknowns, unknowns);
        }
    }

    /** Gathers rows. */
    public static final class Builder {
        private final int unknowns;
        private final List<double[]> rows = new ArrayList<>();
        private final List<double[]> limits = new ArrayList<>();

        private Builder(int unknowns) {
            this.unknowns = unknowns;
        }

        /**
         * Adds low ≤ a · x ≤ high; either end may be infinite. Rows with low above high are taken: nothing holds them.
         *
         * @throws IllegalArgumentException if the count is wrong or a value is no number
         */
        public Builder row(double[] coefficients, double from, double to) {
            if (coefficients.length != unknowns) {
                throw new IllegalArgumentException(
                        "a row of " + coefficients.length + " coefficients for " + unknowns + " unknowns");
            }
            for (double c : coefficients) {
                if (!Double.isFinite(c)) {
                    throw new IllegalArgumentException("row " + rows.size() + " has a coefficient " + c);
                }
            }
            if (Double.isNaN(from) || Double.isNaN(to)) {
                throw new IllegalArgumentException("row " + rows.size() + " is limited by " + from + " and " + to);
            }
            rows.add(coefficients.clone());
            limits.add(new double[] {from, to});
            return this;
        }

        /** Adds all rows of another set beyond its bounds. */
        public Builder rowsOf(LinearRows other) {
            for (int i = other.unknowns; i < other.count(); i++) {
                row(other.coefficients(i), other.low(i), other.high(i));
            }
            return this;
        }

        /** The rows as gathered. */
        public LinearRows build() {
            return new LinearRows(this);
        }
    }

    /**
     * Starts with bounds.
     *
     * @param low least value of each unknown; may be infinite
     * @param high most
     */
    public static Builder within(double[] low, double[] high) {
        Builder b = new Builder(low.length);
        for (int j = 0; j < low.length; j++) {
            double[] unit = new double[low.length];
            unit[j] = 1;
            b.row(unit, low[j], high[j]);
        }
        return b;
    }

    /** Starts with bounds that bind nothing. */
    public static Builder free(int unknowns) {
        double[] low = new double[unknowns];
        double[] high = new double[unknowns];
        Arrays.fill(low, Double.NEGATIVE_INFINITY);
        Arrays.fill(high, Double.POSITIVE_INFINITY);
        return within(low, high);
    }

    /** How many unknowns. */
    public int unknowns() {
        return unknowns;
    }

    /** How many rows, bounds among them. */
    public int count() {
        return low.length;
    }

    /** The lower limit of a row. */
    public double low(int row) {
        return low[row];
    }

    /** The upper limit of a row. */
    public double high(int row) {
        return high[row];
    }

    /** A copy of a row's coefficients. */
    public double[] coefficients(int row) {
        double[] c = new double[unknowns];
        System.arraycopy(a, row * unknowns, c, 0, unknowns);
        return c;
    }

    /** a · x of a row. */
    double value(int row, double[] x) {
        double s = 0;
        for (int j = 0, k = row * unknowns; j < unknowns; j++, k++) {
            s += a[k] * x[j];
        }
        return s;
    }

    /** How much rounding a · x may carry, as a sum of sizes. */
    double size(int row, double[] x) {
        double s = 0;
        for (int j = 0, k = row * unknowns; j < unknowns; j++, k++) {
            s += Math.abs(a[k] * x[j]);
        }
        return s;
    }

    /** Whether a point holds every row within a tolerance. */
    boolean holdAt(double[] x, double tolerance) {
        for (int i = 0; i < low.length; i++) {
            double v = value(i, x);
            if (v < low[i] - tolerance || v > high[i] + tolerance) {
                return false;
            }
        }
        return true;
    }
}
