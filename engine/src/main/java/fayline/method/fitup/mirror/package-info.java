/**
 * What the same fit is on the opposite hand: the reflection x to −x. Start at {@link fayline.method.fitup.mirror.OppositeHand}.
 *
 * <p>Both hands are seen from outside, each in its own frame: a left part has x aft, a right part x forward. Places and normals change the
 * sign of x; so do dx and the turn, which is the component of an axial vector along z [goldstein1980], and the tilt about y; dy, dz and
 * the tilt about x stay. Gaps, flush, trim depths and shims stay. Stations are listed the other way round, so that the loop stays
 * counter-clockwise; their marks stay. In words (aft, up, nose-up) a move is the same on both hands. What must not be mirrored: the bias of
 * a gauge, the effect of temperature, and the habit of a hand.
 */
@NullMarked
package fayline.method.fitup.mirror;

import org.jspecify.annotations.NullMarked;
