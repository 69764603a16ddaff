/**
 * What to order by when, orders to makers outside, and what came of them. Start at {@link fayline.app.web.orders.OrdersPage}.
 */
@NullMarked
package fayline.app.web.orders;

import org.jspecify.annotations.NullMarked;
