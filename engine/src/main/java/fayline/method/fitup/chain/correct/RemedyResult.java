package fayline.method.fitup.chain.correct;

import fayline.method.fitup.Move;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Remedies side by side.
 *
 * @param outcomes those that bring every gap inside first, the cheapest first; then the others, the one of least largest
 *     deviation first. Two remedies together stand among them where they bring every gap inside, neither does alone, and no
 *     single one does for as little
 * @param before the largest weighted deviation as it is
 */
public record RemedyResult(List<Outcome> outcomes, double before) {
    /** Copies the list. */
    public RemedyResult {
        outcomes = List.copyOf(outcomes);
    }

    /**
     * What one remedy, or two together, reach.
     *
     * @param remedies the remedy, or the two in the order in which they were given
     * @param worstStation the station of largest weighted deviation; empty for a part made again
     * @param worstGapMm the gap there; the furthest expected one for a part made again
     * @param worstDeviation its weighted deviation from nominal
     * @param outside stations that stay outside
     * @param gapsMm what is reached, in order; the nominals for a part made again
     * @param offMm taken off at each station
     * @param onMm put on at each station
     * @param moves of each remedy that hangs the part again, in order
     */
    public record Outcome(
            List<Remedy> remedies,
            String worstStation,
            double worstGapMm,
            double worstDeviation,
            List<String> outside,
            List<Double> gapsMm,
            List<Double> offMm,
            List<Double> onMm,
            List<Move> moves) {
        /** Copies the lists. */
        public Outcome {
            remedies = List.copyOf(remedies);
            outside = List.copyOf(outside);
            gapsMm = List.copyOf(gapsMm);
            offMm = List.copyOf(offMm);
            onMm = List.copyOf(onMm);
            moves = List.copyOf(moves);
        }

        /** What is done, in words. */
        public String name() {
            return remedies.stream().map(Remedy::name).collect(Collectors.joining(" and "));
        }

        /** What it costs, in the shop's measure. */
        public double cost() {
            return remedies.stream().mapToDouble(Remedy::cost).sum();
        }

        /** Whether every gap comes inside. */
        public boolean fits() {
            return outside.isEmpty();
        }
    }
}
