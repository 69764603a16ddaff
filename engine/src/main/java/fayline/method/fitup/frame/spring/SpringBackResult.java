package fayline.method.fitup.frame.spring;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.method.fitup.frame.Mechanism;
import java.util.List;
import java.util.Optional;

/**
 * What a clamped, bonded and released part does.
 *
 * @param status whether it could be reckoned
 * @param shape shapes and forces; empty where the status is not OK
 * @param mechanism what moves freely, where something does
 * @param figures how the main figures come about
 * @param findings what must be said
 */
public record SpringBackResult(
        Status status,
        Optional<SpringBackShape> shape,
        Optional<Mechanism> mechanism,
        List<Figure> figures,
        List<Finding> findings) {
    /** Copies the lists. */
    public SpringBackResult {
        figures = List.copyOf(figures);
        findings = List.copyOf(findings);
    }

    /** How the reckoning went. */
    public enum Status {
        /** Reckoned. */
        OK,
        /** Part or assembly is not held. */
        MECHANISM,
        /** Two clamps hold the same spot, or one follows from the others. */
        CLAMPS_NOT_INDEPENDENT,
        /** A clamp pulls where the fixture holds the part already. */
        CLAMP_ON_SUPPORT
    }
}
