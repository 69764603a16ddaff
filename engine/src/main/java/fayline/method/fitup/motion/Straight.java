package fayline.method.fitup.motion;

/**
 * Readings as straight-line functions of a move of kind M, straight about no move or about one that is known.
 *
 * @param <S> the kind itself
 * @param <M> the kind of move
 */
public interface Straight<S, M> {
    /** The same readings, straight about a move. */
    S about(M known);

    /** The largest difference between straight lines and rigid part at a move, in mm. */
    double errorMm(M move);

    /** Whether two moves differ by less than 1e-4 mm and 1e-5 degrees. */
    boolean still(M before, M after);
}
