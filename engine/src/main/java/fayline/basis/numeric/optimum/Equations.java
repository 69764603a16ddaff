package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.List;

/** What is wanted of a point: rows a · x ≈ b with weights, usually more of them than unknowns. Immutable. */
public final class Equations {
    private final int unknowns;
    private final double[] a;
    private final double[] b;
    private final double[] weight;

    private Equations(Builder from) {
        unknowns = from.unknowns;
        b = new double[from.rows.size()];
        weight = new double[b.length];
        a = new double[b.length * unknowns];
        for (int i = 0; i < b.length; i++) {
            double[] row = from.rows.get(i);
            System.arraycopy(row, 0, a, i * unknowns, unknowns);
            b[i] = row[unknowns];
            weight[i] = row[unknowns + 1];
        }
    }

    /** Gathers rows. */
    public static final class Builder {
        private final int unknowns;
        private final List<double[]> rows = new ArrayList<>();

        private Builder(int unknowns) {
            this.unknowns = unknowns;
        }

        /**
         * Adds a · x ≈ b.
         *
         * @param coefficients a
         * @param wanted b
         * @param weight how much a deviation counts; positive
         * @throws IllegalArgumentException if the count is wrong or a value is no number
         */
        public Builder row(double[] coefficients, double wanted, double weight) {
            if (coefficients.length != unknowns) {
                throw new IllegalArgumentException(
                        "a row of " + coefficients.length + " coefficients for " + unknowns + " unknowns");
            }
            double[] row = new double[unknowns + 2];
            System.arraycopy(coefficients, 0, row, 0, unknowns);
            row[unknowns] = wanted;
            row[unknowns + 1] = weight;
            for (double v : row) {
                if (!Double.isFinite(v)) {
                    throw new IllegalArgumentException("row " + rows.size() + " holds " + v);
                }
            }
            if (!(weight > 0)) {
                throw new IllegalArgumentException("row " + rows.size() + " has weight " + weight);
            }
            rows.add(row);
            return this;
        }

        /** The equations as gathered. */
        public Equations build() {
            return new Equations(this);
        }
    }

    /** Starts. */
    public static Builder of(int unknowns) {
        return new Builder(unknowns);
    }

    /** How many unknowns. */
    public int unknowns() {
        return unknowns;
    }

    /** How many rows. */
    public int count() {
        return b.length;
    }

    /** b − a · x of a row, without its weight. */
    public double deviation(int row, List<Double> x) {
        double s = b[row];
        for (int j = 0; j < unknowns; j++) {
            s -= a[row * unknowns + j] * x.get(j);
        }
        return s;
    }

    /** The largest weighted deviation. */
    public double worst(List<Double> x) {
        double worst = 0;
        for (int i = 0; i < b.length; i++) {
            worst = Math.max(worst, weight[i] * Math.abs(deviation(i, x)));
        }
        return worst;
    }

    /** The sum of squares of weighted deviations. */
    public double sumSquares(List<Double> x) {
        double sum = 0;
        for (int i = 0; i < b.length; i++) {
            double v = weight[i] * deviation(i, x);
            sum += v * v;
        }
        return sum;
    }

    /** The same rows with all weights one. */
    public Equations unweighted() {
        Builder all = of(unknowns);
        for (int i = 0; i < b.length; i++) {
            all.row(coefficients(i), b[i], 1);
        }
        return all.build();
    }

    double[] coefficients(int row) {
        double[] c = new double[unknowns];
        System.arraycopy(a, row * unknowns, c, 0, unknowns);
        return c;
    }

    double wanted(int row) {
        return b[row];
    }

    double weight(int row) {
        return weight[row];
    }

    /**
     * The weighted rows brought to a triangle by Householder reflections [lawson1974]: as many rows as unknowns, each of
     * coefficients and right side.
     */
    double[][] triangle() {
        int rows = Math.max(b.length, unknowns);
        int n = unknowns + 1;
        double[][] m = new double[rows][n];
        for (int i = 0; i < b.length; i++) {
            for (int j = 0; j < unknowns; j++) {
                m[i][j] = weight[i] * a[i * unknowns + j];
            }
            m[i][unknowns] = weight[i] * b[i];
        }
        for (int k = 0; k < unknowns; k++) {
            reflect(m, k, n);
        }
        double[][] top = new double[unknowns][];
        System.arraycopy(m, 0, top, 0, unknowns);
        return top;
    }

    private static void reflect(double[][] m, int k, int n) {
        double square = 0;
        for (int i = k; i < m.length; i++) {
            square += m[i][k] * m[i][k];
        }
        double norm = Math.sqrt(square);
        if (norm == 0) {
            return;
        }
        double alpha = m[k][k] > 0 ? -norm : norm;
        double[] v = new double[m.length];
        for (int i = k; i < m.length; i++) {
            v[i] = m[i][k];
        }
        v[k] -= alpha;
        double half = square - alpha * m[k][k];
        for (int j = k; j < n; j++) {
            double s = 0;
            for (int i = k; i < m.length; i++) {
                s += v[i] * m[i][j];
            }
            s /= half;
            for (int i = k; i < m.length; i++) {
                m[i][j] -= s * v[i];
            }
        }
        for (int i = k + 1; i < m.length; i++) {
            m[i][k] = 0;
        }
    }
}
