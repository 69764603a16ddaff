package fayline.method.uncertainty;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Results that follow from inputs with small uncertainties.
 *
 * @param inputs what is known
 * @param correlations between inputs; none where they are independent
 * @param results the results asked, their formulas over the names of the inputs in order
 */
public record FirstOrder(List<Input> inputs, List<Correlation> correlations, List<Result> results) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a name is given twice, a formula is over other names, or a correlation names no
     *     input or the same one twice
     */
    public FirstOrder {
        inputs = List.copyOf(inputs);
        correlations = List.copyOf(correlations);
        results = List.copyOf(results);
        List<String> names = inputs.stream().map(Input::name).toList();
        Set<String> once = new HashSet<>();
        for (String n : names) {
            if (!once.add(n)) {
                throw new IllegalArgumentException("input " + n + " is given twice");
            }
        }
        for (Result r : results) {
            if (!r.formula().names().equals(names)) {
                throw new IllegalArgumentException(
                        "the formula of " + r.name() + " is over " + r.formula().names());
            }
        }
        for (Correlation c : correlations) {
            if (!once.contains(c.one()) || !once.contains(c.other()) || c.one().equals(c.other())) {
                throw new IllegalArgumentException("no correlation of " + c.one() + " with " + c.other());
            }
        }
    }

    /**
     * One input.
     *
     * @param name its name
     * @param value its best value
     * @param parts what its uncertainty is made of, independent of each other; none where it is exact. Their means are not
     *     added to the value.
     */
    public record Input(String name, double value, List<Distribution> parts) {
        /** Copies the list. */
        public Input {
            parts = List.copyOf(parts);
        }

        /** The standard uncertainty: root of the sum of the squares of the parts. */
        public double standardUncertainty() {
            return Math.sqrt(parts.stream()
                    .mapToDouble(p -> p.standardDeviation() * p.standardDeviation())
                    .sum());
        }
    }

    /**
     * How two inputs go together.
     *
     * @param one an input
     * @param other another
     * @param coefficient from -1 to 1
     */
    public record Correlation(String one, String other, double coefficient) {
        /** Checks the coefficient. */
        public Correlation {
            if (!(Math.abs(coefficient) <= 1)) {
                throw new IllegalArgumentException(
                        "a correlation of " + coefficient + " between " + one + " and " + other);
            }
        }
    }

    /**
     * One result asked.
     *
     * @param name its name
     * @param formula how it follows
     */
    public record Result(String name, Formula formula) {}
}
