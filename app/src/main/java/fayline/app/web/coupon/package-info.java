/**
 * Witness pieces of a part on a page: planned, tested, how the results scatter. Start at {@link fayline.app.web.coupon.CouponPage}.
 */
@NullMarked
package fayline.app.web.coupon;

import org.jspecify.annotations.NullMarked;
