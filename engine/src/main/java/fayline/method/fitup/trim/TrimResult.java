package fayline.method.fitup.trim;

import fayline.basis.finding.Finding;
import fayline.method.fitup.SpaceMove;
import java.util.List;
import java.util.Optional;

/**
 * The least trim.
 *
 * @param status whether it fits
 * @param cut what to cut, unless infeasible
 * @param withoutCaps where infeasible: what would have to be cut if every edge could be, if that helps
 * @param buildUp where infeasible: the least to add
 * @param findings what is to be said
 */
public record TrimResult(
        TrimStatus status,
        Optional<Cut> cut,
        Optional<Cut> withoutCaps,
        Optional<BuildUp> buildUp,
        List<Finding> findings) {
    /** Copies the list. */
    public TrimResult {
        findings = List.copyOf(findings);
    }

    /**
     * Depths and the move that belongs to them.
     *
     * @param areaMm2 sum of tributary length times depth
     * @param unique whether every way to cut no more has these depths, within 1e-4 mm
     * @param depthsMm one per row
     * @param edges the edges that are cut
     * @param move the move that goes with it; of a flat part it lies in the plane
     * @param gapsMm gap at each row after move and cut, exact in the turn
     * @param linearisationMm largest difference of the gaps to the first-order ones
     */
    public record Cut(
            double areaMm2,
            boolean unique,
            List<Double> depthsMm,
            List<String> edges,
            SpaceMove move,
            List<Double> gapsMm,
            double linearisationMm) {
        /** Copies the lists. */
        public Cut {
            depthsMm = List.copyOf(depthsMm);
            edges = List.copyOf(edges);
            gapsMm = List.copyOf(gapsMm);
        }

        /** The deepest cut, in mm. */
        public double deepestMm() {
            return depthsMm.stream().mapToDouble(d -> d).max().orElse(0);
        }
    }

    /**
     * Material to add where the opening is too large, and the least trim that is then still needed.
     *
     * @param areaMm2 sum of tributary length times height added
     * @param trimAreaMm2 sum of tributary length times depth cut
     * @param heightsMm added at each row
     * @param depthsMm cut at each row
     * @param move the move that goes with it; of a flat part it lies in the plane
     */
    public record BuildUp(
            double areaMm2, double trimAreaMm2, List<Double> heightsMm, List<Double> depthsMm, SpaceMove move) {
        /** Copies the lists. */
        public BuildUp {
            heightsMm = List.copyOf(heightsMm);
            depthsMm = List.copyOf(depthsMm);
        }
    }
}
