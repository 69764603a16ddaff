package fayline.method.fitup.frame.load;

import fayline.basis.finding.Finding;
import fayline.method.fitup.frame.Mechanism;
import fayline.method.fitup.frame.NodalField;
import java.util.List;
import java.util.Optional;

/**
 * How a frame moves.
 *
 * @param motion mm and rad; empty where the frame is a mechanism
 * @param reactions what the supports put on the frame, N and N mm; empty with the motion
 * @param mechanism what moves freely, where something does
 * @param findings what must be said
 */
public record FrameResult(
        Optional<NodalField> motion,
        Optional<NodalField> reactions,
        Optional<Mechanism> mechanism,
        List<Finding> findings) {
    /** Copies the list. */
    public FrameResult {
        findings = List.copyOf(findings);
    }
}
