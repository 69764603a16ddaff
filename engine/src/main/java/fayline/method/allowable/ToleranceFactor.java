package fayline.method.allowable;

import fayline.basis.numeric.ChiSquare;
import fayline.basis.numeric.NoncentralT;
import fayline.basis.numeric.RootFinder;
import fayline.basis.numeric.StandardNormal;
import java.util.function.DoubleUnaryOperator;

/**
 * How many sample standard deviations from the sample mean a bound must lie so that at least a proportion of all values lies
 * inside it, with a confidence; values normally spread. Exact: one-sided by the noncentral t distribution [owen1963], two-sided by
 * integration over the mean [odeh-owen1980]. Approximate, as tables and handbooks have them: [natrella1963] and [howe1969].
 */
public final class ToleranceFactor {
    private static final double HIGHEST = 1e4;
    private static final double ACCURACY = 1e-9;
    private static final int STEPS = 400;
    private static final double REACH = 8;

    private ToleranceFactor() {}

    /**
     * One-sided, exact.
     *
     * @param n pieces; at least 2
     * @param proportion of all values inside; above 0.5, below 1
     * @param confidence above 0.5, below 1
     */
    public static double oneSided(int n, double proportion, double confidence) {
        check(n, proportion, confidence);
        double root = Math.sqrt(n);
        double shift = StandardNormal.quantile(proportion) * root;
        return solved(k -> NoncentralT.below(k * root, n - 1, shift) - confidence);
    }

    /** Two-sided, exact; parameters as in {@link #oneSided}. */
    public static double twoSided(int n, double proportion, double confidence) {
        check(n, proportion, confidence);
        double[] half = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            double offset = i * REACH / STEPS / Math.sqrt(n);
            half[i] = solved(r -> StandardNormal.between(offset - r, offset + r) - proportion);
        }
        return solved(k -> {
            double sum = 0;
            for (int i = 0; i <= STEPS; i++) {
                double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
                double x = half[i] / k;
                sum += weight * StandardNormal.density(i * REACH / STEPS) * ChiSquare.above((n - 1) * x * x, n - 1);
            }
            return 2 * sum * REACH / STEPS / 3 - confidence;
        });
    }

    /** One-sided by Natrella's approximation; parameters as in {@link #oneSided}, and n large enough for it. */
    public static double oneSidedApproximate(int n, double proportion, double confidence) {
        check(n, proportion, confidence);
        double zp = StandardNormal.quantile(proportion);
        double zc = StandardNormal.quantile(confidence);
        double a = 1 - zc * zc / (2 * (n - 1.0));
        double b = zp * zp - zc * zc / n;
        if (a <= 0) {
            throw new IllegalArgumentException("the approximation needs more than " + n + " pieces");
        }
        return (zp + Math.sqrt(zp * zp - a * b)) / a;
    }

    /** Two-sided by Howe's approximation; parameters as in {@link #oneSided}. */
    public static double twoSidedApproximate(int n, double proportion, double confidence) {
        check(n, proportion, confidence);
        double z = StandardNormal.quantile((1 + proportion) / 2);
        double chi = RootFinder.bracketed(x -> ChiSquare.above(x, n - 1) - confidence, 0, 20.0 * n, ACCURACY)
                .orElseThrow();
        return z * Math.sqrt((n - 1) * (1 + 1.0 / n) / chi);
    }

    private static double solved(DoubleUnaryOperator f) {
        return RootFinder.bracketed(f, ACCURACY, HIGHEST, ACCURACY).orElseThrow();
    }

    private static void check(int n, double proportion, double confidence) {
        if (n < 2) {
            throw new IllegalArgumentException("a spread needs at least 2 pieces, found " + n);
        }
        if (!(proportion > 0.5 && proportion < 1 && confidence > 0.5 && confidence < 1)) {
            throw new IllegalArgumentException(
                    "proportion and confidence lie above 0.5 and below 1, found " + proportion + " and " + confidence);
        }
    }
}
