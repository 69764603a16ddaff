package fayline.basis.numeric;

import org.hipparchus.special.Gamma;

/**
 * The noncentral t distribution: of (z + shift) / s, z standard normal and s the root of a chi-square over its degrees of
 * freedom. Integrated over s by Simpson's rule.
 */
public final class NoncentralT {
    private static final int STEPS = 4000;
    /** Standard deviations of s on either side that are integrated over. */
    private static final double REACH = 12;

    private NoncentralT() {}

    /**
     * The probability of a value at or below t.
     *
     * @param t any number
     * @param degreesOfFreedom at least 1
     * @param shift the noncentrality
     */
    public static double below(double t, int degreesOfFreedom, double shift) {
        if (degreesOfFreedom < 1) {
            throw new IllegalArgumentException("degrees of freedom are at least 1, found " + degreesOfFreedom);
        }
        double nu = degreesOfFreedom;
        double spread = REACH / Math.sqrt(2 * nu);
        double from = Math.max(0, 1 - spread);
        double step = (1 + spread - from) / STEPS;
        double scale = Math.log(2) + nu / 2 * Math.log(nu / 2) - Gamma.logGamma(nu / 2);
        double sum = 0;
        for (int i = 0; i <= STEPS; i++) {
            double s = from + i * step;
            double weight = i == 0 || i == STEPS ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * StandardNormal.below(t * s - shift) * density(s, nu, scale);
        }
        return Math.min(1, sum * step / 3);
    }

    private static double density(double s, double nu, double scale) {
        if (s == 0) {
            return nu == 1 ? Math.exp(scale) : 0;
        }
        return Math.exp(scale + (nu - 1) * Math.log(s) - nu * s * s / 2);
    }
}
