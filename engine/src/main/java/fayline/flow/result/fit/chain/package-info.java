/**
 * What a chain of bonds amounts to with the readings of the fit in which it ends: which link spends the tolerance, where a
 * correction goes, what is left after the cure. Start at {@link fayline.flow.result.fit.chain.FitChainCalculator}. The methods
 * and their sources are those of {@code method.fitup.chain}; places and moves are in the last fit's frame, in mm and radians.
 * What does not belong here: formulas, and pictures.
 */
@NullMarked
package fayline.flow.result.fit.chain;

import org.jspecify.annotations.NullMarked;
