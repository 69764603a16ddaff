package fayline.basis.numeric;

import java.util.Arrays;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube more evenly than random ones: the first of a Sobol sequence, read moved round by a random
 * shift. Averages over them settle nearly as one over their number; averages over several shifts tell how far they have settled.
 */
public final class EvenPoints {
    private static final double LEAST = 0x1.0p-54;

    private final int dimensions;
    private final double[] points;

    private EvenPoints(int dimensions, double[] points) {
        this.dimensions = dimensions;
        this.points = points;
    }

    /**
     * Makes points.
     *
     * @param dimensions of the cube; at least one
     * @param count how many points
     */
    public static EvenPoints of(int dimensions, int count) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        double[] all = new double[dimensions * count];
        for (int p = 0; p < count; p++) {
            System.arraycopy(sobol.nextVector(), 0, all, p * dimensions, dimensions);
        }
        return new EvenPoints(dimensions, all);
    }

    /** How many dimensions the cube has. */
    public int dimensions() {
        return dimensions;
    }

    /** How many points there are. */
    public int count() {
        return points.length / dimensions;
    }

    /** One of many shifts; the same seed and number give the same. */
    public Shift shift(long seed, long number) {
        RandomStream random = new RandomStream(seed, number);
        double[] by = new double[dimensions];
        Arrays.setAll(by, k -> random.nextUnit());
        return new Shift(by);
    }

    /** The points, moved round by one shift. */
    public final class Shift {
        private final double[] by;

        private Shift(double[] by) {
            this.by = by;
        }

        /**
         * Writes a point.
         *
         * @param point which, from 0
         * @param into one place for each dimension; each gets a number between 0 and 1, neither included
         */
        public void point(int point, double[] into) {
            int from = point * dimensions;
            for (int k = 0; k < dimensions; k++) {
                double x = points[from + k] + by[k];
                x = x >= 1 ? x - 1 : x;
                into[k] = Math.min(1 - LEAST, Math.max(LEAST, x));
            }
        }
    }
}
