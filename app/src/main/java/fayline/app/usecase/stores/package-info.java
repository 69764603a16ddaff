/**
 * What is done in the stores: lots received, moved and counted, orders placed and received. Start at
 * {@link fayline.app.usecase.stores.ReceiveLot} and {@link fayline.app.usecase.stores.TakeStock}. What is left of a lot is the engine's
 * ({@code flow.result.stock}); nothing is computed here.
 */
@NullMarked
package fayline.app.usecase.stores;

import org.jspecify.annotations.NullMarked;
