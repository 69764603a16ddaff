/**
 * When a mixed system reaches each state. Start at {@link fayline.method.cure.CureSheet}, what is known of a system, and at
 * {@link fayline.method.cure.CureClockCalculator}, which answers. Times are from mixing. Arrhenius' law [arrhenius1889] where
 * points or an energy exist, else the factor of two per 10 K (common practice, no source). What does not belong here: degree
 * of cure and glass transition ({@code reaction}), pot life of a mass ({@code pot}), and the parts and plans that wait for a
 * cure.
 */
@NullMarked
package fayline.method.cure;

import org.jspecify.annotations.NullMarked;
