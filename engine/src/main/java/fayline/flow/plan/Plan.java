package fayline.flow.plan;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Who, where and when.
 *
 * @param steps every planned step; done and running ones as they happened
 * @param unplanned what could not be planned, each with its reason
 * @param finish end of the last step, where there is one
 */
public record Plan(List<PlannedStep> steps, List<Unplanned> unplanned, Optional<Instant> finish) {
    /** Copies the lists. */
    public Plan {
        steps = List.copyOf(steps);
        unplanned = List.copyOf(unplanned);
    }

    /**
     * One step in the plan.
     *
     * @param step the step's id
     * @param start when the hands begin
     * @param handsEnd when the hands leave
     * @param end when its unattended time is over
     * @param people who
     * @param places moulds, stands and ports, of every hold that spans the step
     * @param stretches when the hands work; one stretch unless the step may be interrupted
     * @param missed earlier steps whose windows are missed here, at their price
     */
    public record PlannedStep(
            String step,
            Instant start,
            Instant handsEnd,
            Instant end,
            List<String> people,
            List<String> places,
            List<Worker.Stretch> stretches,
            List<String> missed) {
        /** Copies the lists. */
        public PlannedStep {
            people = List.copyOf(people);
            places = List.copyOf(places);
            stretches = List.copyOf(stretches);
            missed = List.copyOf(missed);
        }
    }

    /**
     * A step that could not be planned.
     *
     * @param step the step's id
     * @param reason why, and what would help
     */
    public record Unplanned(String step, String reason) {}
}
