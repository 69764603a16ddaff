package fayline.method.fitup.outline;

import fayline.method.fitup.Spot;
import java.util.List;

/**
 * A polygon with a blend radius at each corner.
 *
 * @param corners at least three, in order; the last joins the first
 * @param radiiMm one radius per corner; 0 for a sharp one
 */
public record RoundedPolygon(List<Spot> corners, List<Double> radiiMm) implements OutlineShape {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if there are fewer than three corners, or not one radius of 0 or more per corner
     */
    public RoundedPolygon {
        corners = List.copyOf(corners);
        radiiMm = List.copyOf(radiiMm);
        if (corners.size() < 3) {
            throw new IllegalArgumentException("an outline needs three corners, not " + corners.size());
        }
        if (radiiMm.size() != corners.size()) {
            throw new IllegalArgumentException(
                    radiiMm.size() + " radii for " + corners.size() + " corners: one each is needed");
        }
        for (double r : radiiMm) {
            if (!(r >= 0) || Double.isInfinite(r)) {
                throw new IllegalArgumentException("a corner cannot have the radius " + r + " mm");
            }
        }
    }
}
