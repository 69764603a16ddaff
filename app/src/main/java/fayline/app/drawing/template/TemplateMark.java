package fayline.app.drawing.template;

import fayline.basis.finding.Phrase;
import fayline.basis.units.Amount;
import fayline.basis.units.UnitSystem;
import fayline.method.fitup.Station;
import fayline.method.fitup.trim.cut.CutSide;

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
    public String words(UnitSystem units) {
        if (depthMm <= NOTHING_MM) {
            return place.id() + ": no cut";
        }
        return Phrase.of("%s: %s, first %s", place.id(), Amount.mm(depthMm, 1), Amount.bareMm(firstMm, 1))
                .in(units);
    }
}
