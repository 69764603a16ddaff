/**
 * When a ply fails, first and last. Start at {@link fayline.method.laminate.strength.FirstPlyCalculator} and {@link
 * fayline.method.laminate.strength.LastPlyCalculator}; directions all round by {@link
 * fayline.method.laminate.strength.PolarCalculator}.
 *
 * <p>A strength ratio R is how many times the forces and moments can act until a criterion is met; stress that a temperature
 * change left stays what it is and is not multiplied. Strengths are positive numbers. Sources: [jones1999], [tsai-wu1971],
 * [hashin1980], [tsai-hahn1980]. What does not belong here: fatigue, impact, edges, buckling.
 */
@NullMarked
package fayline.method.laminate.strength;

import org.jspecify.annotations.NullMarked;
