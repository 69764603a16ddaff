package fayline.method.fitup.shim;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import java.util.List;
import java.util.Optional;

/**
 * What holds the part at a move.
 *
 * @param points the index points, at least one
 * @param move the move wanted
 * @param pivot its pivot
 * @param stock the pieces at hand; empty where only thicknesses are asked
 * @param rows the stations whose gaps judge a choice from stock
 */
public record ShimQuestion(
        List<IndexPoint> points, Move move, Spot pivot, Optional<ShimStock> stock, List<FitRow> rows) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there is no index point
     */
    public ShimQuestion {
        points = List.copyOf(points);
        rows = List.copyOf(rows);
        if (points.isEmpty()) {
            throw new IllegalArgumentException("no index points to shim");
        }
    }
}
