/**
 * Rigid lines of bent tube: from a route of points to the numbers that a bender is set by, and back [faa-h-8083-30]. Start at
 * {@link fayline.method.tube.BendTableCalculator}. Lengths in metres, angles in radians. A rotation is positive by the right
 * hand looking along the feed, and is counted before its bend; the first is nought. What does not belong here: what flows
 * inside, and which line an aircraft needs.
 */
@NullMarked
package fayline.method.tube;

import org.jspecify.annotations.NullMarked;
