/**
 * What the stores hold against what the work needs. Start at {@link fayline.flow.result.stock.StoresCheck}. First expired,
 * first out; what is expired at the time of use is not counted.
 */
@NullMarked
package fayline.flow.result.stock;

import org.jspecify.annotations.NullMarked;
