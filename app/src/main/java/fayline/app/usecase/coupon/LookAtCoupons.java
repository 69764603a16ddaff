package fayline.app.usecase.coupon;

import fayline.app.usecase.view.ShopView;
import fayline.flow.project.design.Part;
import fayline.flow.result.coupon.CouponCalculator;
import fayline.flow.result.coupon.CouponResult;
import java.util.List;

/** Looks at what the witness pieces of a part showed. */
public final class LookAtCoupons {
    private LookAtCoupons() {}

    /** The results of each of a part's witness pieces, in the order in which they are planned. */
    public static List<CouponResult> of(ShopView view, Part part) {
        return CouponCalculator.calculate(part, view.record().readings(view.project()));
    }
}
