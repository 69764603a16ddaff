/**
 * How thick the shims must be that hold the part at a move, and which stacks of stock come nearest when they are chosen together.
 * Start at {@link fayline.method.fitup.shim.ShimCalculator}.
 *
 * <p>Lengths in millimetres, angles in radians; frame as in {@link fayline.method.fitup}. An index point's normal points from the part
 * to the stop; its clearance is the room between them as the part lies. To hold the part at the move q a shim must fill s = c − a · q;
 * negative means that the stop itself is in the way. How well points hold a part is the condition number of their rows
 * [golub-vanloan1996]. What does not belong here: the errors of stops, which are {@link fayline.method.fitup.scheme}.
 */
@NullMarked
package fayline.method.fitup.shim;

import org.jspecify.annotations.NullMarked;
