/**
 * The best rigid move of a curved part in space, gap and flush together, and the tilt that brings a flat part flush. Start at
 * {@link fayline.method.fitup.space.SpaceMoveCalculator} and {@link fayline.method.fitup.space.FlushPlaneCalculator}. Frame and
 * signs as in {@code fayline.method.fitup}, turns by the right-hand rule; millimetres and radians.
 *
 * <p>Rows of a gap are (m, r × m) with its normal m, rows of a flush the same with opposite sign along the surface normal
 * (geometry); solved as in the plane [lawson1974]. What does not belong here: cutting, spacers, chance.
 */
@NullMarked
package fayline.method.fitup.space;

import org.jspecify.annotations.NullMarked;
