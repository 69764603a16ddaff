package fayline.method.fitup.after;

import fayline.method.fitup.Move;

/**
 * The move that nobody meant, as the gaps tell it.
 *
 * @param move the move that best explains measured less predicted gaps
 * @param covariance how well it is known
 */
public record FittedMove(Move move, MoveCovariance covariance) {}
