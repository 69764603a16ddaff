package fayline.flow.audit;

import fayline.flow.plan.CureClock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;

/**
 * Reads a cure clock: equivalent minutes between two moments, each stretch of equal rate for itself and never on an averaged
 * rate. Without a clock it reads minutes of time. Follows the definition in {@link fayline.flow.plan}.
 */
final class EquivalentTime {
    private static final double MS_PER_MIN = 60_000.0;
    /** Some 127 years: no work is left alone longer, whatever a clock says. */
    private static final long LONGEST_MIN = 1L << 26;

    private final long fromMs;
    private final long stepMs;
    private final List<Double> rates;

    private EquivalentTime(long fromMs, long stepMs, List<Double> rates) {
        this.fromMs = fromMs;
        this.stepMs = stepMs;
        this.rates = rates;
    }

    static EquivalentTime ofTime() {
        return new EquivalentTime(0, Duration.ofDays(1).toMillis(), List.of(1.0));
    }

    static EquivalentTime of(CureClock clock) {
        return new EquivalentTime(clock.from().toEpochMilli(), clock.stepMin() * 60_000L, clock.rates());
    }

    /** Equivalent minutes from one moment to another; negative when the other is earlier. */
    double between(Instant from, Instant to) {
        long a = from.toEpochMilli();
        long b = to.toEpochMilli();
        if (b < a) {
            return -between(to, from);
        }
        double sum = 0;
        long at = a;
        while (at < b) {
            long index = Math.floorDiv(at - fromMs, stepMs);
            long next = b;
            if (index < 0) {
                next = Math.min(b, fromMs);
            } else if (index < rates.size() - 1L) {
                next = Math.min(b, fromMs + (index + 1) * stepMs);
            }
            sum += rate(index) * ((next - at) / MS_PER_MIN);
            at = next;
        }
        return sum;
    }

    /** The first whole minute at which so many equivalent minutes have passed. */
    Instant over(Instant from, double minutes) {
        long low = 0;
        long high = 1;
        while (high < LONGEST_MIN && !reached(from, from.plusSeconds(60 * high), minutes)) {
            low = high;
            high *= 2;
        }
        if (reached(from, from, minutes)) {
            return from;
        }
        while (high - low > 1) {
            long middle = (low + high) / 2;
            if (reached(from, from.plusSeconds(60 * middle), minutes)) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return from.plusSeconds(60 * high);
    }

    /** Whether so many equivalent minutes have passed, to one part in a million. */
    boolean reached(Instant from, Instant to, double minutes) {
        return between(from, to) >= minutes - margin(minutes);
    }

    /** Whether more than so many equivalent minutes have passed, to one part in a million. */
    boolean exceeded(Instant from, Instant to, double minutes) {
        return between(from, to) > minutes + margin(minutes);
    }

    private double rate(long index) {
        return rates.get((int) Math.max(0, Math.min(rates.size() - 1L, index)));
    }

    private static double margin(double minutes) {
        return 1e-6 * Math.max(1, Math.abs(minutes));
    }
}
