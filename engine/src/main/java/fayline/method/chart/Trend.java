package fayline.method.chart;

import fayline.basis.numeric.DenseMatrix;
import java.util.Optional;

/**
 * The straight-line trend of readings on several causes at once, by least squares [nist-handbook], section 4.4.3. Causes are
 * taken about their means and scaled before they are decomposed by singular values: left as they are, causes that grow together
 * lose most digits.
 *
 * @param coefficients the value where every cause is 0, then the change of the value with each cause
 * @param standardErrors of each
 * @param residualDeviation standard deviation about the trend, in the unit of the readings
 * @param explained part of the scatter that the trend explains, 0 to 1
 */
public record Trend(DenseMatrix coefficients, DenseMatrix standardErrors, double residualDeviation, double explained) {
    /** Singular values below this part of the largest mean causes that cannot be told apart. */
    private static final double NEGLIGIBLE = 1e-13;

    /**
     * Fits a trend.
     *
     * @param values n readings
     * @param causes n rows of k causes
     * @return empty where n is not above k + 1, a cause never changes, or causes cannot be told apart
     */
    public static Optional<Trend> of(double[] values, double[][] causes) {
        int n = values.length;
        int k = n == 0 ? 0 : causes[0].length;
        if (n <= k + 1) {
            return Optional.empty();
        }
        double[] means = new double[k];
        double[] scales = new double[k];
        double[][] about = new double[n][k];
        for (int j = 0; j < k; j++) {
            if (!centre(causes, j, means, scales, about)) {
                return Optional.empty();
            }
        }
        double mean = mean(values);
        double[] rest = new double[n];
        for (int i = 0; i < n; i++) {
            rest[i] = values[i] - mean;
        }
        DenseMatrix x = DenseMatrix.of(about);
        DenseMatrix.Singular parts = x.svd();
        if (parts.rank(NEGLIGIBLE) < k) {
            return Optional.empty();
        }
        double[] slopes = x.pseudoInverse(NEGLIGIBLE).times(rest);
        return Optional.of(summed(slopes, parts, means, scales, mean, rest, x));
    }

    private static boolean centre(double[][] causes, int j, double[] means, double[] scales, double[][] about) {
        int n = causes.length;
        double[] column = new double[n];
        for (int i = 0; i < n; i++) {
            column[i] = causes[i][j];
        }
        means[j] = mean(column);
        double squares = 0;
        for (double c : column) {
            squares += (c - means[j]) * (c - means[j]);
        }
        scales[j] = Math.sqrt(squares);
        for (int i = 0; i < n; i++) {
            about[i][j] = (column[i] - means[j]) / scales[j];
        }
        return scales[j] > 0;
    }

    private static double mean(double[] all) {
        double sum = 0;
        for (double a : all) {
            sum += a;
        }
        return sum / all.length;
    }

    private static Trend summed(
            double[] slopes,
            DenseMatrix.Singular parts,
            double[] means,
            double[] scales,
            double mean,
            double[] rest,
            DenseMatrix x) {
        int n = rest.length;
        int k = slopes.length;
        double[] fitted = x.times(slopes);
        double left = 0;
        double all = 0;
        for (int i = 0; i < n; i++) {
            left += (rest[i] - fitted[i]) * (rest[i] - fitted[i]);
            all += rest[i] * rest[i];
        }
        double sigma = Math.sqrt(left / (n - k - 1));
        double[] coefficients = new double[k + 1];
        double[] errors = new double[k + 1];
        coefficients[0] = mean;
        double[] atZero = new double[k];
        for (int j = 0; j < k; j++) {
            coefficients[j + 1] = slopes[j] / scales[j];
            coefficients[0] -= coefficients[j + 1] * means[j];
            atZero[j] = means[j] / scales[j];
            double[] unit = new double[k];
            unit[j] = 1 / scales[j];
            errors[j + 1] = sigma * Math.sqrt(spread(parts, unit));
        }
        errors[0] = sigma * Math.sqrt(1.0 / n + spread(parts, atZero));
        return new Trend(
                DenseMatrix.column(coefficients), DenseMatrix.column(errors), sigma, all > 0 ? 1 - left / all : 1);
    }

    /** The square of a combination of slopes over the inverse of the scaled causes' product with themselves. */
    private static double spread(DenseMatrix.Singular parts, double[] combination) {
        double sum = 0;
        for (int s = 0; s < combination.length; s++) {
            double along = 0;
            for (int j = 0; j < combination.length; j++) {
                along += parts.v().get(j, s) * combination[j];
            }
            sum += along / parts.value(s) * (along / parts.value(s));
        }
        return sum;
    }
}
