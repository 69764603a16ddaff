/**
 * What the readings of a fit amount to: gaps by state, the move between states, the best move now, shims, trim, the chance of
 * each locating scheme, what heat does, how the bonded part compares with what was foretold, and what the other hand learns.
 * Start at {@link fayline.flow.result.fit.FitCalculator}. The methods and their sources are those of {@code method.fitup}. What
 * does not belong here: formulas, and pictures.
 */
@NullMarked
package fayline.flow.result.fit;

import org.jspecify.annotations.NullMarked;
