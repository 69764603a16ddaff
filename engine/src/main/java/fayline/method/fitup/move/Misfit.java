package fayline.method.fitup.move;

import java.util.List;
import java.util.stream.IntStream;

/**
 * A proof that no move brings all readings inside: a sum of readings that every move leaves alone, and that is too small or too
 * large.
 *
 * @param partTooLarge whether the sum is too small, so the part is too large for the opening here; else too small
 * @param flush whether a flush is among them, so that the size of the part alone may not be the trouble
 * @param stations whose readings are summed; a flush with "flush" behind its mark
 * @param valuesMm what they read
 * @param weights how often each counts; 1 for two gaps that face away from each other; negative for one that is too large beside
 *     others that are too small
 * @param haveMm the sum as read
 * @param needMm the sum of the least gaps allowed, or of the most where the part is too small
 */
public record Misfit(
        boolean partTooLarge,
        boolean flush,
        List<String> stations,
        List<Double> valuesMm,
        List<Double> weights,
        double haveMm,
        double needMm) {
    /** Keeps its own copies. */
    public Misfit {
        stations = List.copyOf(stations);
        valuesMm = List.copyOf(valuesMm);
        weights = List.copyOf(weights);
    }

    /** Whether some are too small beside others that are too large: then the shapes differ, not the size alone. */
    public boolean shape() {
        return weights.stream().anyMatch(w -> w < 0);
    }

    /** Those that count for or against. */
    public List<String> counting(boolean against) {
        return IntStream.range(0, stations.size())
                .filter(i -> weights.get(i) < 0 == against)
                .mapToObj(stations::get)
                .toList();
    }

    /** By how much the sum misses, in mm; positive. */
    public double missingMm() {
        return Math.abs(needMm - haveMm);
    }
}
