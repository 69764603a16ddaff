/**
 * How much to take off which edge so that the part fits after the best move, found together with that move; and what to add
 * where the opening is too large. Start at {@link fayline.method.fitup.trim.TrimCalculator}.
 *
 * <p>Lengths in millimetres, areas in square millimetres, angles in radians. A trim depth is never negative and opens the gap of
 * its station: g(q) + h. Frame and signs as in {@link fayline.method.fitup}. Method: for a given move the least depths are known at
 * every station together, so only the move is sought; convex programs of three unknowns solved one after the other by cutting
 * planes [kelley1960], each keeping what the one before has won [boyd-vandenberghe2004]. What does not belong here: the line to cut along, which is
 * {@link fayline.method.fitup.trim.cut}.
 */
@NullMarked
package fayline.method.fitup.trim;

import org.jspecify.annotations.NullMarked;
