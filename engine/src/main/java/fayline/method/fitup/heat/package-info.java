/**
 * What heat does to the gaps of a part in its surround: gaps over the service range, the temperature at which they touch, the
 * gap to set now so that the nominal one stands at the reference temperature, readings brought to that temperature, and the
 * shear of the adhesive where a sheet is bonded all round. Start at {@link fayline.method.fitup.heat.HeatCalculator} and
 * {@link fayline.method.fitup.heat.BondedHeatCalculator}.
 *
 * <p>Frame, signs and units are those of the package above; temperatures in degrees Celsius, expansions per kelvin, which may
 * differ along x, y and z. Free expansion about a point at which both bodies are tied (geometry); coefficient and growth of
 * acrylic sheet, the factor for dark sheet [acrylic-maker1]; cutting temperatures are common practice, no source. What does not
 * belong here: how hot a part gets, the strength of adhesives.
 */
@NullMarked
package fayline.method.fitup.heat;

import org.jspecify.annotations.NullMarked;
