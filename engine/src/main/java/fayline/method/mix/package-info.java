/**
 * How much resin and adhesive, and how the two parts are weighed. Start at
 * {@link fayline.method.mix.LaminateMassCalculator}, {@link fayline.method.mix.AdhesiveMassCalculator} and
 * {@link fayline.method.mix.MixRatioCalculator}. Masses and volumes are balances and geometry; the thickness of a laminate is
 * that of [astm-d3171] method II rearranged (recalled, not read). Waste is always a fraction of what stays in the part, not of
 * the mix. What does not belong here: batches ({@code batch}) and prices.
 */
@NullMarked
package fayline.method.mix;

import org.jspecify.annotations.NullMarked;
