package fayline.method.allowable;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What tests of a few pieces allow.
 *
 * @param meanPa mean strength
 * @param deviationPa standard deviation
 * @param factor standard deviations below the mean; empty under the least number of pieces
 * @param allowedPa the lower bound; empty where none can be given
 * @param findings what must be said; a stop where there is no bound
 */
public record AllowableResult(
        double meanPa, double deviationPa, OptionalDouble factor, OptionalDouble allowedPa, List<Finding> findings) {
    /** Copies the list. */
    public AllowableResult {
        findings = List.copyOf(findings);
    }
}
