package fayline.method.airfoil;

import fayline.basis.finding.Figure;
import fayline.basis.units.Area;
import fayline.basis.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A rib with its main measures.
 *
 * @param outline the outlines and findings
 * @param area area of the net outline less its holes
 * @param edge length of its outer edge
 * @param blankArea area of the sheet to cut, holes not taken off
 * @param height greatest height of the net outline
 * @param figures how the main figures come about
 */
public record RibResult(
        RibOutline outline,
        Optional<Area> area,
        Optional<Length> edge,
        Optional<Area> blankArea,
        Optional<Length> height,
        List<Figure> figures) {
    /** Copies the list. */
    public RibResult {
        figures = List.copyOf(figures);
    }
}
