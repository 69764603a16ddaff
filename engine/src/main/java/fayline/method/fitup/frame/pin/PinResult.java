package fayline.method.fitup.frame.pin;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * What the release does to all pins.
 *
 * @param pins in order
 * @param findings what must be said
 */
public record PinResult(List<PinShift> pins, List<Finding> findings) {
    /** Copies the lists. */
    public PinResult {
        pins = List.copyOf(pins);
        findings = List.copyOf(findings);
    }
}
