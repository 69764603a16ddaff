package fayline.app.usecase.view;

/**
 * How a plan came about.
 *
 * @param kind by which means
 * @param effortS the limit of the search, in the solver's deterministic seconds; zero where none was made
 * @param seed what was chosen by chance
 */
public record PlanOrigin(Kind kind, double effortS, int seed) {
    /** Chain by chain, without a search. */
    public static final PlanOrigin SERIAL = new PlanOrigin(Kind.SERIAL, 0, 0);

    /** By which means. */
    public enum Kind {
        /** Chain by chain, without a search. */
        SERIAL,
        /** By a search that is still under way. */
        SEARCHING,
        /** By a search that went to its limit: the same seed and limit give it again. */
        SEARCHED,
        /** By a search that somebody stopped. */
        STOPPED_BY_HAND,
        /** By a search that ran out of time on the clock. */
        STOPPED_BY_CLOCK,
        /** By a search that could not go on. */
        BROKEN_OFF
    }

    /** The whole in a sentence. */
    public String words() {
        String limits = String.format(java.util.Locale.ROOT, "effort %s, seed %d", plain(effortS), seed);
        return switch (kind) {
            case SERIAL -> "Put together chain by chain.";
            case SEARCHING -> "Best so far of a search that is still under way (" + limits + ").";
            case SEARCHED -> "Best of a search to its limit (" + limits + "); the same again gives the same plan.";
            case STOPPED_BY_HAND ->
                "Best of a search that was stopped by hand (" + limits + "); the same again need not give it.";
            case STOPPED_BY_CLOCK ->
                "Best of a search that the clock stopped (" + limits + "); the same again need not give it.";
            case BROKEN_OFF -> "Best of a search that broke off (" + limits + "); the same again need not give it.";
        };
    }

    private static String plain(double v) {
        return v == Math.rint(v) ? Long.toString(Math.round(v)) : Double.toString(v);
    }
}
