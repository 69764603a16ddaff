/**
 * The best rigid move of a part in its plane: smallest worst deviation, least squares beside it, largest margin, least move, and
 * what is wrong where none is good enough. Start at {@link fayline.method.fitup.move.BestMoveCalculator}. Frame and signs as in
 * {@code fayline.method.fitup}; millimetres and radians.
 *
 * <p>The smallest worst deviation is a linear program of four unknowns, least squares and least move are quadratic ones of three
 * [lawson1974], [goldfarb1983]. What does not belong here: cutting, spacers, chance.
 */
@NullMarked
package fayline.method.fitup.move;

import org.jspecify.annotations.NullMarked;
