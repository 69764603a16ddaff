package fayline.basis.numeric;

/**
 * A stream of pseudo-random numbers that depends on a seed and its own number alone, so that work cut into numbered blocks
 * gives the same result whichever thread does which block. A counter stirred by a 64-bit mixing function (Steele, Lea and
 * Flood 2014 [steele2014]); the same seed gives the same numbers on every machine.
 *
 * <p>Not safe to share between threads.
 */
public final class RandomStream {
    private static final long GOLDEN = 0x9e3779b97f4a7c15L;
    private static final double UNIT = 0x1.0p-53;

    private long state;
    private double spare;
    private boolean hasSpare;

    /**
     * Begins a stream.
     *
     * @param seed the seed of the whole work
     * @param number the stream's own number, usually that of the block
     */
    public RandomStream(long seed, long number) {
        this.state = mix(mix(seed) + GOLDEN * (2 * number + 1)) ^ mix(~number);
    }

    private static long mix(long z) {
        long a = (z ^ (z >>> 30)) * 0xbf58476d1ce4e5b9L;
        long b = (a ^ (a >>> 27)) * 0x94d049bb133111ebL;
        return b ^ (b >>> 31);
    }

    /** The next 64 bits. */
    public long nextBits() {
        state += GOLDEN;
        return mix(state);
    }

    /** The next number, even between 0 and 1, neither of them included. */
    public double nextUnit() {
        return ((nextBits() >>> 11) + 0.5) * UNIT;
    }

    /** The next standard normal number (polar method, from memory). */
    public double nextNormal() {
        if (hasSpare) {
            hasSpare = false;
            return spare;
        }
        while (true) {
            double u = 2 * nextUnit() - 1;
            double v = 2 * nextUnit() - 1;
            double s = u * u + v * v;
            if (s < 1 && s > 0) {
                double factor = Math.sqrt(-2 * StrictMath.log(s) / s);
                spare = v * factor;
                hasSpare = true;
                return u * factor;
            }
        }
    }
}
