/**
 * How likely every gap ends inside its limits, and all of them together, when what disturbs them is known as a list of
 * independent sources, each acting on every gap at once. Start at {@link fayline.method.fitup.odds.GapSpread} and
 * {@link fayline.method.fitup.odds.GapOddsCalculator}. Lengths in millimetres; a gap error is positive where the gap gets
 * larger. First-order propagation [jcgm100], trials [jcgm101]. What does not belong here: where the sources come from.
 */
@NullMarked
package fayline.method.fitup.odds;

import org.jspecify.annotations.NullMarked;
