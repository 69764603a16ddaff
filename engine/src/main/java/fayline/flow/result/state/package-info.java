/**
 * What has really happened in a shop up to a moment, as a value. Start at {@link fayline.flow.result.state.ShopState}. What
 * follows from it does not belong here.
 */
@NullMarked
package fayline.flow.result.state;

import org.jspecify.annotations.NullMarked;
