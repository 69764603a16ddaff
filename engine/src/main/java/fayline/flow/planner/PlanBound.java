package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import java.time.Instant;
import java.util.Optional;

/** Says what no plan can beat. A module border: the native solver stands behind it. */
public interface PlanBound {
    /**
     * A moment before which the planned steps cannot all be over, whoever plans.
     *
     * @param work the work
     * @param plan a plan of it; the bound is for the steps that it plans, and not after its own finish
     * @return the bound; empty where the plan has no finish or the bound cannot be computed on this machine
     */
    Optional<Instant> earliestFinish(Work work, Plan plan);
}
