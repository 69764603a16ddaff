package fayline.method.fitup.shim;

import fayline.basis.finding.Finding;
import fayline.method.fitup.Move;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The shims.
 *
 * @param exactMm what must be filled at each point; negative where the stop is in the way
 * @param condition largest over smallest singular value of the points' rows, turns counted at their rms distance from the pivot; below 10
 *     is good
 * @param flags what is wrong
 * @param free a motion the points leave free, where they do
 * @param best the best choice from stock, all points together
 * @param rounded each point rounded by itself, for comparison
 * @param findings what is to be said
 */
public record ShimResult(
        List<Double> exactMm,
        double condition,
        Set<ShimFlag> flags,
        Optional<Move> free,
        Optional<Choice> best,
        Optional<Choice> rounded,
        List<Finding> findings) {
    /** Copies the collections. */
    public ShimResult {
        exactMm = List.copyOf(exactMm);
        flags = Set.copyOf(flags);
        findings = List.copyOf(findings);
    }

    /**
     * Stacks and where they leave the part.
     *
     * @param stacks one per point
     * @param worstDeviation largest weight times distance of a gap from its nominal
     * @param move where the part then is
     * @param gapsMm the gaps then
     * @param unique whether no other choice is as good
     * @param complete whether every combination was tried; with more than six points only step by step
     */
    public record Choice(
            List<ShimStack> stacks,
            double worstDeviation,
            Move move,
            List<Double> gapsMm,
            boolean unique,
            boolean complete) {
        /** Copies the lists. */
        public Choice {
            stacks = List.copyOf(stacks);
            gapsMm = List.copyOf(gapsMm);
        }
    }
}
