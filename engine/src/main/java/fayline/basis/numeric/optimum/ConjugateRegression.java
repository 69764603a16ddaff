package fayline.basis.numeric.optimum;

import fayline.basis.numeric.DenseMatrix;
import java.util.Arrays;
import java.util.List;

/**
 * A linear model y = X b + e with normal scatter and a conjugate prior: given the variance s2 of the scatter, b is normal about
 * zero with covariance s2 * diag(1 / precision), and s2 itself is scaled inverse chi-square. The posterior has the same form
 * (Lindley and Smith 1972 [lindley-smith1972]; in this notation Gelman and others 2013 [gelman2013], chapter 14).
 *
 * @param mean posterior mean of b
 * @param shape posterior covariance of b divided by s2
 * @param variance posterior scale of s2
 * @param degreesOfFreedom of the t distribution that b and predictions follow
 */
public record ConjugateRegression(List<Double> mean, DenseMatrix shape, double variance, double degreesOfFreedom) {
    private static final double ROUNDING = 1e-13;

    /** Copies the list. */
    public ConjugateRegression {
        mean = List.copyOf(mean);
    }

    /**
     * Learns.
     *
     * @param rows rows of X, each as long as precision
     * @param y what was seen, one for each row
     * @param precision what is known beforehand of each of b, in units of 1 / s2: the larger, the closer to zero it is held;
     *     zero where nothing is known
     * @param variance what is expected of s2; positive
     * @param weight as how many observations that expectation counts; positive, or at most zero to count nothing and to take
     *     the known degrees of freedom off
     * @return the posterior
     * @throws IllegalArgumentException if the lengths differ or the precision and the rows together leave some of b open
     */
    public static ConjugateRegression of(
            List<double[]> rows, double[] y, double[] precision, double variance, double weight) {
        int p = precision.length;
        if (rows.size() != y.length) {
            throw new IllegalArgumentException(rows.size() + " rows and " + y.length + " values");
        }
        double[][] a = new double[p][p];
        double[] right = new double[p];
        double squares = 0;
        for (int j = 0; j < p; j++) {
            a[j][j] = precision[j];
        }
        for (int i = 0; i < y.length; i++) {
            double[] x = rows.get(i);
            if (x.length != p) {
                throw new IllegalArgumentException("row " + i + " has " + x.length + " numbers, not " + p);
            }
            for (int j = 0; j < p; j++) {
                right[j] += x[j] * y[i];
                for (int k = 0; k < p; k++) {
                    a[j][k] += x[j] * x[k];
                }
            }
            squares += y[i] * y[i];
        }
        DenseMatrix normal = DenseMatrix.of(a);
        DenseMatrix shape = p == 0 ? DenseMatrix.zero(0, 0) : inverse(normal);
        double[] mean = p == 0 ? new double[0] : shape.times(right);
        double explained = 0;
        for (int j = 0; j < p; j++) {
            explained += mean[j] * right[j];
        }
        double degrees = weight + y.length;
        double prior = weight > 0 ? weight * variance : 0;
        double scale = Math.max(0, prior + squares - explained) / degrees;
        return new ConjugateRegression(Arrays.stream(mean).boxed().toList(), shape, scale, degrees);
    }

    /** Of a symmetric positive matrix, by its eigenvalues once every diagonal element is one. */
    private static DenseMatrix inverse(DenseMatrix normal) {
        int p = normal.rows();
        double[] root = new double[p];
        for (int j = 0; j < p; j++) {
            root[j] = normal.get(j, j) > 0 ? 1 / Math.sqrt(normal.get(j, j)) : 0;
        }
        DenseMatrix scale = DenseMatrix.diagonal(root);
        DenseMatrix.Eigen eigen = scale.times(normal).times(scale).symmetricEigen();
        double[] inverted = eigen.values().col(0);
        for (int j = 0; j < p; j++) {
            if (!(inverted[j] > ROUNDING)) {
                throw new IllegalArgumentException("some coefficients are left open by rows and precision");
            }
            inverted[j] = 1 / inverted[j];
        }
        DenseMatrix v = scale.times(eigen.vectors());
        return v.times(DenseMatrix.diagonal(inverted)).times(v.transposed());
    }

    /**
     * Standard scale of a combination of the coefficients.
     *
     * @param x the combination
     */
    public double deviation(double[] x) {
        double sum = 0;
        for (int j = 0; j < x.length; j++) {
            for (int k = 0; k < x.length; k++) {
                sum += x[j] * x[k] * shape.get(j, k);
            }
        }
        return Math.sqrt(variance * Math.max(0, sum));
    }
}
