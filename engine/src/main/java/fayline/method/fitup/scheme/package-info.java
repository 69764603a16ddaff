/**
 * How a part is located for bonding, and what that does to its gaps: tape marks, spacers, a fixture block, drilled pins, and
 * any of them together. Start at {@link fayline.method.fitup.scheme.Scheme} and
 * {@link fayline.method.fitup.scheme.SchemeCalculator}. Frame and signs as in {@link fayline.method.fitup}; the error of a stop
 * is positive where it holds the part farther from the neighbour. Rigid-body settling on stops, first order; variances
 * [jcgm100]. Where an uncertainty is not given there is no chance: what is missing is said instead. What does not belong here:
 * choosing the move.
 */
@NullMarked
package fayline.method.fitup.scheme;

import org.jspecify.annotations.NullMarked;
