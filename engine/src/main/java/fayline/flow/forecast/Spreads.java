package fayline.flow.forecast;

import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far times and deliveries may be off.
 *
 * @param kinds standard deviation of the logarithm of each kind of work's rate, all steps of the kind alike
 * @param otherKinds the same for kinds not listed
 * @param scatter standard deviation of the logarithm of one step's time about its kind's
 * @param deliveries for each delivery the days between which it comes, each as likely as the other
 */
public record Spreads(Map<String, Double> kinds, double otherKinds, double scatter, Map<String, Between> deliveries) {
    /** Copies the maps. */
    public Spreads {
        kinds = Map.copyOf(kinds);
        deliveries = java.util.Collections.unmodifiableMap(new TreeMap<>(deliveries));
    }

    /**
     * A span in which something comes.
     *
     * @param from earliest
     * @param to latest
     * @param assumed whether nobody said so and the program assumes it
     */
    public record Between(Instant from, Instant to, boolean assumed) {}
}
