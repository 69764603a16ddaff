package fayline.method.fitup.motion;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.optimum.LeastSquares;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How well the move of least squares is known where the readings scatter by themselves: K diag(u²) Kᵀ with K = (AᵀW²A)⁻¹AᵀW²,
 * which is (AᵀW²A)⁻¹ where every weight is one over its uncertainty [jcgm100]. Immutable.
 */
public final class MoveSpread {
    private final WantedLines<?, ?> lines;
    private final DenseMatrix scaled;

    private MoveSpread(WantedLines<?, ?> lines, DenseMatrix scaled) {
        this.lines = lines;
        this.scaled = scaled;
    }

    /**
     * From the readings' standard uncertainties.
     *
     * @param uncertaintiesMm one for each reading, or none
     * @return empty where there is none or a motion is not known
     */
    public static Optional<MoveSpread> of(WantedLines<?, ?> lines, List<Double> uncertaintiesMm) {
        if (uncertaintiesMm.isEmpty()) {
            return Optional.empty();
        }
        int n = lines.unknowns();
        double[][] middle = new double[n][n];
        for (int i = 0; i < lines.count(); i++) {
            double w = lines.wanted(i).weight();
            double f = w * w * uncertaintiesMm.get(i);
            double[] a = lines.coefficients(i);
            for (int p = 0; p < n; p++) {
                for (int q = 0; q < n; q++) {
                    middle[p][q] += f * a[p] * f * a[q];
                }
            }
        }
        return LeastSquares.fit(lines.equations())
                .covariance()
                .map(c -> new MoveSpread(lines, c.times(DenseMatrix.of(middle)).times(c)));
    }

    /** The covariance of the move: shifts in mm, turns in rad. */
    public DenseMatrix covariance() {
        double[] back = new double[lines.unknowns()];
        Arrays.fill(back, 1 / lines.scaleLengthMm());
        Arrays.fill(back, 0, lines.shifts(), 1);
        DenseMatrix b = DenseMatrix.diagonal(back);
        return b.times(scaled).times(b);
    }

    /** The standard errors of the unknowns, turns times the scale length, in mm. */
    public List<Double> errorsMm() {
        return IntStream.range(0, lines.unknowns())
                .mapToObj(j -> Math.sqrt(scaled.get(j, j)))
                .toList();
    }

    /**
     * The standard error along a direction, in mm.
     *
     * @param direction in the unknowns, of any length but zero
     */
    public double alongMm(double[] direction) {
        double size = Math.sqrt(Arrays.stream(direction).map(v -> v * v).sum());
        return Math.sqrt(Math.max(0, between(direction, direction))) / size;
    }

    /** The covariance that the doubt of the move gives to two readings after it, in mm². */
    public double covarianceMm2(int row, int other) {
        return between(lines.coefficients(row), lines.coefficients(other));
    }

    /** The standard error that the doubt of the move gives to each reading after it, in mm. */
    public List<Double> valueErrorsMm() {
        return IntStream.range(0, lines.count())
                .mapToObj(i -> Math.sqrt(Math.max(0, covarianceMm2(i, i))))
                .toList();
    }

    private double between(double[] a, double[] b) {
        double[] c = scaled.times(b);
        double s = 0;
        for (int j = 0; j < a.length; j++) {
            s += a[j] * c[j];
        }
        return s;
    }
}
