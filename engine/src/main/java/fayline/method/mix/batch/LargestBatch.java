package fayline.method.mix.batch;

import fayline.basis.units.Fraction;
import fayline.basis.units.Mass;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.pot.PotLife;
import java.util.Optional;

/**
 * The question how large a batch may be so that it is used up within its life.
 *
 * @param pot system, temperature and container; the mass in it does not count
 * @param useRateKgPerS mixed mass that one person applies, in kg/s; positive
 * @param people how many apply
 * @param trusted the share of the pot life on which to rely, above 0 and up to 1; 0.5 to 0.7 is common practice
 * @param mixing time to weigh and mix one batch, taken from its pot life
 * @param container the most that may be in one container
 */
public record LargestBatch(
        PotLife pot, double useRateKgPerS, int people, Fraction trusted, TimeSpan mixing, Optional<Mass> container) {}
