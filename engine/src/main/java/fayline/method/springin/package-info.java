/**
 * How far a corner closes when it comes off its mould. Start at {@link fayline.method.springin.SpringInCalculator}. Angles are
 * arc angles: how far the corner turns, 180 degrees less the included angle; shrinkage is a negative strain. Source:
 * [radford-rennick2000]. What does not belong here: moulds that stretch the part, gradients through the thickness.
 */
@NullMarked
package fayline.method.springin;

import org.jspecify.annotations.NullMarked;
