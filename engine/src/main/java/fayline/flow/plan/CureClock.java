package fayline.flow.plan;

import java.time.Instant;
import java.util.List;

/**
 * How fast a chemistry runs: equivalent minutes at the reference temperature per minute of time, in equal steps. Before the
 * first step the first rate holds, after the last the last.
 *
 * @param id the clock
 * @param from start of the first step
 * @param stepMin length of a step in minutes
 * @param rates a positive rate per step; at least one
 */
public record CureClock(String id, Instant from, int stepMin, List<Double> rates) {
    /** Copies the list. */
    public CureClock {
        rates = List.copyOf(rates);
    }
}
