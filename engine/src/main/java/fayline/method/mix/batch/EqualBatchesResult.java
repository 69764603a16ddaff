package fayline.method.mix.batch;

import fayline.basis.finding.Finding;
import fayline.basis.units.Mass;
import java.util.List;
import java.util.Optional;

/**
 * Equal batches.
 *
 * @param batches their number; 0 where nothing is to be mixed or the question is not covered
 * @param each the mass of one
 * @param findings what must be said
 */
public record EqualBatchesResult(int batches, Optional<Mass> each, List<Finding> findings) {
    /** Copies the list. */
    public EqualBatchesResult {
        findings = List.copyOf(findings);
    }
}
