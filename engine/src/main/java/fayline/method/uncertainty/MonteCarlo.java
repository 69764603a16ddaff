package fayline.method.uncertainty;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The question how a result is spread, answered by drawing trials.
 *
 * @param formula how the result follows; its names are those of the inputs in order
 * @param inputs what is drawn
 * @param coverage the part of the values that the interval is to hold; above 0 and at most 0.9999
 * @param interval which interval must settle
 * @param significantDigits of the standard uncertainty: 1 or 2
 * @param lower least value allowed, where the chance of staying inside is asked
 * @param upper most value allowed, where it is asked
 * @param seed the same seed gives the same answer
 */
public record MonteCarlo(
        Formula formula,
        List<Draw> inputs,
        double coverage,
        Interval interval,
        int significantDigits,
        OptionalDouble lower,
        OptionalDouble upper,
        long seed) {
    /** The coverage where none is given. */
    public static final double USUAL_COVERAGE = 0.95;

    private static final double MOST_COVERAGE = 0.9999;

    /** Which interval of those that hold the coverage. */
    public enum Interval {
        /** As much probability above as below. */
        SYMMETRIC,
        /** The narrowest. */
        SHORTEST
    }

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a number is out of range or the formula is over other names than the inputs
     */
    public MonteCarlo {
        inputs = List.copyOf(inputs);
        List<String> names = inputs.stream().flatMap(i -> i.names().stream()).toList();
        if (!formula.names().equals(names)) {
            throw new IllegalArgumentException("the formula is over " + formula.names() + ", the inputs are " + names);
        }
        if (!(coverage > 0 && coverage <= MOST_COVERAGE)) {
            throw new IllegalArgumentException("coverage " + coverage + " is not above 0 and at most " + MOST_COVERAGE);
        }
        if (significantDigits < 1 || significantDigits > 2) {
            throw new IllegalArgumentException("significant digits " + significantDigits + ", not 1 or 2");
        }
        if (lower.isPresent() && upper.isPresent() && !(lower.getAsDouble() <= upper.getAsDouble())) {
            throw new IllegalArgumentException(
                    "limits stand the wrong way round: " + lower.getAsDouble() + " to " + upper.getAsDouble());
        }
    }

    /** The usual question: symmetric interval of 95 %, two digits, no limits. */
    public static MonteCarlo of(Formula formula, List<Draw> inputs, long seed) {
        return new MonteCarlo(
                formula,
                inputs,
                USUAL_COVERAGE,
                Interval.SYMMETRIC,
                2,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                seed);
    }

    /** The same question with limits. */
    public MonteCarlo within(double least, double most) {
        return new MonteCarlo(
                formula,
                inputs,
                coverage,
                interval,
                significantDigits,
                OptionalDouble.of(least),
                OptionalDouble.of(most),
                seed);
    }
}
