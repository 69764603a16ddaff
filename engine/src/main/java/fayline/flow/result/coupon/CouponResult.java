package fayline.flow.result.coupon;

import fayline.flow.project.design.Coupon;
import fayline.flow.record.TakenReading;
import java.util.List;
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

    /** How many results are still to come. */
    public int missing() {
        return Math.max(0, coupon.count() - values.size());
    }
}
