package fayline.method.mix.batch;

import fayline.basis.finding.Figure;
import fayline.basis.finding.Finding;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import java.util.List;
import java.util.Optional;

/**
 * How large a batch may be; empty where not even a small one can be used up, or the question is not covered.
 *
 * @param largest the largest batch
 * @param potLife its pot life
 * @param rule what limits it
 * @param figure how it comes about
 * @param findings what must be said
 */
public record LargestBatchResult(
        Optional<Mass> largest,
        Optional<TimeSpan> potLife,
        Rule rule,
        Optional<Figure> figure,
        List<Finding> findings) {
    /** Copies the list. */
    public LargestBatchResult {
        findings = List.copyOf(findings);
    }

    /** What limits a batch. */
    public enum Rule {
        /** The pot life of the mass. */
        POT_LIFE,
        /** The working life of the film on the part, which does not depend on the mass. */
        FILM,
        /** The limit of the container. */
        CONTAINER,
        /** The largest mass for which the data sheet allows a pot life. */
        DATA_SHEET,
        /** Nothing fits. */
        NOTHING
    }
}
