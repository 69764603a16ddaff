package fayline.flow.project.fit;

import fayline.method.fitup.trim.cut.CutSide;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What may be cut.
 *
 * @param edges the edges that may be, the one to cut first at its head; all where empty
 * @param mostMm the deepest cut, where there is a limit
 * @param from part or neighbour
 * @param leaveOnMm what to leave on at the first cut; the usual where empty
 * @param forbidden whether nothing may be cut
 */
public record FitCutting(
        List<String> edges, OptionalDouble mostMm, CutSide from, OptionalDouble leaveOnMm, boolean forbidden) {
    /** Every edge of the part, to any depth. */
    public static final FitCutting ANY =
            new FitCutting(List.of(), OptionalDouble.empty(), CutSide.PART, OptionalDouble.empty(), false);

    /** Copies the list. */
    public FitCutting {
        edges = List.copyOf(edges);
    }
}
