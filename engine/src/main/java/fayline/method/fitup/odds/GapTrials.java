package fayline.method.fitup.odds;

/**
 * The question how gaps are spread, answered by drawing trials of the whole fit.
 *
 * @param spread gaps and causes
 * @param leastTrials draw at least so many, even where the figures stand still sooner; zero for no more than needed
 * @param seed the same seed gives the same answer
 */
public record GapTrials(GapSpread spread, long leastTrials, long seed) {
    /** Most trials that may be asked for. */
    public static final long MOST_TRIALS = 2_000_000;

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is negative or more than {@link #MOST_TRIALS}
     */
    public GapTrials {
        if (leastTrials < 0 || leastTrials > MOST_TRIALS) {
            throw new IllegalArgumentException("trials " + leastTrials + " are not from 0 to " + MOST_TRIALS);
        }
    }
}
