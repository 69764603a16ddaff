package fayline.method.cure.reaction;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * How far a resin has reacted.
 *
 * @param degrees degree of cure at each time asked for; empty where the question is not covered
 * @param timeOfLevel when the level asked for is reached; empty where it is not reached by the last time or within the history
 * @param figure how it comes about
 * @param findings what must be said
 */
public record DegreeOfCureResult(
        List<Double> degrees, Optional<TimeSpan> timeOfLevel, Figure figure, List<Finding> findings) {
    /** Copies the lists. */
    public DegreeOfCureResult {
        degrees = List.copyOf(degrees);
        findings = List.copyOf(findings);
    }
}
