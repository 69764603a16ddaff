package fayline.flow.result.coupon;

import fayline.basis.units.Quantity;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.design.Coupon;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.project.design.Part;
import fayline.flow.record.TakenReading;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What the witness pieces of a part showed. */
public final class CouponCalculator {
    /** The kind of reading that tells a result. */
    public static final String KIND = "coupon";

    private static final double MOST_BARCOL = 100;

    private CouponCalculator() {}

    /**
     * The results of each of a part's witness pieces, in the order in which they are planned.
     *
     * @param part the part
     * @param readings readings of the project, in order
     */
    public static List<CouponResult> calculate(Part part, List<TakenReading> readings) {
        return part.coupons().stream().map(c -> of(part, c, readings)).toList();
    }

    private static CouponResult of(Part part, Coupon coupon, List<TakenReading> readings) {
        List<TakenReading> mine = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        for (TakenReading r : readings) {
            boolean of = r.kind().equals(KIND)
                    && r.of().equals(part.id())
                    && r.station().equals(coupon.id());
            OptionalDouble value = of ? value(coupon.test(), r.value()) : OptionalDouble.empty();
            if (value.isPresent()) {
                mine.add(r);
                values.add(value.getAsDouble());
            }
        }
        OptionalDouble mean = values.stream().mapToDouble(v -> v).average();
        return new CouponResult(coupon, mine, values, mean, deviation(values, mean));
    }

    private static OptionalDouble deviation(List<Double> values, OptionalDouble mean) {
        if (values.size() < 2 || mean.isEmpty()) {
            return OptionalDouble.empty();
        }
        double squares = values.stream()
                .mapToDouble(v -> (v - mean.getAsDouble()) * (v - mean.getAsDouble()))
                .sum();
        return OptionalDouble.of(Math.sqrt(squares / (values.size() - 1)));
    }

    /**
     * A result as a number: a Barcol number from 0 to 100, a stress above 0 in Pa, a share between 0 and 1.
     *
     * @param test how it was tested
     * @param typed as typed
     * @return empty where it is no such result
     */
    public static OptionalDouble value(CouponMeasure test, String typed) {
        return switch (test) {
            case BARCOL ->
                typed.strip().matches("[0-9]{1,3}(\\.[0-9]{1,3})?")
                        ? within(Double.parseDouble(typed.strip()), 0, MOST_BARCOL)
                        : OptionalDouble.empty();
            case TENSILE, LAP_SHEAR -> within(si(typed, QuantityKind.STRESS), Double.MIN_VALUE, Double.MAX_VALUE);
            case BURN_OFF -> within(si(typed, QuantityKind.FRACTION), 0, 1);
        };
    }

    private static double si(String typed, QuantityKind<? extends Quantity> kind) {
        try {
            return QuantityParser.parse(typed, kind).value().si();
        } catch (UnreadableQuantityException e) {
            return Double.NaN;
        }
    }

    private static OptionalDouble within(double value, double least, double most) {
        return value >= least && value <= most ? OptionalDouble.of(value) : OptionalDouble.empty();
    }
}
