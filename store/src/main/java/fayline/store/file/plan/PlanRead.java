package fayline.store.file.plan;

import fayline.basis.finding.InputProblem;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.util.List;
import java.util.Optional;

/**
 * What became of a plan file.
 *
 * @param whole work and plan; there only if nothing is wrong with the file
 * @param problems everything wrong with it, each with key path, what was found and what was expected
 */
public record PlanRead(Optional<WorkAndPlan> whole, List<InputProblem> problems) {
    /** Copies the list. */
    public PlanRead {
        problems = List.copyOf(problems);
    }

    /**
     * Work and the plan made for it.
     *
     * @param work the work
     * @param plan the plan
     */
    public record WorkAndPlan(Work work, Plan plan) {}
}
