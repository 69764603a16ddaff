package fayline.flow.result.coupon;

import fayline.flow.project.design.Coupon;
import fayline.flow.project.design.CouponMeasure;
import fayline.flow.record.TakenReading;
import fayline.method.allowable.AllowableCalculator;
import fayline.method.allowable.AllowableResult;
import fayline.method.allowable.CouponTests;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The results of some witness pieces.
 *
 * @param coupon what was planned
 * @param readings the readings that count, in their order
 * @param values the same as numbers: a Barcol number, Pa, or a ratio
 * @param mean their mean, same unit; empty where nothing was tested
 * @param deviation standard deviation of a sample, by n - 1, same unit; empty under two results
 */
public record CouponResult(
        Coupon coupon,
        List<TakenReading> readings,
        List<Double> values,
        OptionalDouble mean,
        OptionalDouble deviation) {
    private static final double PROPORTION = 0.9;
    private static final double CONFIDENCE = 0.95;

    /** Copies the lists. */
    public CouponResult {
        readings = List.copyOf(readings);
        values = List.copyOf(values);
    }

    /** Standard deviation over mean; empty where either is missing or the mean is nought. */
    public OptionalDouble variation() {
        return deviation.isPresent() && mean.isPresent() && mean.getAsDouble() != 0
                ? OptionalDouble.of(deviation.getAsDouble() / mean.getAsDouble())
                : OptionalDouble.empty();
    }

    /**
     * What at least nine of ten such pieces bear, said with a confidence of 95 percent, in Pa, or why that cannot be said
     * [cmh17]; empty where the test tells no strength, and under two results. How a piece parted is not recorded here.
     */
    public Optional<AllowableResult> bound() {
        boolean strength = coupon.test() == CouponMeasure.TENSILE || coupon.test() == CouponMeasure.LAP_SHEAR;
        return strength && values.size() >= 2
                ? Optional.of(AllowableCalculator.calculate(new CouponTests(values, 0, 0, PROPORTION, CONFIDENCE)))
                : Optional.empty();
    }

    /** How many results are still to come. */
    public int missing() {
        return Math.max(0, coupon.count() - values.size());
    }
}
