/**
 * The shop's air over time, read and expected, and what chemistry makes of it. Start at
 * {@link fayline.flow.result.air.ShopAir}. Formulas do not belong here: they stand in {@code fayline.method}.
 */
@NullMarked
package fayline.flow.result.air;

import org.jspecify.annotations.NullMarked;
