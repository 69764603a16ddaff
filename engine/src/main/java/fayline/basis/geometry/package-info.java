/**
 * Plane outlines. x and y in metres, y left of x, angles positive anticlockwise from x. Start at
 * {@link fayline.basis.geometry.Outline}. Reading drawings from files does not belong here.
 */
@NullMarked
package fayline.basis.geometry;

import org.jspecify.annotations.NullMarked;
