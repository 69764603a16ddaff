package fayline.method.fitup.aim;

/** What a move is to be best at. */
public enum Aim {
    /** The worst weighted distance from nominal is smallest; among equals the move of least squares, then the least. */
    WORST,
    /** The sum of squares of the weighted distances from nominal is smallest. */
    EVEN,
    /** Every reading is as far inside its limits as can be; among equals the least move. */
    INSIDE,
    /** The least move that brings every reading inside its limits, by a guard. */
    LEAST
}
