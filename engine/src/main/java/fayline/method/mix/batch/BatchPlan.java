package fayline.method.mix.batch;

import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.pot.PotLife;
import java.util.Optional;

/**
 * The question how a lay-up or bond is mixed: how many batches, when each, and whether the whole fits the crew's day and the
 * resin's life.
 *
 * @param system name of the system, for sentences
 * @param pot data sheet, expected temperature and container; the mass in it does not count
 * @param partsResin parts of resin by mass
 * @param partsHardener parts of hardener by mass
 * @param ratioTolerance allowed deviation of the hardener, as a fraction of the nominal
 * @param total the whole mix
 * @param useRateKgPerS mixed mass that one person applies, in kg/s
 * @param crew who is there
 * @param trusted the share of the pot life on which to rely
 * @param mixing time to weigh and mix one batch
 * @param container the most that may be in one container
 * @param hands elapsed hands-on time of the lay-up with this crew, mixing not counted; where it is longer than applying at
 *     the use rate it sets the pace
 * @param bagging elapsed time from the last ply to a tight bag, or from the last bead to closed clamps
 * @param dayLeft how long the crew is still there today
 * @param wholeDay how long the crew is there on a whole day
 * @param prices what the ways out cost
 */
public record BatchPlan(
        String system,
        PotLife pot,
        double partsResin,
        double partsHardener,
        Fraction ratioTolerance,
        Mass total,
        double useRateKgPerS,
        Crew crew,
        Fraction trusted,
        TimeSpan mixing,
        Optional<Mass> container,
        Optional<TimeSpan> hands,
        TimeSpan bagging,
        Optional<TimeSpan> dayLeft,
        Optional<TimeSpan> wholeDay,
        Prices prices) {
    /**
     * Who is there.
     *
     * @param people how many work on it; with two or more, one mixes while the others apply
     * @param usefulMost how many can usefully work on it
     * @param factorWithOneMore person-minutes with one person more, as a multiple of those with this crew
     */
    public record Crew(int people, int usefulMost, double factorWithOneMore) {
        /** A crew that gains in full from one more person. */
        public static Crew of(int people, int usefulMost) {
            return new Crew(people, usefulMost, 1);
        }
    }

    /**
     * What the ways out cost.
     *
     * @param splitWork person-time that one more stage adds: peel ply on and off, a second bag
     * @param splitMaterials what one more stage uses up, in words with its price
     */
    public record Prices(TimeSpan splitWork, String splitMaterials) {
        /** Defaults of this program, to be shown as assumed: two person-hours and a second set of bagging. */
        public static Prices assumed() {
            return new Prices(TimeSpan.ofHours(2), "one more set of peel ply, film, breather, bag and tape");
        }
    }
}
