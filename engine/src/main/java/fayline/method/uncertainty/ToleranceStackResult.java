package fayline.method.uncertainty;

import java.util.List;

/**
 * What a stack comes to.
 *
 * @param nominal sum of the nominals
 * @param mean sum of the middles of the tolerances
 * @param worstCase half the range with every dimension at its worst end
 * @param rss root of the sum of squares of the half tolerances: half the range that is hardly ever left if dimensions are
 *     independent and centred
 * @param inflatedRss the same, widened for dimensions that are not centred
 * @param lower least with every dimension at its worst end
 * @param upper most with every dimension at its worst end
 * @param shares part of the variance that each dimension brings, in the order of the dimensions; they sum to one, or are all
 *     zero where nothing varies
 */
public record ToleranceStackResult(
        double nominal,
        double mean,
        double worstCase,
        double rss,
        double inflatedRss,
        double lower,
        double upper,
        List<Double> shares) {
    /** Copies the list. */
    public ToleranceStackResult {
        shares = List.copyOf(shares);
    }
}
