package fayline.method.fitup.scheme;

import java.util.OptionalDouble;

/**
 * How well it is known what a state to come does to a gap. What it does itself is already in the limits of the rows.
 *
 * @param state the state, in words
 * @param deviationMm standard uncertainty of the change at a station, each station for itself; empty where not given
 */
public record LaterDoubt(String state, OptionalDouble deviationMm) {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException naming the state
     */
    public LaterDoubt {
        double u = deviationMm.orElse(0);
        if (!(u >= 0) || Double.isInfinite(u)) {
            throw new IllegalArgumentException("state " + state + " has an uncertainty of " + u);
        }
    }
}
