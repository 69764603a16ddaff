package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Tape and film of a bag; empty where it is not covered or no roll length is given.
 *
 * @param tape length of tape, spare included
 * @param rolls rolls of tape
 * @param filmLength length of the bag film
 * @param filmWidth width of the bag film
 * @param filmArea its area
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record BagEdgeResult(
        Optional<Length> tape,
        OptionalInt rolls,
        Optional<Length> filmLength,
        Optional<Length> filmWidth,
        Optional<Area> filmArea,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public BagEdgeResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }
}
