package fayline.method.uncertainty;

import fayline.basis.finding.Finding;
import java.util.List;

/**
 * Results with their uncertainties.
 *
 * @param results in the order in which they were asked
 * @param correlations between results: row by row, ones on the diagonal, zero beside a result that has no uncertainty
 * @param findings what must be said
 */
public record FirstOrderResult(List<Outcome> results, List<List<Double>> correlations, List<Finding> findings) {
    /** Copies the lists. */
    public FirstOrderResult {
        results = List.copyOf(results);
        correlations = correlations.stream().map(List::copyOf).toList();
        findings = List.copyOf(findings);
    }

    /**
     * One result.
     *
     * @param name its name
     * @param value its best value
     * @param standardUncertainty its standard uncertainty
     * @param components what each input brings, in the order of the inputs
     */
    public record Outcome(String name, double value, double standardUncertainty, List<Component> components) {
        /** Copies the list. */
        public Outcome {
            components = List.copyOf(components);
        }
    }

    /**
     * What one input brings to a result.
     *
     * @param input its name
     * @param sensitivity how much the result changes for one unit of the input; zero where the input is exact
     * @param standardUncertainty the size of the sensitivity times the input's standard uncertainty
     */
    public record Component(String input, double sensitivity, double standardUncertainty) {}
}
