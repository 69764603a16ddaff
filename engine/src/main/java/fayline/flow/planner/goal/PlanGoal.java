package fayline.flow.planner.goal;

import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the shop wants of a plan.
 *
 * @param weights what counts how much
 * @param dates dated goals
 * @param told the plan that the crew was told last, where there is one
 */
public record PlanGoal(PlanWeights weights, List<Dated> dates, Optional<PublishedPlan> told) {
    /** Nothing wanted beyond the usual. */
    public static final PlanGoal USUAL = new PlanGoal(PlanWeights.USUAL, List.of(), Optional.empty());

    /** Copies the list. */
    public PlanGoal {
        dates = List.copyOf(dates);
    }

    /**
     * A dated goal.
     *
     * @param id its id
     * @param name what is reached
     * @param due the moment by which
     * @param steps all steps that must be over
     */
    public record Dated(String id, String name, Instant due, Set<String> steps) {
        /** Copies the set. */
        public Dated {
            steps = Set.copyOf(steps);
        }
    }
}
