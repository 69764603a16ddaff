package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What the whole bag of one part uses up; empty where it is not covered.
 *
 * @param peelPly peel ply
 * @param perforatedFilm perforated film
 * @param breather breather
 * @param film bag film with its pleats
 * @param tape sealant tape
 * @param tapeRolls rolls of tape
 * @param ports vacuum ports to set: one to about a square metre, two above; the gauge at the far end
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record BagStackResult(
        Optional<Area> peelPly,
        Optional<Area> perforatedFilm,
        Optional<Area> breather,
        Optional<Area> film,
        Optional<Length> tape,
        OptionalInt tapeRolls,
        OptionalInt ports,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public BagStackResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
