/**
 * How a mix is split into batches that are each used up in time. Start at
 * {@link fayline.method.mix.batch.BatchPlanCalculator}. The largest batch solves m = r (f t(m, T) - t_mix), a rule of this
 * project (common practice, no source); the pot life behind it is that of {@code method.cure.pot} [arrhenius1889]. What does
 * not belong here: who works when.
 */
@NullMarked
package fayline.method.mix.batch;

import org.jspecify.annotations.NullMarked;
