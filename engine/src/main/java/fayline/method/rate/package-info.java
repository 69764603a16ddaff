/**
 * What the shop's own times teach about its rates: how long kinds of work really take against the recipes, who works faster or
 * slower, and what repetition brings [wright1936]. Start at {@link fayline.method.rate.RatesCalculator}. Where the times come from is no
 * concern of this package.
 */
@NullMarked
package fayline.method.rate;

import org.jspecify.annotations.NullMarked;
