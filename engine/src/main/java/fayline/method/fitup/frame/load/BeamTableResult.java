package fayline.method.fitup.frame.load;

import fayline.basis.finding.Figure;
import java.util.List;

/**
 * How far the beam bends under the force, along the force.
 *
 * @param cantileverTipMm tip of a beam held fast at one end
 * @param cantileverTipRad turn of that tip
 * @param simplySupportedCentreMm middle, both ends free to turn
 * @param fixedFixedCentreMm middle, both ends held fast
 * @param proppedCentreMm middle, one end held fast, the other free to turn
 * @param figures how the figures come about
 */
public record BeamTableResult(
        double cantileverTipMm,
        double cantileverTipRad,
        double simplySupportedCentreMm,
        double fixedFixedCentreMm,
        double proppedCentreMm,
        List<Figure> figures) {
    /** Copies the list. */
    public BeamTableResult {
        figures = List.copyOf(figures);
    }
}
