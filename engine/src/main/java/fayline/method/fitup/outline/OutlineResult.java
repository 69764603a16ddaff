package fayline.method.fitup.outline;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The edge drawn, or why it could not be.
 *
 * @param status how it went
 * @param outline the drawn edge where the status is OK
 * @param corner the corner at fault as the caller counts them, from 1
 * @param reversed whether the line was given clockwise and has been turned round; corner 1 stays corner 1
 * @param findings what is to be said
 */
public record OutlineResult(
        OutlineStatus status,
        Optional<PartOutline> outline,
        OptionalInt corner,
        boolean reversed,
        List<Finding> findings) {
    /** Copies the list. */
    public OutlineResult {
        findings = List.copyOf(findings);
    }
}
