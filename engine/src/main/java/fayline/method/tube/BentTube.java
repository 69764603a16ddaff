package fayline.method.tube;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import java.util.List;
import java.util.Optional;

/**
 * What comes of a route.
 *
 * @param table the bender's numbers; empty where the route has none
 * @param shortM by how much the worst straight is too short, in metres; 0 where none is
 * @param findings what is wrong with it, and what was left out
 */
public record BentTube(Optional<BendTable> table, double shortM, List<Finding> findings) {
    /** Copies the list. */
    public BentTube {
        findings = List.copyOf(findings);
    }

    /** Whether it can be bent. */
    public boolean isFeasible() {
        return findings.stream().noneMatch(f -> f.severity() == Severity.STOP);
    }
}
