package fayline.method.fitup.chain.correct;

import fayline.method.fitup.Move;
import java.util.List;
import java.util.Optional;

/**
 * Remedies side by side.
 *
 * @param outcomes those that bring every gap inside first, the cheapest first; then the others, the one of least largest
 *     deviation first
 * @param before the largest weighted deviation as it is
 */
public record RemedyResult(List<Outcome> outcomes, double before) {
    /** Copies the list. */
    public RemedyResult {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * What one remedy reaches.
     *
     * @param name the remedy
     * @param kind its sort
     * @param cost what it costs
     * @param worstStation the station of largest weighted deviation; empty for a part made again
     * @param worstGapMm the gap there; the furthest expected one for a part made again
     * @param worstDeviation its weighted deviation from nominal
     * @param outside stations that stay outside
     * @param gapsMm what is reached, in order; the nominals for a part made again
     * @param offMm taken off at each station
     * @param onMm put on at each station
     * @param move of the part hung again
     */
    public record Outcome(
            String name,
            Remedy.Kind kind,
            double cost,
            String worstStation,
            double worstGapMm,
            double worstDeviation,
            List<String> outside,
            List<Double> gapsMm,
            List<Double> offMm,
            List<Double> onMm,
            Optional<Move> move) {
        /** Copies the lists. */
        public Outcome {
            outside = List.copyOf(outside);
            gapsMm = List.copyOf(gapsMm);
            offMm = List.copyOf(offMm);
            onMm = List.copyOf(onMm);
        }

        /** Whether every gap comes inside. */
        public boolean fits() {
            return outside.isEmpty();
        }
    }
}
