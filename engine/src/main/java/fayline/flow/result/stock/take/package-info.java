/**
 * What a stock-take says of the mixes since the one before. Start at {@link fayline.flow.result.stock.take.StockTakeAudit}. The method is that
 * of {@code method.mix.audit}; here are the lots that belong together, the mixes they went into, and how well counts are known.
 */
@NullMarked
package fayline.flow.result.stock.take;

import org.jspecify.annotations.NullMarked;
