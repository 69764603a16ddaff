package fayline.basis.numeric.optimum;

import fayline.basis.numeric.DenseMatrix;
import java.util.List;

/**
 * A straight line y = b0 + b1 x through points: least squares with standard errors from the residual variance (n − 2 degrees of
 * freedom), and the smallest possible worst deviation.
 *
 * @param b0 value at x = 0
 * @param b1 slope
 * @param stdB0 standard error of b0
 * @param stdB1 standard error of b1
 * @param worstDeviation the smallest largest |y − line| of any straight line
 */
public record StraightLine(double b0, double b1, double stdB0, double stdB1, double worstDeviation) {
    private static final int LEAST_POINTS = 3;

    /**
     * Fits.
     *
     * @throws IllegalArgumentException if the lists differ in length, hold fewer than 3 points, or x is the same everywhere
     */
    public static StraightLine through(List<Double> x, List<Double> y) {
        if (x.size() != y.size() || x.size() < LEAST_POINTS) {
            throw new IllegalArgumentException(
                    x.size() + " x and " + y.size() + " y; as many are needed, and at least " + LEAST_POINTS);
        }
        double square = x.stream().mapToDouble(v -> v * v).sum();
        double scale = square > 0 ? Math.sqrt(square / x.size()) : 1;
        Equations.Builder all = Equations.of(2);
        for (int i = 0; i < x.size(); i++) {
            all.row(new double[] {1, x.get(i) / scale}, y.get(i), 1);
        }
        Equations e = all.build();
        LeastSquares.Fit fit = LeastSquares.fit(e);
        DenseMatrix c = fit.covariance()
                .orElseThrow(() -> new IllegalArgumentException("x is the same everywhere, so no line"));
        double variance = e.sumSquares(fit.point()) / (x.size() - 2);
        return new StraightLine(
                fit.point().get(0),
                fit.point().get(1) / scale,
                Math.sqrt(variance * c.get(0, 0)),
                Math.sqrt(variance * c.get(1, 1)) / scale,
                MinimaxFit.fit(e, LinearRows.free(2).build()).orElseThrow().worst());
    }
}
