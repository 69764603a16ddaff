package fayline.basis.numeric;

import org.hipparchus.distribution.continuous.TDistribution;

/** Student's t distribution: of a mean against its own estimated standard error. */
public final class StudentT {
    private StudentT() {}

    /**
     * The probability of a value at or below t.
     *
     * @param t any number
     * @param degreesOfFreedom positive
     */
    public static double below(double t, double degreesOfFreedom) {
        return new TDistribution(degreesOfFreedom).cumulativeProbability(t);
    }

    /**
     * The value that is not exceeded with a probability.
     *
     * @param probability above 0 and below 1
     * @param degreesOfFreedom positive
     */
    public static double quantile(double probability, double degreesOfFreedom) {
        return new TDistribution(degreesOfFreedom).inverseCumulativeProbability(probability);
    }
}
