package fayline.flow.project.recipe;

import fayline.basis.units.Fraction;

/**
 * A mix that a step needs.
 *
 * @param system the system, or {@code with.NAME}
 * @param purpose what for: {@code plies} (the stage's cloth), {@code core-bedding}, {@code coat}, {@code joint},
 *     {@code fillet}, or a fixed {@code amount}
 * @param amount the amount for purposes that need one: {@code 0.6 kg/m2}, {@code 0.5 mm}, {@code 120 g}, or
 *     {@code with.NAME}; empty otherwise
 * @param thickener thickener by mass of the mix, 0 for none
 */
public record MixUse(String system, String purpose, String amount, Fraction thickener) {}
