package fayline.method.fitup.move;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;

/**
 * The question for the best move.
 *
 * @param rows what is known and wanted at each station; at least one
 * @param pivot the pivot of every move in the answer
 * @param limits how far the part may be moved
 * @param uncertaintiesMm standard uncertainty of each reading, in the order of the rows; empty where not given
 * @param policy what to do about motions that no station notices
 */
public record BestMove(List<FitRow> rows, Spot pivot, MoveLimits limits, List<Double> uncertaintiesMm, Policy policy) {
    /** What to do about motions that no station notices. */
    public enum Policy {
        /** Leave them alone and say so. */
        MIN_NORM,
        /** Give no move. */
        STRICT
    }

    /**
     * Keeps its own copies.
     *
     * @throws IllegalArgumentException if there is no row, or the uncertainties do not match the rows or are not positive
     */
    public BestMove {
        rows = List.copyOf(rows);
        uncertaintiesMm = List.copyOf(uncertaintiesMm);
        if (rows.isEmpty()) {
            throw new IllegalArgumentException("no stations, so no move");
        }
        if (!uncertaintiesMm.isEmpty() && uncertaintiesMm.size() != rows.size()) {
            throw new IllegalArgumentException(
                    uncertaintiesMm.size() + " uncertainties for " + rows.size() + " stations");
        }
        for (double u : uncertaintiesMm) {
            if (!(u > 0) || Double.isInfinite(u)) {
                throw new IllegalArgumentException("a standard uncertainty of " + u + " mm");
            }
        }
    }

    /** About the middle of the stations, uncertainties not given, free motions left alone. */
    public static BestMove of(List<FitRow> rows, MoveLimits limits) {
        Spot middle = Station.middle(rows.stream().map(FitRow::station).toList());
        return new BestMove(rows, middle, limits, List.of(), Policy.MIN_NORM);
    }

    /** The same question about another pivot. */
    public BestMove about(Spot other) {
        return new BestMove(rows, other, limits, uncertaintiesMm, policy);
    }

    /** The same question with standard uncertainties of the readings. */
    public BestMove withUncertainties(List<Double> eachMm) {
        return new BestMove(rows, pivot, limits, eachMm, policy);
    }
}
