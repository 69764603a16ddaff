/**
 * The shop's record as use cases see it: the entries, what they amount to now, and the definition they hold. Start at
 * {@link fayline.app.usecase.shop.ShopRecord}. What people do stands in {@code fayline.app.usecase.act}.
 */
@NullMarked
package fayline.app.usecase.shop;

import org.jspecify.annotations.NullMarked;
