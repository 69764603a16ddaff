package fayline.flow.planner.serial;

import fayline.flow.plan.CureClock;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep.Span;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** Times of one work as whole minutes from a quarter hour at or before its now, and spans on its clocks. */
public final class TimeLine {
    /** Later than anything, and still safe to add to. */
    public static final int FOREVER = 1 << 29;

    private static final double PART = 1e-6;
    private static final double ROUND_OFF = 1e-9;
    private static final DateTimeFormatter WORDS = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final long baseMin;
    private final ZoneId zone;
    private final Map<String, Rates> clocks = new HashMap<>();

    /**
     * The times of a work.
     *
     * @param work the work; each of its clocks has at least one rate, all positive
     */
    public TimeLine(Work work) {
        baseMin = Math.floorDiv(Math.floorDiv(work.now().getEpochSecond(), 60L), 15L) * 15L;
        zone = work.zone();
        for (CureClock clock : work.clocks()) {
            clocks.put(clock.id(), new Rates(clock, floor(clock.from())));
        }
    }

    /** Whole minutes, rounded down. */
    public int floor(Instant at) {
        return clamp(Math.floorDiv(at.getEpochSecond(), 60L) - baseMin);
    }

    /** Whole minutes, rounded up. */
    public int ceil(Instant at) {
        long s = at.getEpochSecond() + (at.getNano() > 0 ? 1 : 0);
        return clamp(-Math.floorDiv(-s, 60L) - baseMin);
    }

    private static int clamp(long minutes) {
        return (int) Math.max(-FOREVER, Math.min(FOREVER, minutes));
    }

    /** The moment of a minute. */
    public Instant at(int minute) {
        return Instant.ofEpochSecond((baseMin + minute) * 60L);
    }

    /** The first multiple of a raster at or after a minute. */
    static int raster(int minute, int raster) {
        return -Math.floorDiv(-minute, raster) * raster;
    }

    /** A minute in words of the shop's zone, as {@code Tue 3 Mar 07:30}. */
    public String words(int minute) {
        return minute >= FOREVER ? "never" : words(at(minute), zone);
    }

    static String words(Instant at, ZoneId zone) {
        return WORDS.format(at.atZone(zone));
    }

    boolean knows(Span span) {
        return span.clock().isEmpty() || clocks.containsKey(span.clock());
    }

    /** The first whole minute at which a span that counts from m is over. */
    public int over(int m, Span span) {
        double minutes = span.minutes() * (1 - PART);
        if (span.clock().isEmpty()) {
            return clamp(m + (long) Math.ceil(minutes));
        }
        Rates r = rates(span);
        return Math.max(m, clamp((long) Math.ceil(r.when(r.sum(m) + minutes) - ROUND_OFF)));
    }

    /** The last whole minute at which a span that counts from m is not exceeded. */
    public int last(int m, Span span) {
        double minutes = span.minutes() * (1 + PART);
        if (span.clock().isEmpty()) {
            return clamp(m + (long) Math.floor(minutes));
        }
        Rates r = rates(span);
        return Math.max(m, clamp((long) Math.floor(r.when(r.sum(m) + minutes) + ROUND_OFF)));
    }

    /** The earliest whole minute from which a span may count and not be exceeded at t. */
    int back(int t, Span span) {
        if (span.clock().isEmpty()) {
            return clamp(t - (long) Math.floor(span.minutes()));
        }
        Rates r = rates(span);
        return Math.min(t, clamp((long) Math.ceil(r.when(r.sum(t) - span.minutes()))));
    }

    private Rates rates(Span span) {
        Rates r = clocks.get(span.clock());
        if (r == null) {
            throw new IllegalStateException("no clock " + span.clock());
        }
        return r;
    }

    /** Equivalent minutes since the clock's start, and back; both run on beyond the steps at the nearest rate. */
    private static final class Rates {
        private final int from;
        private final int stepMin;
        private final double first;
        private final double last;
        private final double[] sums;

        Rates(CureClock clock, int from) {
            this.from = from;
            stepMin = clock.stepMin();
            int n = clock.rates().size();
            first = clock.rates().get(0);
            last = clock.rates().get(n - 1);
            sums = new double[n + 1];
            for (int i = 0; i < n; i++) {
                sums[i + 1] = sums[i] + clock.rates().get(i) * stepMin;
            }
        }

        double sum(int t) {
            int into = t - from;
            if (into <= 0) {
                return into * first;
            }
            int i = into / stepMin;
            int n = sums.length - 1;
            if (i >= n) {
                return sums[n] + (into - (double) n * stepMin) * last;
            }
            return sums[i] + (sums[i + 1] - sums[i]) * (into - i * stepMin) / stepMin;
        }

        double when(double sum) {
            int n = sums.length - 1;
            if (sum <= 0) {
                return from + sum / first;
            }
            if (sum >= sums[n]) {
                return from + (double) n * stepMin + (sum - sums[n]) / last;
            }
            int found = Arrays.binarySearch(sums, sum);
            int i = found >= 0 ? found : -found - 2;
            return from + stepMin * (i + (sum - sums[i]) / (sums[i + 1] - sums[i]));
        }
    }
}
