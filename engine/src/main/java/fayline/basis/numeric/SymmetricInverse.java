package fayline.basis.numeric;

/**
 * Inverts small positive definite matrices held row by row in plain arrays, for loops in which an object for each matrix would
 * cost more than the sums. Cholesky with rows and columns scaled to a diagonal of ones, so that units that lie far apart (N/m
 * beside N m) cost no digits [golub-vanloan1996], 4.2. Unit-less: the caller's units go in and come out.
 */
public final class SymmetricInverse {
    private SymmetricInverse() {}

    /**
     * Inverts.
     *
     * @param m the matrix, row by row; only its upper triangle is read; not changed
     * @param n how many rows
     * @param out where the inverse goes, row by row, both triangles
     * @return whether the matrix is positive definite to working precision; where not, {@code out} is of no use
     */
    public static boolean of(double[] m, int n, double[] out) {
        double[] scale = new double[n];
        for (int i = 0; i < n; i++) {
            double d = m[i * n + i];
            if (!(d > 0)) {
                return false;
            }
            scale[i] = 1 / Math.sqrt(d);
        }
        double[] low = new double[n * n];
        if (!factor(m, n, scale, low)) {
            return false;
        }
        double[] inv = lowerInverse(low, n);
        for (int i = 0; i < n; i++) {
            for (int j = i; j < n; j++) {
                double s = 0;
                for (int k = j; k < n; k++) {
                    s += inv[k * n + i] * inv[k * n + j];
                }
                out[i * n + j] = s * scale[i] * scale[j];
                out[j * n + i] = out[i * n + j];
            }
        }
        return true;
    }

    private static boolean factor(double[] m, int n, double[] scale, double[] low) {
        for (int j = 0; j < n; j++) {
            for (int i = j; i < n; i++) {
                double s = m[j * n + i] * scale[i] * scale[j];
                for (int k = 0; k < j; k++) {
                    s -= low[i * n + k] * low[j * n + k];
                }
                if (i == j) {
                    // The diagonal begins at one: what is left of it is what the rows before do not tell.
                    if (!(s > n * Math.ulp(1.0))) {
                        return false;
                    }
                    low[j * n + j] = Math.sqrt(s);
                } else {
                    low[i * n + j] = s / low[j * n + j];
                }
            }
        }
        return true;
    }

    private static double[] lowerInverse(double[] low, int n) {
        double[] inv = new double[n * n];
        for (int j = 0; j < n; j++) {
            inv[j * n + j] = 1 / low[j * n + j];
            for (int i = j + 1; i < n; i++) {
                double s = 0;
                for (int k = j; k < i; k++) {
                    s -= low[i * n + k] * inv[k * n + j];
                }
                inv[i * n + j] = s / low[i * n + i];
            }
        }
        return inv;
    }
}
