package fayline.flow.plan;

import java.util.List;

/**
 * Places that stay occupied from the start of the earliest to the end of the latest of some steps, nights included.
 *
 * @param id the hold
 * @param kind which kind of place
 * @param candidates places of which to choose; one where it is fixed
 * @param count how many of them
 * @param steps the steps it spans, all of which then happen there
 */
public record Hold(String id, Place.Kind kind, List<String> candidates, int count, List<String> steps) {
    /** Copies the lists. */
    public Hold {
        candidates = List.copyOf(candidates);
        steps = List.copyOf(steps);
    }
}
