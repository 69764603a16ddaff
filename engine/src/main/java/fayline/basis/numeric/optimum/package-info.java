/**
 * Best points where unknowns are few (a rigid move has three or six) and rows may be thousands: the corner of a linear program,
 * the fit of least squares, the fit whose worst deviation is smallest; and the best point of convex functions made of straight
 * pieces, which are taken in one by one [kelley1960]. All of them are exact up to rounding, deterministic, and
 * take a handful of exchanges. Start at {@link fayline.basis.numeric.optimum.MinimaxFit}. Unit-less: the caller's units go in
 * and come out, and the caller brings the unknowns to like size first. Dual exchange of one row at a time after [lemke1954] with
 * the tie rule of [bland1977]; the quadratic part after [goldfarb1983]; factors after [lawson1974] (all recalled, and checked
 * against another solver in the tests). What does not belong here: any engineering formula.
 */
@NullMarked
package fayline.basis.numeric.optimum;

import org.jspecify.annotations.NullMarked;
