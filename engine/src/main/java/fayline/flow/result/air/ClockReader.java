package fayline.flow.result.air;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.WorkStep.Span;
import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Reads spans off cure clocks, as {@link fayline.flow.plan} says they are to be read. */
public final class ClockReader {
    private static final double NEARLY = 1e-6;
    private static final int MOST_DAYS = 400;

    private final Map<String, CureClock> clocks = new HashMap<>();

    /** A reader of some clocks. */
    public ClockReader(Collection<CureClock> clocks) {
        clocks.forEach(this::add);
    }

    void add(CureClock clock) {
        clocks.put(clock.id(), clock);
    }

    private CureClock get(String id) {
        CureClock clock = clocks.get(id);
        if (clock == null) {
            throw new IllegalArgumentException("no such clock: " + id);
        }
        return clock;
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

    private static double rate(CureClock clock, Instant at) {
        long index = Math.floorDiv(Duration.between(clock.from(), at).toSeconds(), clock.stepMin() * 60L);
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
