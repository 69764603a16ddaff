package fayline.method.uncertainty;

import fayline.basis.finding.Finding;
import java.util.List;
import java.util.Optional;

/**
 * How a result is spread.
 *
 * @param estimate mean of the trials
 * @param standardUncertainty their standard deviation
 * @param symmetric the interval with as much probability above as below
 * @param shortest the narrowest interval
 * @param inside the chance to stay inside the limits, where limits were given
 * @param blocks how many blocks were drawn
 * @param trials how many trials in all
 * @param seed what they were drawn from
 * @param settled whether mean, standard deviation and interval ends stand still to the digits asked
 * @param findings what must be said
 */
public record MonteCarloResult(
        double estimate,
        double standardUncertainty,
        Span symmetric,
        Span shortest,
        Optional<Chance> inside,
        int blocks,
        long trials,
        long seed,
        boolean settled,
        List<Finding> findings) {
    /** Copies the list. */
    public MonteCarloResult {
        findings = List.copyOf(findings);
    }

    /**
     * An interval.
     *
     * @param low lower end
     * @param high upper end
     */
    public record Span(double low, double high) {}
}
