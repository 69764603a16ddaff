/**
 * Witness pieces of a part: what was planned, what came out, and how it scatters. Start at
 * {@link fayline.flow.result.coupon.CouponCalculator}. Mean and standard deviation as in [nist-handbook]; how each test is done is said by the
 * standard that {@link fayline.flow.project.design.CouponMeasure} names. What most pieces will bear is asked of {@link fayline.method.allowable.AllowableCalculator}.
 */
@NullMarked
package fayline.flow.result.coupon;

import org.jspecify.annotations.NullMarked;
