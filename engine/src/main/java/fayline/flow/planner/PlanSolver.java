package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.goal.PlanGoal;

/** Makes a plan that keeps every rule of {@link fayline.flow.plan}. Equal work gives an equal plan. */
public interface PlanSolver {
    /**
     * Plans the work.
     *
     * @param work the work, consistent in itself or not: a step whose needs cannot be met goes to {@code unplanned}
     * @return a plan with every step of the work, planned or unplanned with its reason
     */
    Plan plan(Work work);

    /**
     * Plans the work in the sets that serve a goal best.
     *
     * @param work the work
     * @param goal what is wanted
     * @return a plan of one of {@link Work#divisions}; of the work as it is where a planner tries no others
     */
    default Plan plan(Work work, PlanGoal goal) {
        return plan(work);
    }
}
