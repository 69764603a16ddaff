/**
 * Quantities with their units. Start at {@link fayline.basis.units.Quantity} for the kinds and at
 * {@link fayline.basis.units.QuantityParser} for reading what a person typed.
 *
 * <p>Conversion factors follow NIST SP 811 [nist-sp811], appendix B, from the exact definitions (inch 0.0254 m, pound
 * 0.45359237 kg, standard gravity 9.80665 m/s2, US gallon 231 cubic inches); the conventional inch of mercury is 3386.389
 * Pa. What does not belong here: the choice of unit on a face (see {@link fayline.basis.units.QuantityFormat}) is made by
 * the caller.
 */
@NullMarked
package fayline.basis.units;

import org.jspecify.annotations.NullMarked;
