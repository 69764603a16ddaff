/**
 * Flat, circular and curved sheets under pressure, and thin plates in compression [timoshenko1959]. Start at
 * {@link fayline.method.plate.FlatPlateCalculator}. Lengths in metres, pressures in pascals; a and 1 go together, b and 2 do;
 * deflection is positive with the pressure. What does not belong here: cores, which shear ({@code method.sandwich}), and what a
 * material may bear.
 */
@NullMarked
package fayline.method.plate;

import org.jspecify.annotations.NullMarked;
