package fayline.flow.result.mix;

import fayline.basis.units.Temperature;
import fayline.basis.units.TimeSpan;
import fayline.method.mix.batch.BatchPlan;
import java.util.Optional;

/**
 * One mix with the circumstances in which it is mixed.
 *
 * @param mix the mix
 * @param at the temperature expected where it is mixed and applied
 * @param people how many work on it
 * @param useful how many can usefully work on it
 * @param factorWithOneMore person-minutes with one person more, as a multiple of those with this crew
 * @param hands elapsed hands-on time with this crew, mixing left out
 * @param bagging elapsed time from the last ply to a tight bag; zero where none follows
 * @param dayLeft how long the crew is still there, where that is known
 * @param wholeDay how long the crew is there on a whole day, where that is known
 * @param prices what splitting costs
 */
public record MixJob(
        StepMix mix,
        Temperature at,
        int people,
        int useful,
        double factorWithOneMore,
        TimeSpan hands,
        TimeSpan bagging,
        Optional<TimeSpan> dayLeft,
        Optional<TimeSpan> wholeDay,
        BatchPlan.Prices prices) {}
