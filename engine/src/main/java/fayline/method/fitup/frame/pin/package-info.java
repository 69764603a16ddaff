/**
 * Latch pins and hinge points on a frame that springs back: how far they move off their place, and whether they still go in.
 * Start at {@link fayline.method.fitup.frame.pin.PinCalculator}.
 *
 * <p>Frame, signs and units are those of the package above. Rigid arms from node to pin: geometry without a source; the motions
 * they start from after [liu-hu1997]. What does not belong here: wear, locks, loads in flight.
 */
@NullMarked
package fayline.method.fitup.frame.pin;

import org.jspecify.annotations.NullMarked;
