package fayline.basis.numeric;

import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube more evenly than random ones: a Sobol sequence moved round by a random shift. Averages over
 * them settle nearly as one over their number; averages over several shifts tell how far they have settled.
 *
 * <p>Not safe to share between threads: each thread makes its own.
 */
public final class EvenPoints {
    private static final double LEAST = 0x1.0p-54;

    private final SobolSequenceGenerator sobol;
    private final double[] shift;

    /**
     * Begins a sequence.
     *
     * @param dimensions of the cube; at least one
     * @param seed of the shift
     * @param number which of several shifts
     */
    public EvenPoints(int dimensions, long seed, long number) {
        this.sobol = new SobolSequenceGenerator(dimensions);
        RandomStream random = new RandomStream(seed, number);
        this.shift = new double[dimensions];
        for (int k = 0; k < dimensions; k++) {
            shift[k] = random.nextUnit();
        }
    }

    /**
     * Writes the next point.
     *
     * @param into one place for each dimension; each gets a number between 0 and 1, neither included
     */
    public void next(double[] into) {
        double[] point = sobol.nextVector();
        for (int k = 0; k < point.length; k++) {
            double x = point[k] + shift[k];
            x = x >= 1 ? x - 1 : x;
            into[k] = Math.min(1 - LEAST, Math.max(LEAST, x));
        }
    }
}
