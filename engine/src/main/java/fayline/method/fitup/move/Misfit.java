package fayline.method.fitup.move;

import java.util.List;

/**
 * A proof that no move brings all gaps inside: a sum of gaps that every move leaves alone, and that is too small or too large.
 *
 * @param partTooLarge whether the part is too large for the opening here, else too small
 * @param stations whose gaps are summed
 * @param weights how often each counts; 1 for two gaps that face away from each other
 * @param haveMm the sum as read
 * @param needMm the sum of the least gaps allowed, or of the most where the part is too small
 */
public record Misfit(boolean partTooLarge, List<String> stations, List<Double> weights, double haveMm, double needMm) {
    /** Keeps its own copies. */
    public Misfit {
        stations = List.copyOf(stations);
        weights = List.copyOf(weights);
    }

    /** By how much the sum misses, in mm; positive. */
    public double missingMm() {
        return Math.abs(needMm - haveMm);
    }
}
