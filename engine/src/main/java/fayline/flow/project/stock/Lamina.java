package fayline.flow.project.stock;

import fayline.basis.units.Stress;

/**
 * How stiff a cloth or tape is once laid and cured, in its own directions.
 *
 * @param along modulus along the fibres
 * @param across modulus across them; of a balanced cloth the same
 * @param shear shear modulus in the plane
 * @param poisson contraction across when pulled along
 * @param origin where the figures are from
 * @param assumed whether they are assumed, not measured on what is laid here
 */
public record Lamina(Stress along, Stress across, Stress shear, double poisson, String origin, boolean assumed) {}
