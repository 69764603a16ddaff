package fayline.flow.result.quantity;

import fayline.basis.units.Quantity;
import java.util.OptionalDouble;

/**
 * An amount of something that is bought.
 *
 * @param of the material or mixed system
 * @param amount how much to take from the stores, waste included: an area of cloth, film and core, a length of tape, a mass of
 *     everything else; of a system the mass of the mix
 * @param purpose what for, as {@code plies}, {@code core}, {@code bag}, {@code joint}
 * @param cost what it costs in the project's currency, where a price is known
 */
public record Need(String of, Quantity amount, String purpose, OptionalDouble cost) {}
