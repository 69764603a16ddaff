/**
 * What a frame does when it is clamped to its place, bonded and let go: clamp forces, the shape after release, bond-line load,
 * and which clamp's deviation causes it. Start at {@link fayline.method.fitup.frame.spring.SpringBackCalculator}.
 *
 * <p>Frame, signs and units are those of the package above. A deviation is how far the free part stands off nominal, positive
 * along the clamp's freedom. Method of influence coefficients [liu-hu1997]; limits of hand clamping and bending strain are
 * common practice, no source. What does not belong here: gaps of stations, latch pins (the package beside), contact.
 */
@NullMarked
package fayline.method.fitup.frame.spring;

import org.jspecify.annotations.NullMarked;
