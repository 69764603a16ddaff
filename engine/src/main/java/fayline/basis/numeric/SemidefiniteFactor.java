package fayline.basis.numeric;

/**
 * Splits a covariance into independent parts: a matrix F with F · Fᵀ = the covariance, from its eigenvectors, so that
 * covariances with less than full rank (errors that are common to several quantities) are as good as any.
 */
public final class SemidefiniteFactor {
    /** Eigenvalues at or below this share of the largest are rounding. */
    private static final double ROUNDING = 1e-12;

    /** Below minus this share of the largest the matrix is no covariance. */
    private static final double NEGATIVE = 1e-9;

    private SemidefiniteFactor() {}

    /**
     * Factors a covariance.
     *
     * @param covariance symmetric; no negative eigenvalues
     * @return F, one column for each independent part
     * @throws IllegalArgumentException if it is not symmetric or has a negative eigenvalue
     */
    public static DenseMatrix of(DenseMatrix covariance) {
        int n = covariance.rows();
        double size = 0;
        for (int i = 0; i < n; i++) {
            size = Math.max(size, Math.abs(covariance.get(i, i)));
        }
        requireSymmetric(covariance, size);
        DenseMatrix.Eigen eigen = covariance.symmetricEigen();
        double least = n == 0 ? 0 : eigen.values().get(0, 0);
        if (least < -NEGATIVE * size) {
            throw new IllegalArgumentException("no covariance: it has the negative eigenvalue " + least);
        }
        int first = 0;
        while (first < n && eigen.values().get(first, 0) <= ROUNDING * size) {
            first++;
        }
        double[][] f = new double[n][n - first];
        for (int k = first; k < n; k++) {
            double root = Math.sqrt(eigen.values().get(k, 0));
            double sign = sign(eigen.vectors().col(k));
            for (int i = 0; i < n; i++) {
                f[i][k - first] = sign * root * eigen.vectors().get(i, k);
            }
        }
        return first == n ? DenseMatrix.zero(n, 0) : DenseMatrix.of(f);
    }

    /** Makes the largest component positive, so that the factor does not hang on the library's choice. */
    private static double sign(double[] v) {
        int largest = 0;
        for (int i = 1; i < v.length; i++) {
            if (Math.abs(v[i]) > Math.abs(v[largest]) * (1 + ROUNDING)) {
                largest = i;
            }
        }
        return v[largest] < 0 ? -1 : 1;
    }

    private static void requireSymmetric(DenseMatrix m, double size) {
        if (m.rows() != m.cols()) {
            throw new IllegalArgumentException("a covariance is square, not " + m.rows() + " by " + m.cols());
        }
        for (int i = 0; i < m.rows(); i++) {
            for (int j = 0; j <= i; j++) {
                if (!(Math.abs(m.get(i, j) - m.get(j, i)) <= NEGATIVE * size)) {
                    throw new IllegalArgumentException("no covariance: elements " + (i + 1) + ", " + (j + 1) + " are "
                            + m.get(i, j) + " and " + m.get(j, i));
                }
            }
        }
    }
}
