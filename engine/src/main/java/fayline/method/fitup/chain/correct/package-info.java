/**
 * What can still be done about the gaps at the end of a chain: where a correction goes while bonds are open, with neighbours
 * that can still move, and what is left after the cure. Start at
 * {@link fayline.method.fitup.chain.correct.CorrectionCalculator} and
 * {@link fayline.method.fitup.chain.correct.RemedyCalculator}. Least largest weighted deviation as a linear program
 * [boyd-vandenberghe2004], then least total motion, material and cost. First-order motions; the final frame of
 * {@link fayline.method.fitup.chain}. What does not belong here: how likely it is.
 */
@NullMarked
package fayline.method.fitup.chain.correct;

import org.jspecify.annotations.NullMarked;
