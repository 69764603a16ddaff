package fayline.basis.numeric.optimum;

import fayline.basis.numeric.DenseMatrix;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The point of least sum of squares of weighted deviations, alone or under {@link LinearRows}. Where the equations leave a
 * direction free, the point of least norm among the best.
 */
public final class LeastSquares {
    /** Singular values at or below this share of the largest count as nothing. */
    public static final double RANK_SHARE = 1e-6;

    private static final double FEASIBLE = 1e-12;
    private static final double SETTLED = 1e-12;
    private static final double SLACK = 1e-11;
    private static final int MOST_ROUNDS = 200;

    private final double[][] v;
    private final double[] sigma;
    private final double[] wanted;
    private final int rank;

    private LeastSquares(Equations e) {
        int n = e.unknowns();
        double[][] top = e.triangle();
        double[][] square = new double[n][];
        double[] right = new double[n];
        for (int i = 0; i < n; i++) {
            square[i] = Arrays.copyOf(top[i], n);
            right[i] = top[i][n];
        }
        DenseMatrix.Singular s = DenseMatrix.of(square).svd();
        sigma = s.values().col(0);
        v = s.v().toRows();
        wanted = s.u().transposed().times(right);
        rank = s.value(0) > 0 ? s.rank(RANK_SHARE) : 0;
    }

    /**
     * What equations tell about their unknowns, without limits.
     *
     * @param point best, of least norm where directions are free
     * @param singularValues of the weighted rows, largest first
     * @param rank how many of them count
     * @param directions unit directions belonging to the singular values; those beyond the rank are free
     */
    public record Fit(List<Double> point, List<Double> singularValues, int rank, List<List<Double>> directions) {
        /** Keeps its own copies. */
        public Fit {
            point = List.copyOf(point);
            singularValues = List.copyOf(singularValues);
            directions = directions.stream().map(List::copyOf).toList();
        }

        /** Whether every unknown is known. */
        public boolean determined() {
            return rank == point.size();
        }

        /**
         * The covariance of the point where weights are one over the standard uncertainties.
         *
         * @return empty unless determined
         */
        public Optional<DenseMatrix> covariance() {
            if (!determined()) {
                return Optional.empty();
            }
            int n = point.size();
            double[][] c = new double[n][n];
            for (int k = 0; k < n; k++) {
                double s = singularValues.get(k);
                for (int i = 0; i < n; i++) {
                    for (int j = 0; j < n; j++) {
                        c[i][j] += directions.get(k).get(i) * directions.get(k).get(j) / (s * s);
                    }
                }
            }
            return Optional.of(DenseMatrix.of(c));
        }
    }

    /** Solves without limits. */
    public static Fit fit(Equations e) {
        LeastSquares s = new LeastSquares(e);
        int n = e.unknowns();
        double[] x = s.back(s.plain());
        double[][] t = DenseMatrix.of(s.v).transposed().toRows();
        return new Fit(
                list(x),
                list(s.sigma),
                s.rank,
                Arrays.stream(t).limit(n).map(LeastSquares::list).toList());
    }

    /**
     * Solves under limits.
     *
     * @return the point, or empty where no point holds the rows
     */
    public static Optional<List<Double>> within(Equations e, LinearRows rows) {
        LeastSquares s = new LeastSquares(e);
        double[] free = s.back(s.plain());
        if (rows.holdAt(free, FEASIBLE)) {
            return Optional.of(list(free));
        }
        return s.limited(rows).map(LeastSquares::list);
    }

    /** The point nearest to a wanted one that holds the rows, or empty where there is none. */
    public static Optional<List<Double>> nearest(List<Double> wanted, LinearRows rows) {
        return Nearest.point(array(wanted), rows).map(LeastSquares::list);
    }

    /** The best point told in the directions of the singular values, each stretched by its value; free ones at zero. */
    private double[] plain() {
        double[] u = new double[sigma.length];
        System.arraycopy(wanted, 0, u, 0, rank);
        return u;
    }

    private double stretch(int k) {
        return k < rank ? sigma[k] : 1;
    }

    private double[] back(double[] u) {
        double[] x = new double[u.length];
        for (int j = 0; j < x.length; j++) {
            for (int k = 0; k < u.length; k++) {
                x[j] += v[j][k] * u[k] / stretch(k);
            }
        }
        return x;
    }

    private Optional<double[]> limited(LinearRows rows) {
        int n = sigma.length;
        LinearRows stretched = stretched(rows);
        double[] target = plain();
        Optional<double[]> u = Nearest.point(target, stretched);
        if (u.isEmpty() || rank == n) {
            return u.map(this::back);
        }
        // A free direction was pulled towards zero; follow it until it pulls no more, then take the least norm.
        for (int k = 0; k < MOST_ROUNDS; k++) {
            double moved = 0;
            for (int j = rank; j < n; j++) {
                moved = Math.max(moved, Math.abs(u.get()[j] - target[j]));
                target[j] = u.get()[j];
            }
            if (moved < SETTLED) {
                break;
            }
            Optional<double[]> again = Nearest.point(target, stretched);
            if (again.isEmpty()) {
                break;
            }
            u = again;
        }
        return Optional.of(back(leastNorm(u.get(), stretched)));
    }

    private double[] leastNorm(double[] u, LinearRows stretched) {
        int n = u.length;
        int free = n - rank;
        LinearRows.Builder rest = LinearRows.free(free);
        double[] known = Arrays.copyOf(Arrays.copyOf(u, rank), n);
        for (int i = 0; i < stretched.count(); i++) {
            double[] a = Arrays.copyOfRange(stretched.coefficients(i), rank, n);
            if (Small.norm(a) > SLACK) {
                double at = stretched.value(i, known);
                rest.row(a, stretched.low(i) - at - SLACK, stretched.high(i) - at + SLACK);
            }
        }
        double[] out = u.clone();
        Nearest.point(new double[free], rest.build()).ifPresent(z -> System.arraycopy(z, 0, out, rank, free));
        return out;
    }

    private LinearRows stretched(LinearRows rows) {
        int n = sigma.length;
        LinearRows.Builder all = LinearRows.free(n);
        for (int i = 0; i < rows.count(); i++) {
            double[] a = rows.coefficients(i);
            double[] g = new double[n];
            for (int k = 0; k < n; k++) {
                for (int j = 0; j < n; j++) {
                    g[k] += a[j] * v[j][k] / stretch(k);
                }
            }
            all.row(g, rows.low(i), rows.high(i));
        }
        return all.build();
    }

    static List<Double> list(double[] x) {
        return Arrays.stream(x).boxed().toList();
    }

    static double[] array(List<Double> x) {
        return x.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
