package fayline.method.mix.batch;

import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;

/**
 * The pace of a lay-up: batches of equal mass, each mixed so that it is ready when the one before is used up.
 *
 * @param people the crew
 * @param batches number of batches
 * @param each mass of one
 * @param perBatchS seconds to apply one
 * @param mixingS seconds to mix one
 */
record Pace(int people, int batches, Mass each, double perBatchS, double mixingS) {
    /** Seconds to apply the whole mix with a crew: by the use rate or by the hands-on time, whichever is longer. */
    static double workSeconds(BatchPlan plan, int people) {
        double byRate = plan.total().kilograms() / (plan.useRateKgPerS() * people);
        double share = people == plan.crew().people()
                ? 1
                : (double) plan.crew().people() / people * plan.crew().factorWithOneMore();
        return Math.max(byRate, plan.hands().map(TimeSpan::seconds).orElse(0.0) * share);
    }

    /** Seconds from one mixing to the next: alone one mixes and applies in turn, together one mixes while others apply. */
    double periodS() {
        return people == 1 ? mixingS + perBatchS : Math.max(mixingS, perBatchS);
    }

    double mixAtS(int index) {
        return index * periodS();
    }

    double appliedS() {
        return batches == 0 ? 0 : mixAtS(batches - 1) + mixingS + perBatchS;
    }
}
