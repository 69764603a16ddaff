package fayline.method.fitup.space;

import fayline.method.fitup.Vector;
import fayline.method.fitup.move.BestMove;
import java.util.List;

/**
 * The question for the best move in space.
 *
 * @param readings gaps and flushes; at least one
 * @param pivot the pivot of every move in the answer, in mm
 * @param limits how far the part may be moved
 * @param uncertaintiesMm standard uncertainty of each reading, in their order; empty where not given
 * @param policy what to do about motions that no reading notices
 */
public record SpaceQuestion(
        List<SpaceReading> readings,
        Vector pivot,
        SpaceLimits limits,
        List<Double> uncertaintiesMm,
        BestMove.Policy policy) {
    /**
     * Keeps its own copies.
     *
     * @throws IllegalArgumentException if there is no reading, or the uncertainties do not match the readings or are not positive
     */
    public SpaceQuestion {
        readings = List.copyOf(readings);
        uncertaintiesMm = List.copyOf(uncertaintiesMm);
        if (readings.isEmpty()) {
            throw new IllegalArgumentException("no readings, so no move");
        }
        if (!uncertaintiesMm.isEmpty() && uncertaintiesMm.size() != readings.size()) {
            throw new IllegalArgumentException(
                    uncertaintiesMm.size() + " uncertainties for " + readings.size() + " readings");
        }
        for (double u : uncertaintiesMm) {
            if (!(u > 0) || Double.isInfinite(u)) {
                throw new IllegalArgumentException("a standard uncertainty of " + u + " mm");
            }
        }
    }

    /** Uncertainties not given, free motions left alone. */
    public static SpaceQuestion of(List<SpaceReading> readings, Vector pivot, SpaceLimits limits) {
        return new SpaceQuestion(readings, pivot, limits, List.of(), BestMove.Policy.MIN_NORM);
    }

    /** The same question with standard uncertainties of the readings. */
    public SpaceQuestion withUncertainties(List<Double> eachMm) {
        return new SpaceQuestion(readings, pivot, limits, eachMm, policy);
    }

    /** The same question for a move only where every motion is known. */
    public SpaceQuestion strict() {
        return new SpaceQuestion(readings, pivot, limits, uncertaintiesMm, BestMove.Policy.STRICT);
    }
}
