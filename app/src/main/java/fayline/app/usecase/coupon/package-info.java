/**
 * Witness pieces as people look at them. Start at {@link fayline.app.usecase.coupon.LookAtCoupons}.
 */
@NullMarked
package fayline.app.usecase.coupon;

import org.jspecify.annotations.NullMarked;
