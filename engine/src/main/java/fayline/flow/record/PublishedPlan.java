package fayline.flow.record;

import java.time.Instant;
import java.util.List;

/**
 * A plan that the crew was told.
 *
 * @param seq the entry
 * @param at when it was published
 * @param by who published it
 * @param definition hash of the definition it was made from
 * @param hash hash of the plan
 * @param steps its steps
 */
public record PublishedPlan(long seq, Instant at, String by, String definition, String hash, List<Step> steps) {
    /** Copies the list. */
    public PublishedPlan {
        steps = List.copyOf(steps);
    }

    /**
     * One step of it.
     *
     * @param step the step
     * @param start when the hands begin
     * @param handsEnd when the hands leave
     * @param end when its unattended time is over
     * @param people who
     * @param places where
     */
    public record Step(
            String step, Instant start, Instant handsEnd, Instant end, List<String> people, List<String> places) {
        /** Copies the lists. */
        public Step {
            people = List.copyOf(people);
            places = List.copyOf(places);
        }
    }
}
