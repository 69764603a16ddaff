/**
 * What is mixed for a step and in which batches. Start at {@link fayline.flow.result.mix.MixPlanner}. Formulas stand in
 * {@code fayline.method}.
 */
@NullMarked
package fayline.flow.result.mix;

import org.jspecify.annotations.NullMarked;
