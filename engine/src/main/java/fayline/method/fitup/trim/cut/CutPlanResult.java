package fayline.method.fitup.trim.cut;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import java.util.List;

/**
 * The cuts to make.
 *
 * @param lines one or more per edge that is cut, in the order of the edges
 * @param areaMm2 what they take off in all
 * @param words what to tell the builder
 * @param findings what is to be said beside
 */
public record CutPlanResult(List<CutLine> lines, double areaMm2, Phrase words, List<Finding> findings) {
    /** Copies the lists. */
    public CutPlanResult {
        lines = List.copyOf(lines);
        findings = List.copyOf(findings);
    }
}
