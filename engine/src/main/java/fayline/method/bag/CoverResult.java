package fayline.method.bag;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Area;
import java.util.List;
import java.util.Optional;

/**
 * How much of a sheet covers a shape.
 *
 * @param area area with margin and surface factor; empty where it is not covered
 * @param figure how it comes about
 * @param findings what must be said
 */
public record CoverResult(Optional<Area> area, Optional<Figure> figure, List<Finding> findings) {
    /** Copies the list. */
    public CoverResult {
        findings = List.copyOf(findings);
    }
}
