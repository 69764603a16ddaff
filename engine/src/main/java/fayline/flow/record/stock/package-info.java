/**
 * What moved the stores beside the work: lots received, moved and counted, orders placed and received. Start at
 * {@link fayline.flow.record.stock.StockState}; {@link fayline.flow.record.stock.StockFold} is how entries become it. Amounts are texts as
 * typed: what they mean is read where they are used. What is left of a lot does not belong here: that follows from definition, work and
 * record together.
 */
@NullMarked
package fayline.flow.record.stock;

import org.jspecify.annotations.NullMarked;
