package fayline.method.rate;

/**
 * How repeated work gets faster: every doubling of the count leaves the same part of the time [wright1936]. Wright's own form says so
 * of the average of all so far; the other form, in use beside it, of the single one. The same rate means more in the second, so
 * a rate is worth nothing without its form.
 *
 * @param rate what a doubling leaves, above 0; 0.85 saves 15 %, 1 nothing, more than 1 gets slower
 * @param form of what the rate speaks
 */
public record LearningCurve(double rate, Form form) {
    /** Of what the rate speaks. */
    public enum Form {
        /** Of the time of the n-th alone. */
        UNIT,
        /** Of the average time of the first n. */
        CUMULATIVE_AVERAGE
    }

    /** Checks the rate. */
    public LearningCurve {
        if (!(rate > 0) || Double.isInfinite(rate)) {
            throw new IllegalArgumentException("rate " + rate + ", expected above 0");
        }
    }

    /** The exponent of the count: log2 of the rate, not positive where repetition helps. */
    public double exponent() {
        return Math.log(rate) / Math.log(2);
    }

    /**
     * The time of the n-th, in parts of the first.
     *
     * @param n from 1
     */
    public double unit(int n) {
        return form == Form.UNIT ? power(checked(n)) : total(n) - (n == 1 ? 0 : total(n - 1));
    }

    /**
     * The time of the first n together, in parts of the first.
     *
     * @param n from 1
     */
    public double total(int n) {
        if (form == Form.CUMULATIVE_AVERAGE) {
            return checked(n) * power(n);
        }
        double sum = 0;
        for (int i = 1; i <= checked(n); i++) {
            sum += power(i);
        }
        return sum;
    }

    /**
     * The average time of the first n, in parts of the first.
     *
     * @param n from 1
     */
    public double average(int n) {
        return form == Form.UNIT ? total(n) / n : power(checked(n));
    }

    private double power(int n) {
        return Math.pow(n, exponent());
    }

    private static int checked(int n) {
        if (n < 1) {
            throw new IllegalArgumentException("the " + n + "-th, expected from 1");
        }
        return n;
    }
}
