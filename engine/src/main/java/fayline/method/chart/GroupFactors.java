package fayline.method.chart;

import fayline.basis.numeric.StandardNormal;
import java.util.function.DoubleUnaryOperator;

/**
 * Factors of charts for groups of readings of equal size, limits at three standard deviations of a normal distribution
 * [nist-handbook]: of means ({@code A}), of ranges ({@code D}) and of standard deviations ({@code B}). The mean and the spread of
 * the range of n normal values are integrals over the normal distribution, taken by the trapezium rule, which for such smooth
 * bells is exact to the last digits.
 *
 * @param size how many readings are in a group, 2 to 100
 * @param d2 mean range in standard deviations
 * @param d3 standard deviation of the range in standard deviations
 * @param c4 mean of the sample standard deviation in standard deviations
 */
public record GroupFactors(int size, double d2, double d3, double c4) {
    /** Largest group. */
    public static final int MOST = 100;

    private static final double LIMIT_SIGMAS = 3;
    private static final double TWELVE = 12;
    private static final double END = 9;
    private static final int STEPS = 360;
    private static final double STEP = 2 * END / STEPS;

    /**
     * The factors for a group size.
     *
     * @param size 2 to {@link #MOST}
     * @throws IllegalArgumentException if it is out of range
     */
    public static GroupFactors of(int size) {
        if (size < 2 || size > MOST) {
            throw new IllegalArgumentException("a group of " + size + ", expected 2 to " + MOST);
        }
        double mean = meanRange(size);
        return new GroupFactors(size, mean, Math.sqrt(meanSquaredRange(size) - mean * mean), unbiasing(size));
    }

    /** Mean of the range: the integral of 1 - F^n - (1 - F)^n. */
    private static double meanRange(int n) {
        return integral(x -> {
            double below = StandardNormal.below(x);
            return 1 - Math.pow(below, n) - Math.pow(StandardNormal.above(x), n);
        });
    }

    /** Mean of the squared range: twice the integral over y below x of 1 - F(x)^n - (1 - F(y))^n + (F(x) - F(y))^n. */
    private static double meanSquaredRange(int n) {
        double[] below = new double[STEPS + 1];
        double[] above = new double[STEPS + 1];
        for (int i = 0; i <= STEPS; i++) {
            below[i] = StandardNormal.below(-END + i * STEP);
            above[i] = StandardNormal.above(-END + i * STEP);
        }
        double total = 0;
        for (int y = 0; y <= STEPS; y++) {
            for (int x = y; x <= STEPS; x++) {
                double inside = 1
                        - Math.pow(below[x], n)
                        - Math.pow(above[y], n)
                        + Math.pow(Math.max(0, below[x] - below[y]), n);
                total += inside * (x == y ? 0.5 : 1);
            }
        }
        // The inner integrals begin in a slope; its first correction (Euler, Maclaurin) adds up to minus one twelfth of
        // a step squared.
        return 2 * (total - 1.0 / TWELVE) * STEP * STEP;
    }

    private static double integral(DoubleUnaryOperator f) {
        double total = 0;
        for (int i = 0; i <= STEPS; i++) {
            total += f.applyAsDouble(-END + i * STEP);
        }
        return total * STEP;
    }

    /** The square root of 2 / (n - 1) times the quotient of gamma at n/2 and at (n - 1)/2, by its steps of two. */
    private static double unbiasing(int n) {
        double quotient = n % 2 == 0 ? 1 / Math.sqrt(Math.PI) : Math.sqrt(Math.PI) / 2;
        for (int k = n % 2 == 0 ? 2 : 3; k < n; k += 2) {
            quotient *= k / (k - 1.0);
        }
        return Math.sqrt(2.0 / (n - 1)) * quotient;
    }

    /** Of the mean range, limits of means: centre plus and minus A2 times it. */
    public double a2() {
        return LIMIT_SIGMAS / (d2 * Math.sqrt(size));
    }

    /** Of the mean standard deviation, limits of means. */
    public double a3() {
        return LIMIT_SIGMAS / (c4 * Math.sqrt(size));
    }

    /** Of the mean range, the lower limit of ranges; never below 0. */
    public double lowerRange() {
        return Math.max(0, 1 - LIMIT_SIGMAS * d3 / d2);
    }

    /** Of the mean range, the upper limit of ranges. */
    public double upperRange() {
        return 1 + LIMIT_SIGMAS * d3 / d2;
    }

    /** Of the mean standard deviation, the lower limit of standard deviations; never below 0. */
    public double lowerDeviation() {
        return Math.max(0, 1 - LIMIT_SIGMAS * Math.sqrt(1 - c4 * c4) / c4);
    }

    /** Of the mean standard deviation, the upper limit of standard deviations. */
    public double upperDeviation() {
        return 1 + LIMIT_SIGMAS * Math.sqrt(1 - c4 * c4) / c4;
    }
}
