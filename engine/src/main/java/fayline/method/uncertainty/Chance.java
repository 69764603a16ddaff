package fayline.method.uncertainty;

import java.util.Locale;

/**
 * A probability found by counting trials.
 *
 * @param probability the part of the trials
 * @param standardError of that part
 * @param trials how many there were
 * @param seed what they were drawn from
 */
public record Chance(double probability, double standardError, long trials, long seed) {
    /** Trials without a single miss leave this many misses possible (at 95 %). */
    private static final double RULE_OF_THREE = 3;

    /** A count of trials. */
    public static Chance counted(long inside, long trials, long seed) {
        double p = (double) inside / trials;
        return new Chance(p, Math.sqrt(p * (1 - p) / trials), trials, seed);
    }

    /** Whether every trial was inside: then no more is known than {@link #least()}. */
    public boolean isAll() {
        return probability >= 1;
    }

    /** Least that the probability can be where all trials were inside: 1 - 3/N; otherwise the probability itself. */
    public double least() {
        return isAll() ? 1 - RULE_OF_THREE / trials : probability;
    }

    /** As it may be told: never more than the trials can show. */
    public String text() {
        if (isAll()) {
            double percent = 100 * least();
            return percent > 99.9 ? "above 99.9 %" : String.format(Locale.ROOT, "above %.1f %%", percent);
        }
        if (probability <= 0) {
            return String.format(Locale.ROOT, "below %.2g %%", 100 * RULE_OF_THREE / trials);
        }
        if (probability > 0.999) {
            return "above 99.9 %";
        }
        return String.format(
                Locale.ROOT, probability > 0.99 || probability < 0.01 ? "%.1f %%" : "%.0f %%", 100 * probability);
    }
}
