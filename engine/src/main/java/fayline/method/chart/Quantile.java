package fayline.method.chart;

import java.util.List;

/** Below which value a share of readings lies, by the definitions 6, 7 and 8 of Hyndman and Fan [hyndman-fan1996]. */
public enum Quantile {
    /** At p (n + 1): unbiased in rank; beyond the outermost readings it stays at them. */
    SIX {
        @Override
        double place(double p, int n) {
            return p * (n + 1);
        }
    },
    /** At 1 + p (n - 1): the whole range from the least to the greatest; what spreadsheets take. */
    SEVEN {
        @Override
        double place(double p, int n) {
            return 1 + p * (n - 1);
        }
    },
    /** At 1/3 + p (n + 1/3): about unbiased in the median, whatever the distribution; what the paper recommends. */
    EIGHT {
        @Override
        double place(double p, int n) {
            return THIRD + p * (n + THIRD);
        }
    };

    private static final double THIRD = 1.0 / 3;

    /** Where it lies among the sorted readings, counted from 1. */
    abstract double place(double p, int n);

    /**
     * The value.
     *
     * @param values at least one reading, in any order and unit
     * @param p the share below it, 0 to 1
     * @throws IllegalArgumentException if there is no reading or p is out of range
     */
    public double of(List<Double> values, double p) {
        if (values.isEmpty() || !(p >= 0 && p <= 1)) {
            throw new IllegalArgumentException(
                    "found " + values.size() + " readings and a share of " + p + ", expected some and 0 to 1");
        }
        List<Double> sorted = values.stream().sorted().toList();
        double place = Math.min(Math.max(place(p, sorted.size()), 1), sorted.size());
        int low = (int) Math.floor(place);
        double before = sorted.get(low - 1);
        double after = sorted.get(Math.min(low, sorted.size() - 1));
        return before + (place - low) * (after - before);
    }
}
