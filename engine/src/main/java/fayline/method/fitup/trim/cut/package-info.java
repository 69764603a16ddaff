/**
 * From trim depths at stations to the line to cut along each edge, where it begins and ends, how deep to go at first, and the
 * words for it. Start at {@link fayline.method.fitup.trim.cut.CutPlanCalculator}.
 *
 * <p>Lengths in millimetres, arc length as in {@link fayline.method.fitup.outline}. Between stations the depth is linear in the arc
 * length; it never goes past the end of its edge. The areas are those of the depths moved inwards along a straight edge; on a
 * blend of radius r they are too large by the share h/2r [steiner1840].
 */
@NullMarked
package fayline.method.fitup.trim.cut;

import org.jspecify.annotations.NullMarked;
