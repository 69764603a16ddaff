package fayline.basis.numeric;

import java.util.Arrays;
import java.util.Optional;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.ejml.dense.row.SingularOps_DDRM;
import org.ejml.dense.row.factory.DecompositionFactory_DDRM;
import org.ejml.dense.row.factory.LinearSolverFactory_DDRM;
import org.ejml.interfaces.decomposition.CholeskyDecomposition_F64;
import org.ejml.interfaces.decomposition.EigenDecomposition_F64;
import org.ejml.interfaces.decomposition.SingularValueDecomposition_F64;
import org.ejml.interfaces.linsol.LinearSolverDense;

/** A dense matrix of real numbers that never changes. Unit-less: the caller's units go in and come out. */
public final class DenseMatrix {
    private final DMatrixRMaj m;

    private DenseMatrix(DMatrixRMaj m) {
        this.m = m;
    }

    /**
     * Copies rows.
     *
     * @param rows rows of equal length
     * @throws IllegalArgumentException if they differ in length
     */
    public static DenseMatrix of(double[][] rows) {
        int cols = rows.length == 0 ? 0 : rows[0].length;
        DMatrixRMaj a = new DMatrixRMaj(rows.length, cols);
        for (int i = 0; i < rows.length; i++) {
            if (rows[i].length != cols) {
                throw new IllegalArgumentException("row " + i + " has " + rows[i].length + " numbers, not " + cols);
            }
            System.arraycopy(rows[i], 0, a.data, i * cols, cols);
        }
        return new DenseMatrix(a);
    }

    /** One column. */
    public static DenseMatrix column(double... values) {
        return new DenseMatrix(new DMatrixRMaj(values.length, 1, true, values.clone()));
    }

    /** A square matrix with these on its diagonal and nothing beside. */
    public static DenseMatrix diagonal(double... values) {
        return new DenseMatrix(CommonOps_DDRM.diag(values));
    }

    /** Ones on the diagonal. */
    public static DenseMatrix identity(int size) {
        return new DenseMatrix(CommonOps_DDRM.identity(size));
    }

    /** All zero. */
    public static DenseMatrix zero(int rows, int cols) {
        return new DenseMatrix(new DMatrixRMaj(rows, cols));
    }

    /** How many rows. */
    public int rows() {
        return m.numRows;
    }

    /** How many columns. */
    public int cols() {
        return m.numCols;
    }

    /** One element, counted from 0. */
    public double get(int row, int col) {
        return m.get(row, col);
    }

    /** A copy of the rows. */
    public double[][] toRows() {
        double[][] rows = new double[rows()][];
        for (int i = 0; i < rows(); i++) {
            rows[i] = row(i);
        }
        return rows;
    }

    /** A copy of one row. */
    public double[] row(int row) {
        return Arrays.copyOfRange(m.data, row * m.numCols, (row + 1) * m.numCols);
    }

    /** A copy of one column. */
    public double[] col(int col) {
        double[] c = new double[rows()];
        for (int i = 0; i < c.length; i++) {
            c[i] = m.get(i, col);
        }
        return c;
    }

    /** A part of it: the named rows and columns, in the named order. */
    public DenseMatrix part(int[] rows, int[] cols) {
        DMatrixRMaj a = new DMatrixRMaj(rows.length, cols.length);
        for (int i = 0; i < rows.length; i++) {
            for (int j = 0; j < cols.length; j++) {
                a.set(i, j, m.get(rows[i], cols[j]));
            }
        }
        return new DenseMatrix(a);
    }

    /** This times another. */
    public DenseMatrix times(DenseMatrix other) {
        DMatrixRMaj a = new DMatrixRMaj(rows(), other.cols());
        CommonOps_DDRM.mult(m, other.m, a);
        return new DenseMatrix(a);
    }

    /** This times a column of numbers. */
    public double[] times(double[] column) {
        return times(column(column)).col(0);
    }

    /** Every element times a number. */
    public DenseMatrix scaled(double factor) {
        DMatrixRMaj a = new DMatrixRMaj(m);
        CommonOps_DDRM.scale(factor, a);
        return new DenseMatrix(a);
    }

    /** The sum. */
    public DenseMatrix plus(DenseMatrix other) {
        DMatrixRMaj a = new DMatrixRMaj(rows(), cols());
        CommonOps_DDRM.add(m, other.m, a);
        return new DenseMatrix(a);
    }

    /** The difference. */
    public DenseMatrix minus(DenseMatrix other) {
        return plus(other.scaled(-1));
    }

    /** Rows for columns. */
    public DenseMatrix transposed() {
        return new DenseMatrix(CommonOps_DDRM.transpose(m, null));
    }

    /**
     * Solves this · X = B for a square matrix.
     *
     * @param b right sides, one a column
     * @return X, or empty where the matrix is singular to working precision
     */
    public Optional<DenseMatrix> solve(DenseMatrix b) {
        requireSquare();
        LinearSolverDense<DMatrixRMaj> solver = LinearSolverFactory_DDRM.lu(rows());
        if (!solver.setA(new DMatrixRMaj(m)) || solver.quality() <= Math.ulp(1.0)) {
            return Optional.empty();
        }
        DMatrixRMaj x = new DMatrixRMaj(rows(), b.cols());
        solver.solve(new DMatrixRMaj(b.m), x);
        return finite(x);
    }

    /** Solves this · x = b for one right side. */
    public Optional<double[]> solve(double[] b) {
        return solve(column(b)).map(x -> x.col(0));
    }

    /** The inverse of a square matrix, or empty where it is singular to working precision. */
    public Optional<DenseMatrix> inverse() {
        return solve(identity(rows()));
    }

    /**
     * The lower triangle L with L · Lᵀ = this.
     *
     * @return L, or empty where the matrix is not positive definite
     */
    public Optional<DenseMatrix> cholesky() {
        requireSquare();
        CholeskyDecomposition_F64<DMatrixRMaj> chol = DecompositionFactory_DDRM.chol(rows(), true);
        return chol.decompose(new DMatrixRMaj(m)) ? Optional.of(new DenseMatrix(chol.getT(null))) : Optional.empty();
    }

    /** Singular values, largest first, with their vectors. */
    public Singular svd() {
        SingularValueDecomposition_F64<DMatrixRMaj> svd =
                DecompositionFactory_DDRM.svd(rows(), cols(), true, true, false);
        if (!svd.decompose(new DMatrixRMaj(m))) {
            throw new ArithmeticException("no singular values of a " + rows() + " by " + cols() + " matrix");
        }
        DMatrixRMaj u = svd.getU(null, false);
        DMatrixRMaj w = svd.getW(null);
        DMatrixRMaj v = svd.getV(null, false);
        SingularOps_DDRM.descendingOrder(u, false, w, v, false);
        double[] values = new double[Math.min(rows(), cols())];
        for (int i = 0; i < values.length; i++) {
            values[i] = w.get(i, i);
        }
        return new Singular(new DenseMatrix(u), column(values), new DenseMatrix(v));
    }

    /**
     * The Moore-Penrose inverse.
     *
     * @param threshold singular values at or below this share of the largest count as nothing
     */
    public DenseMatrix pseudoInverse(double threshold) {
        Singular s = svd();
        int kept = s.rank(threshold);
        DMatrixRMaj inverse = new DMatrixRMaj(cols(), rows());
        for (int k = 0; k < kept; k++) {
            for (int i = 0; i < cols(); i++) {
                for (int j = 0; j < rows(); j++) {
                    inverse.add(i, j, s.v().get(i, k) * s.u().get(j, k) / s.value(k));
                }
            }
        }
        return new DenseMatrix(inverse);
    }

    /** Eigenvalues of a symmetric matrix, smallest first, with their vectors; only its symmetric part counts. */
    public Eigen symmetricEigen() {
        requireSquare();
        int n = rows();
        DMatrixRMaj a = plus(transposed()).scaled(0.5).m;
        EigenDecomposition_F64<DMatrixRMaj> eig = DecompositionFactory_DDRM.eig(n, true, true);
        if (!eig.decompose(a)) {
            throw new ArithmeticException("no eigenvalues of a " + n + " by " + n + " matrix");
        }
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(
                order,
                (i, j) -> Double.compare(
                        eig.getEigenvalue(i).getReal(), eig.getEigenvalue(j).getReal()));
        DMatrixRMaj values = new DMatrixRMaj(n, 1);
        DMatrixRMaj vectors = new DMatrixRMaj(n, n);
        for (int k = 0; k < n; k++) {
            values.set(k, 0, eig.getEigenvalue(order[k]).getReal());
            DMatrixRMaj v = eig.getEigenVector(order[k]);
            for (int i = 0; i < n; i++) {
                vectors.set(i, k, v.get(i, 0));
            }
        }
        return new Eigen(new DenseMatrix(values), new DenseMatrix(vectors));
    }

    private void requireSquare() {
        if (rows() != cols()) {
            throw new IllegalArgumentException("a square matrix is needed, not " + rows() + " by " + cols());
        }
    }

    private static Optional<DenseMatrix> finite(DMatrixRMaj x) {
        for (int i = 0; i < x.getNumElements(); i++) {
            if (!Double.isFinite(x.data[i])) {
                return Optional.empty();
            }
        }
        return Optional.of(new DenseMatrix(x));
    }

    /**
     * this = U · diag(values) · Vᵀ.
     *
     * @param u left vectors as columns
     * @param values one column, largest first
     * @param v right vectors as columns (all of them, also those of no singular value)
     */
    public record Singular(DenseMatrix u, DenseMatrix values, DenseMatrix v) {
        /** The k-th value, largest first, from 0. */
        public double value(int k) {
            return values.get(k, 0);
        }

        /** How many values lie above a share of the largest. */
        public int rank(double threshold) {
            int rank = 0;
            while (rank < values.rows() && value(rank) > threshold * value(0)) {
                rank++;
            }
            return rank;
        }
    }

    /**
     * this · vectors = vectors · diag(values).
     *
     * @param values one column, smallest first
     * @param vectors unit vectors as columns
     */
    public record Eigen(DenseMatrix values, DenseMatrix vectors) {}
}
