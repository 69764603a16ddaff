package fayline.solver.shop;

import fayline.flow.plan.WorkStep.Span;
import fayline.flow.planner.serial.TimeLine;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Spans whose length depends on when they begin, as a few classes of beginnings with one length each: the longest of the class
 * where something must be over, the shortest where a window shuts. Beginnings of one class differ by less than half an hour.
 */
final class Lags {
    private static final int CLASS = 6;

    /** Beginnings and the length that goes for all of them, in slots. */
    record Lag(int slots, BitSet moments) {}

    private Lags() {}

    /** Until a span is over. */
    static List<Lag> over(TimeLine time, Span span, BitSet moments) {
        if (span.clock().isEmpty()) {
            return List.of(new Lag(Slots.up(time.over(0, span)), moments));
        }
        Map<Integer, Lag> classes = new TreeMap<>();
        for (int t = moments.nextSetBit(0); t >= 0; t = moments.nextSetBit(t + 1)) {
            int lag = Slots.up(time.over(t * Slots.MIN, span)) - t;
            put(classes, lag, t, true);
        }
        return new ArrayList<>(classes.values());
    }

    /** Until a window shuts. */
    static List<Lag> shut(TimeLine time, Span span, BitSet moments) {
        if (span.clock().isEmpty()) {
            return List.of(new Lag(Slots.down(time.last(0, span)), moments));
        }
        Map<Integer, Lag> classes = new TreeMap<>();
        for (int t = moments.nextSetBit(0); t >= 0; t = moments.nextSetBit(t + 1)) {
            int lag = Slots.down(time.last(t * Slots.MIN, span)) - t;
            put(classes, lag, t, false);
        }
        return new ArrayList<>(classes.values());
    }

    private static void put(Map<Integer, Lag> classes, int lag, int t, boolean longest) {
        Lag known = classes.get(lag / CLASS);
        BitSet of = known == null ? new BitSet() : known.moments;
        of.set(t);
        int slots = known == null ? lag : longest ? Math.max(lag, known.slots) : Math.min(lag, known.slots);
        classes.put(lag / CLASS, new Lag(slots, of));
    }

    /** The classes with one beginning as a class of its own, whose length is known to the minute. */
    static List<Lag> withExact(List<Lag> classes, int moment, int slots) {
        List<Lag> all = new ArrayList<>();
        for (Lag lag : classes) {
            BitSet others = (BitSet) lag.moments.clone();
            others.clear(moment);
            if (lag.slots == slots && lag.moments.get(moment)) {
                return classes;
            }
            if (!others.isEmpty()) {
                all.add(new Lag(lag.slots, others));
            }
        }
        BitSet one = new BitSet();
        one.set(moment);
        all.add(new Lag(slots, one));
        return all;
    }
}
