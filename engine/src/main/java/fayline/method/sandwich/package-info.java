/**
 * Sandwich beams and panels: two equal faces on a core that shears [allen1969]. Start at
 * {@link fayline.method.sandwich.SandwichBeamCalculator} and {@link fayline.method.sandwich.SandwichPanelCalculator}. Metres,
 * newtons, pascals; d is the distance of the faces' middles. What does not belong here: solid plates
 * ({@code method.plate}), and what a material may bear.
 */
@NullMarked
package fayline.method.sandwich;

import org.jspecify.annotations.NullMarked;
