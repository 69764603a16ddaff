package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.List;

/**
 * A closed line of points traced from the part or read from a drawing.
 *
 * @param points at least three, in order; the last joins the first
 * @param corners which points are corners, by their place in the list counted from 0, rising; empty for a smooth line. An
 *     edge runs from each corner to the next, and a direction is never fitted across one
 */
public record TracedLine(List<Spot> points, List<Integer> corners) implements OutlineShape {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are fewer than three points, or a corner is no point or out of order
     */
    public TracedLine {
        points = List.copyOf(points);
        corners = List.copyOf(corners);
        if (points.size() < 3) {
            throw new IllegalArgumentException("an outline needs three points, not " + points.size());
        }
        int last = -1;
        for (int c : corners) {
            if (c <= last || c >= points.size()) {
                throw new IllegalArgumentException(
                        "point " + c + " cannot be a corner here: corners rise from 0 to " + (points.size() - 1));
            }
            last = c;
        }
    }

    /** A smooth line without corners. */
    public static TracedLine smooth(List<Spot> points) {
        return new TracedLine(points, List.of());
    }
}
