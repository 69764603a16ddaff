package fayline.app.drawing.template;

import fayline.method.fitup.Station;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.Locale;

/**
 * A marked place on a template.
 *
 * @param place where on the part's edge, with the normal outwards
 * @param isStation whether it is a station; else the end of a cut
 * @param side what is cut there
 * @param depthMm how deep in the end; 0 where nothing is cut
 * @param firstMm how deep at first
 */
public record TemplateMark(Station place, boolean isStation, CutSide side, double depthMm, double firstMm) {
    private static final double NOTHING_MM = 1e-6;

    /** What stands beside the mark, as {@code S3: 1.2 mm, first 0.9}. */
    public String words() {
        if (depthMm <= NOTHING_MM) {
            return place.id() + ": no cut";
        }
        return String.format(Locale.ROOT, "%s: %.1f mm, first %.1f", place.id(), depthMm, firstMm);
    }
}
