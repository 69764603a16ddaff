/**
 * The part's edge as a closed line: arc length to point, outward normal and run, and back from a place to the nearest arc
 * length. Start at {@link fayline.method.fitup.outline.OutlineCalculator}; what it draws is a
 * {@link fayline.method.fitup.outline.PartOutline}.
 *
 * <p>Lengths in millimetres, angles in radians. The line runs counter-clockwise seen from outside; the outward normal of a
 * tangent t is (t_y, −t_x). Arc length is 0 at the end of the blend of corner 1 (traced line: at its first corner, or its first
 * point) and counts modulo the perimeter. Run E1 goes from corner 1 to corner 2, blend C1 lies at corner 1; each holds its
 * start, not its end.
 *
 * <p>Sources: plane geometry of tangent arcs, closed form; the direction of a traced line is the line of closest fit
 * [pearson1901]. What does not belong here: reading drawings from files, gaps.
 */
@NullMarked
package fayline.method.fitup.outline;

import org.jspecify.annotations.NullMarked;
