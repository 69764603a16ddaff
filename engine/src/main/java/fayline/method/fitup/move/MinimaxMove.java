package fayline.method.fitup.move;

import fayline.method.fitup.Move;
import java.util.List;

/**
 * The move of smallest worst deviation; among equals the one of least squares, then the least.
 *
 * @param worstDeviation the largest weight times distance from nominal, in mm where weights are one
 * @param unique whether no other move reaches it (within 1e-4 mm)
 * @param play over how far dx, dy and turn may each range without losing it
 * @param move the move
 * @param gapsMm gaps after it, straight lines, in the order of the rows
 * @param exactGapsMm gaps of the rigid part
 * @param deciding the stations that decide it
 * @param holding the limits that hold it
 * @param straightErrorMm largest difference between straight lines and rigid part at the first solution
 * @param rounds how often it was straightened anew; 0 where the first solution was good
 * @param still whether the move came to rest
 */
public record MinimaxMove(
        double worstDeviation,
        boolean unique,
        Move play,
        Move move,
        List<Double> gapsMm,
        List<Double> exactGapsMm,
        List<Deciding> deciding,
        List<Holding> holding,
        double straightErrorMm,
        int rounds,
        boolean still) {
    /** Keeps its own copies. */
    public MinimaxMove {
        gapsMm = List.copyOf(gapsMm);
        exactGapsMm = List.copyOf(exactGapsMm);
        deciding = List.copyOf(deciding);
        holding = List.copyOf(holding);
    }

    /**
     * A station that decides the worst deviation: read it again before the move is trusted.
     *
     * @param station its id
     * @param tight whether its gap ends below nominal, else above
     * @param share how much the worst deviation falls per (weighted) mm given to this station; all shares sum to one
     */
    public record Deciding(String station, boolean tight, double share) {}

    /**
     * A limit that holds the move.
     *
     * @param what which
     * @param station the station of a minimum gap, empty for a limit of the move
     * @param most whether the upper limit
     * @param price how much the worst deviation falls per mm (turn: per mm at the scale length) the limit is eased
     */
    public record Holding(Limit what, String station, boolean most, double price) {}

    /** A kind of limit. */
    public enum Limit {
        /** The shift along x. */
        SHIFT_X,
        /** The shift along y. */
        SHIFT_Y,
        /** The turn. */
        TURN,
        /** A gap that must never be undercut. */
        MINIMUM_GAP
    }
}
