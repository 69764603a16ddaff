package fayline.basis.numeric.optimum;

/** Arithmetic on a few numbers. */
final class Small {
    private Small() {}

    static double dot(double[] a, double[] b) {
        double s = 0;
        for (int j = 0; j < a.length; j++) {
            s += a[j] * b[j];
        }
        return s;
    }

    static double norm(double[] a) {
        return Math.sqrt(dot(a, a));
    }

    static double[] plus(double[] a, double factor, double[] b) {
        double[] s = a.clone();
        for (int j = 0; j < a.length; j++) {
            s[j] += factor * b[j];
        }
        return s;
    }

    /** Factors a square matrix in place with row exchanges; the order of the rows comes back, or nothing where it is singular. */
    static int[] factor(double[][] m) {
        int n = m.length;
        int[] order = new int[n];
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(m[i][k]) > Math.abs(m[best][k])) {
                    best = i;
                }
            }
            if (m[best][k] == 0) {
                return new int[0];
            }
            double[] row = m[k];
            m[k] = m[best];
            m[best] = row;
            int o = order[k];
            order[k] = order[best];
            order[best] = o;
            for (int i = k + 1; i < n; i++) {
                double f = m[i][k] / m[k][k];
                m[i][k] = f;
                for (int j = k + 1; j < n; j++) {
                    m[i][j] -= f * m[k][j];
                }
            }
        }
        return order;
    }

    /** Solves A x = b from the factors of A. */
    static double[] solve(double[][] lu, int[] order, double[] b) {
        int n = lu.length;
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            double s = b[order[i]];
            for (int j = 0; j < i; j++) {
                s -= lu[i][j] * x[j];
            }
            x[i] = s;
        }
        for (int i = n - 1; i >= 0; i--) {
            double s = x[i];
            for (int j = i + 1; j < n; j++) {
                s -= lu[i][j] * x[j];
            }
            x[i] = s / lu[i][i];
        }
        return x;
    }

    /** Solves Aᵀ x = b from the factors of A. */
    static double[] solveTransposed(double[][] lu, int[] order, double[] b) {
        int n = lu.length;
        double[] y = b.clone();
        for (int i = 0; i < n; i++) {
            double s = y[i];
            for (int j = 0; j < i; j++) {
                s -= lu[j][i] * y[j];
            }
            y[i] = s / lu[i][i];
        }
        for (int i = n - 1; i >= 0; i--) {
            double s = y[i];
            for (int j = i + 1; j < n; j++) {
                s -= lu[j][i] * y[j];
            }
            y[i] = s;
        }
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            x[order[i]] = y[i];
        }
        return x;
    }
}
