package fayline.method.mix;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Mass;
import fayline.basis.units.Volume;
import java.util.List;
import java.util.Optional;

/**
 * How much adhesive a joint takes; empty where it is not covered.
 *
 * @param inJoint what stays in the joint
 * @param toWeigh what is weighed out, waste included
 * @param volume volume of what is weighed out
 * @param figure how it comes about
 * @param findings what must be said
 */
public record AdhesiveMassResult(
        Optional<Mass> inJoint,
        Optional<Mass> toWeigh,
        Optional<Volume> volume,
        Optional<Figure> figure,
        List<Finding> findings) {
    /** Copies the list. */
    public AdhesiveMassResult {
        findings = List.copyOf(findings);
    }
}
