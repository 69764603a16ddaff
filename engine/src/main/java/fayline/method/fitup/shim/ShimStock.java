package fayline.method.fitup.shim;

import java.util.List;

/**
 * The pieces on the shelf; any may be used again and again.
 *
 * @param piecesMm thicknesses
 * @param mostPieces the most pieces in one stack
 * @param tapeMm adhesive tape that goes on each stack and adds its thickness; 0 for none
 */
public record ShimStock(List<Double> piecesMm, int mostPieces, double tapeMm) {
    private static final int MOST_PIECES = 12;
    private static final int MOST_KINDS = 60;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if a thickness is not positive, or there are more pieces or kinds than can be tried
     */
    public ShimStock {
        piecesMm = List.copyOf(piecesMm);
        for (double p : piecesMm) {
            if (!(p > 0) || Double.isInfinite(p)) {
                throw new IllegalArgumentException("a shim of " + p + " mm");
            }
        }
        if (mostPieces < 0 || mostPieces > MOST_PIECES || piecesMm.size() > MOST_KINDS) {
            throw new IllegalArgumentException(mostPieces + " pieces of " + piecesMm.size() + " kinds: at most "
                    + MOST_PIECES + " of " + MOST_KINDS);
        }
        if (!(tapeMm >= 0) || Double.isInfinite(tapeMm)) {
            throw new IllegalArgumentException("tape of " + tapeMm + " mm");
        }
    }
}
