package fayline.app.usecase.coupon;

import fayline.basis.units.UnitSystem;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.result.coupon.CouponResult;
import fayline.method.allowable.AllowableResult;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/** Figures of witness pieces in the reader's units, for pages and books. */
public final class CouponWords {
    private static final double PERCENT = 100;
    private static final double MEGA = 1e6;
    /** Pascals in a pound-force to the square inch [nist-sp811] app. B.8. */
    private static final double PSI = 6894.757293168;

    private CouponWords() {}

    /** A mean or a deviation; empty where there is none. */
    public static String told(UnitSystem units, CouponMeasure test, OptionalDouble value) {
        if (value.isEmpty()) {
            return "";
        }
        double v = value.getAsDouble();
        return switch (test) {
            case BARCOL -> String.format(Locale.ROOT, "%.1f", v);
            case BURN_OFF -> String.format(Locale.ROOT, "%.1f %%", PERCENT * v);
            case TENSILE, LAP_SHEAR ->
                units == UnitSystem.METRIC
                        ? String.format(Locale.ROOT, "%.1f MPa", v / MEGA)
                        : String.format(Locale.ROOT, "%.0f psi", v / PSI);
        };
    }

    /** How much they vary, as a share of the mean; empty under two results. */
    public static String variation(CouponResult c) {
        return c.variation().isPresent()
                ? String.format(Locale.ROOT, "%.1f %%", PERCENT * c.variation().getAsDouble())
                : "";
    }

    /** What nine of ten such pieces bear; empty where none can be said. */
    public static String bound(UnitSystem units, CouponResult c) {
        return told(
                units,
                c.coupon().test(),
                c.bound().map(AllowableResult::allowedPa).orElse(OptionalDouble.empty()));
    }

    /** What must be said of that bound, or why there is none. */
    public static List<String> boundSays(CouponResult c) {
        List<String> says = new ArrayList<>();
        c.bound().ifPresent(b -> b.findings().forEach(f -> says.add(f.sentence())));
        if (c.bound().isPresent() && c.coupon().test() == CouponMeasure.LAP_SHEAR) {
            says.add("How each piece parted is not asked here: where one parted at the surface, none of it counts.");
        }
        return says;
    }

    /** How many of them were tested. */
    public static String tested(CouponResult c) {
        return c.values().size() + " of " + c.coupon().count() + " tested";
    }

    /** The test and its standard. */
    public static String test(CouponMeasure test) {
        return test.words() + ", " + test.standard();
    }
}
