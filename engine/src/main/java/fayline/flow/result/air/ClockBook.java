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
import java.util.ArrayList;
import java.util.HashMap;
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

    private final ShopAir air;
    private final Instant from;
    private final int hours;
    private final boolean probesDiffer;
    private final Map<String, CureClock> clocks = new LinkedHashMap<>();
    private final Map<Asked, Optional<CureLaw>> laws = new HashMap<>();
    private final ClockReader reader = new ClockReader(List.of());

    /**
     * Opens a book.
     *
     * @param air the shop's air over time
     * @param from the earliest moment from which a span will count; taken down to whole hours before now
     * @param horizon the moment up to which the air is looked at
     */
    public ClockBook(ShopAir air, Instant from, Instant horizon) {
        this.air = air;
        // Whole steps back from now, so that no step mixes what was read with what is expected.
        long back = Math.max(0, Duration.between(from, air.now()).toMinutes());
        this.from = air.now().minusSeconds((back + STEP_MIN - 1) / STEP_MIN * STEP_MIN * 60L);
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
        return law(system, state)
                .map(law -> new Span(
                        Math.rint(law.time().minutes() * 1e6) / 1e6,
                        clock(system, law, shuts, warmerK).id()));
    }

    /** A state of a system; its law is fitted once. */
    private record Asked(String system, CureState state) {}

    /** The law by which a system reaches a state; empty where the data sheet has no point of that state. */
    public Optional<CureLaw> law(ResinSystem system, CureState state) {
        return laws.computeIfAbsent(new Asked(system.id(), state), a -> CureLaw.of(system.cure(), state));
    }

    /** Every clock asked for so far. */
    public List<CureClock> clocks() {
        return List.copyOf(clocks.values());
    }

    /** The first whole minute at which a span is over; see {@link ClockReader#over}. */
    public Optional<Instant> over(Span span, Instant start) {
        return reader.over(span, start);
    }

    /** The last whole minute at which a window is still open; see {@link ClockReader#lastMinute}. */
    public Optional<Instant> lastMinute(Span span, Instant start) {
        return reader.lastMinute(span, start);
    }

    /** Equivalent minutes on the clock of a span between two moments. */
    public double age(Span span, Instant start, Instant end) {
        return reader.age(span, start, end);
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
        String id = system.id()
                + (isOwnLaw(system, law) ? "@" + law.state().key() : "")
                + warmer(warmerK)
                + (warmest ? "/warmest" : "");
        CureClock clock = clocks.computeIfAbsent(id, i -> make(i, law, shuts, warmerK));
        reader.add(clock);
        return clock;
    }

    private CureClock make(String id, CureLaw law, boolean shuts, double warmerK) {
        List<Double> rates = new ArrayList<>(hours);
        for (int h = 0; h < hours; h++) {
            double sum = 0;
            int samples = STEP_MIN / SAMPLE_MIN;
            for (int i = 0; i < samples; i++) {
                Instant at = from.plusSeconds((h * (long) STEP_MIN + i * (long) SAMPLE_MIN + SAMPLE_MIN / 2) * 60);
                Temperature t = shuts ? air.warmest(at) : air.coldest(at);
                sum += law.factorAt(Temperature.ofKelvins(t.kelvins() + warmerK));
            }
            rates.add(
                    new BigDecimal(sum / samples).round(new MathContext(DIGITS)).doubleValue());
        }
        return new CureClock(id, from, STEP_MIN, rates);
    }

    /** Whether a state's law differs from the one that gives the system's clock its plain name: that of its first state. */
    private boolean isOwnLaw(ResinSystem system, CureLaw law) {
        for (CureState state : CureState.values()) {
            Optional<CureLaw> first = law(system, state);
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
}
