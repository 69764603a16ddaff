/**
 * A part that reaches its place through several bonds: pane to frame on the bench, frame to door, door to opening. Start at
 * {@link fayline.method.fitup.chain.Chain} and {@link fayline.method.fitup.chain.ChainCalculator}; for readings taken on the
 * airframe and bonds made on the bench at {@link fayline.method.fitup.chain.DatumFitCalculator}. The final frame is that of the
 * last carrier, axes and signs as in {@link fayline.method.fitup}; a bench has a frame of its own, carried into the final one by
 * a {@link fayline.method.fitup.chain.Placement}. Small rigid motions add up; variances add over independent bonds [jcgm100].
 * What does not belong here: where corrections go, which is {@code chain.correct}.
 */
@NullMarked
package fayline.method.fitup.chain;

import org.jspecify.annotations.NullMarked;
