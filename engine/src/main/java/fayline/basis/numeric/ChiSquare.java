package fayline.basis.numeric;

import org.hipparchus.special.Gamma;

/** The chi-square distribution: of a sum of squares of independent standard normal values. */
public final class ChiSquare {
    private ChiSquare() {}

    /**
     * The probability of a value above x.
     *
     * @param x not negative
     * @param degreesOfFreedom at least one
     * @throws IllegalArgumentException for other numbers
     */
    public static double above(double x, int degreesOfFreedom) {
        if (!(x >= 0) || degreesOfFreedom < 1) {
            throw new IllegalArgumentException("no chi-square of " + x + " with " + degreesOfFreedom + " degrees");
        }
        return Double.isInfinite(x) ? 0 : Gamma.regularizedGammaQ(degreesOfFreedom / 2.0, x / 2);
    }
}
