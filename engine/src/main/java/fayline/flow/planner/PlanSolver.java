package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;

/** Makes a plan that keeps every rule of {@link fayline.flow.plan}. Equal work gives an equal plan. */
public interface PlanSolver {
    /**
     * Plans the work.
     *
     * @param work the work, consistent in itself or not: a step whose needs cannot be met goes to {@code unplanned}
     * @return a plan with every step of the work, planned or unplanned with its reason
     */
    Plan plan(Work work);
}
