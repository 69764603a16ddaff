package fayline.app.usecase.act;

import fayline.basis.units.QuantityKind;
import fayline.flow.project.design.Coupon;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.project.design.Part;
import fayline.flow.result.coupon.CouponCalculator;
import java.util.List;
import java.util.Optional;

/** What is checked of a result of witness pieces before it is recorded. */
final class CouponReadingChecks {
    static final String KIND = CouponCalculator.KIND;
    private static final String PIECE = "[a-z][a-z0-9-]{0,63}";
    private final Checks checks;
    private final Measured reading;

    CouponReadingChecks(Checks checks, Measured reading) {
        this.checks = checks;
        this.reading = reading;
    }

    void check(Optional<Part> part) {
        if (part.isEmpty()) {
            checks.stop("of", quoted(reading.of()), "a part of the definition", "");
            return;
        }
        Optional<Coupon> coupon = part.get().coupon(reading.station());
        if (coupon.isEmpty()) {
            List<String> ids = part.get().coupons().stream().map(Coupon::id).toList();
            checks.stop(
                    "station",
                    quoted(reading.station()),
                    ids.isEmpty()
                            ? "witness pieces of " + part.get().id() + ", which has none planned"
                            : "witness pieces of " + part.get().id() + ": " + String.join(", ", ids),
                    "plan them under coupons: in the part's file");
            return;
        }
        if (!reading.state().isEmpty() && !reading.state().matches(PIECE)) {
            checks.stop("piece", quoted(reading.state()), "a name of a-z, 0-9 and hyphens, such as piece-3", "");
        }
        value(coupon.get().test());
    }

    private void value(CouponMeasure test) {
        String typed = reading.values().getOrDefault("value", "");
        if (CouponCalculator.value(test, typed).isPresent()) {
            return;
        }
        switch (test) {
            case BARCOL -> checks.stop("value", quoted(typed), "a Barcol number from 0 to 100, such as 47", "");
            case BURN_OFF -> checks.stop("value", quoted(typed), "a share between 0 and 100 %, such as 58.2 %", "");
            case TENSILE, LAP_SHEAR -> {
                TakeReading.quantity(checks, "value", typed, QuantityKind.STRESS);
                if (checks.problems().isEmpty()) {
                    checks.stop("value", quoted(typed), "a stress above 0, such as 24.1 MPa", "");
                }
            }
        }
    }

    private static String quoted(String text) {
        return text.isEmpty() ? "nothing" : "\"" + text + "\"";
    }
}
