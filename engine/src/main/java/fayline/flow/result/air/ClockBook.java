package fayline.flow.result.air;

import fayline.basis.units.Temperature;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.stock.ResinSystem;
import fayline.method.cure.CureLaw;
import fayline.method.cure.CureState;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The cure clocks that the work of a shop runs on, each made when it is first asked for. A clock's name is the system, with
 * {@code @state} where the state has a law of its own, {@code +5K} on a stand kept that much warmer, and {@code /warmest} where
 * several probes differ and the warmest rules. Rates are of the chemistry in each ten minutes, averaged over the hour (never
 * the temperature), and rounded to six digits, so that everybody who reads a clock reckons alike.
 *
 * <p>Not for use by several threads at a time.
 */
public final class ClockBook {
    private static final int STEP_MIN = 60;
    private static final int SAMPLE_MIN = 10;
    private static final int DIGITS = 6;
    private static final double NEARLY = 1e-6;
    private static final int MOST_DAYS = 400;

    private final ShopAir air;
    private final Instant from;
    private final int hours;
    private final boolean probesDiffer;
    private final Map<String, CureClock> clocks = new LinkedHashMap<>();

    /**
     * Opens a book.
     *
     * @param air the shop's air over time
     * @param from the earliest moment from which a span will count; taken down to the full hour
     * @param horizon the moment up to which the air is looked at
     */
    public ClockBook(ShopAir air, Instant from, Instant horizon) {
        this.air = air;
        this.from = from.truncatedTo(ChronoUnit.HOURS);
        this.hours = (int) Math.max(1, Duration.between(this.from, horizon).toHours() + 1);
        this.probesDiffer =
                air.readings().stream().map(r -> r.probe()).distinct().count() > 1;
    }

    /**
     * The span to a state.
     *
     * @param system the system
     * @param state the state
     * @param shuts whether the span ends something, so that the warmest probe rules; otherwise it permits something
     * @param warmerK how much warmer than the shop's air the stand is kept, in kelvins
     * @return the span on its clock; empty where the data sheet has no point of that state
     */
    public Optional<Span> span(ResinSystem system, CureState state, boolean shuts, double warmerK) {
        return CureLaw.of(system.cure(), state)
                .map(law -> new Span(
                        Math.rint(law.time().minutes() * 1e6) / 1e6,
                        clock(system, law, shuts, warmerK).id()));
    }

    /** The clock with an id that was given out in a span. */
    public CureClock get(String id) {
        CureClock clock = clocks.get(id);
        if (clock == null) {
            throw new IllegalArgumentException("no such clock: " + id);
        }
        return clock;
    }

    /** Every clock asked for so far. */
    public List<CureClock> clocks() {
        return List.copyOf(clocks.values());
    }

    /**
     * The first whole minute at which a span is over.
     *
     * @param span the span
     * @param start the moment from which it counts
     * @return the moment; empty where it is more than {@value #MOST_DAYS} days away
     */
    public Optional<Instant> over(Span span, Instant start) {
        if (span.clock().isEmpty()) {
            return Optional.of(start.plusSeconds((long) Math.ceil(span.minutes() - NEARLY) * 60));
        }
        CureClock clock = get(span.clock());
        double wanted = span.minutes() * (1 - NEARLY);
        double sum = 0;
        Instant at = start;
        Instant last = start.plus(Duration.ofDays(MOST_DAYS));
        while (at.isBefore(last)) {
            double rate = rate(clock, at);
            Instant edge = edge(clock, at);
            double minutes = Duration.between(at, edge).toSeconds() / 60.0;
            if (sum + rate * minutes >= wanted) {
                long whole = (long) Math.ceil((wanted - sum) / rate - NEARLY);
                return Optional.of(at.plusSeconds(Math.max(0, whole) * 60));
            }
            sum += rate * minutes;
            at = edge;
        }
        return Optional.empty();
    }

    /**
     * The last whole minute at which a window is still open: after it the sum exceeds the span.
     *
     * @param span the span after which it shuts
     * @param start the moment from which it counts
     * @return the moment; empty where it is more than {@value #MOST_DAYS} days away
     */
    public Optional<Instant> lastMinute(Span span, Instant start) {
        return over(span, start).map(end -> {
            boolean exact = age(span, start, end) <= span.minutes() * (1 + NEARLY);
            return exact || !end.isAfter(start) ? end : end.minusSeconds(60);
        });
    }

    /** Equivalent minutes on the clock of a span between two moments. */
    public double age(Span span, Instant start, Instant end) {
        if (!end.isAfter(start)) {
            return 0;
        }
        if (span.clock().isEmpty()) {
            return Duration.between(start, end).toSeconds() / 60.0;
        }
        CureClock clock = get(span.clock());
        double sum = 0;
        Instant at = start;
        while (at.isBefore(end)) {
            Instant edge = edge(clock, at);
            Instant to = edge.isBefore(end) ? edge : end;
            sum += rate(clock, at) * Duration.between(at, to).toSeconds() / 60.0;
            at = to;
        }
        return sum;
    }

    /** The share of a stretch of time that rests on readings, from 0 to 1; 1 for a stretch of no length. */
    public double measured(Instant start, Instant end) {
        int seen = 0;
        int all = 0;
        for (Instant at = start; at.isBefore(end); at = at.plusSeconds(SAMPLE_MIN * 60L)) {
            all++;
            seen += air.measured(at) ? 1 : 0;
        }
        return all == 0 ? 1 : (double) seen / all;
    }

    private CureClock clock(ResinSystem system, CureLaw law, boolean shuts, double warmerK) {
        boolean warmest = shuts && probesDiffer;
        String id = system.id() + (isOwnLaw(system, law) ? "@" + law.state().key() : "") + warmer(warmerK)
                + (warmest ? "/warmest" : "");
        return clocks.computeIfAbsent(id, i -> make(i, law, shuts, warmerK));
    }

    private CureClock make(String id, CureLaw law, boolean shuts, double warmerK) {
        List<Double> rates = new ArrayList<>(hours);
        for (int h = 0; h < hours; h++) {
            double sum = 0;
            int samples = STEP_MIN / SAMPLE_MIN;
            for (int i = 0; i < samples; i++) {
                Instant at = from.plusSeconds((h * (long) STEP_MIN + i * SAMPLE_MIN + SAMPLE_MIN / 2) * 60);
                Temperature t = shuts ? air.warmest(at) : air.coldest(at);
                sum += law.factorAt(Temperature.ofKelvins(t.kelvins() + warmerK));
            }
            rates.add(new BigDecimal(sum / samples)
                    .round(new MathContext(DIGITS))
                    .doubleValue());
        }
        return new CureClock(id, from, STEP_MIN, rates);
    }

    /** Whether a state's law differs from the one that gives the system's clock its plain name: that of its first state. */
    private static boolean isOwnLaw(ResinSystem system, CureLaw law) {
        for (CureState state : CureState.values()) {
            Optional<CureLaw> first = CureLaw.of(system.cure(), state);
            if (first.isPresent()) {
                return !first.get().rule().equals(law.rule());
            }
        }
        return false;
    }

    private static String warmer(double kelvins) {
        if (kelvins == 0) {
            return "";
        }
        String number = new BigDecimal(kelvins)
                .round(new MathContext(4))
                .stripTrailingZeros()
                .toPlainString();
        return (kelvins > 0 ? "+" : "") + number + "K";
    }

    private static double rate(CureClock clock, Instant at) {
        long index = Math.floorDiv(
                Duration.between(clock.from(), at).toSeconds(), clock.stepMin() * 60L);
        int i = (int) Math.max(0, Math.min(clock.rates().size() - 1, index));
        return clock.rates().get(i);
    }

    /** The next moment at which the clock's step changes. */
    private static Instant edge(CureClock clock, Instant at) {
        long stepS = clock.stepMin() * 60L;
        long index = Math.floorDiv(Duration.between(clock.from(), at).toSeconds(), stepS);
        return clock.from().plusSeconds((index + 1) * stepS);
    }
}
