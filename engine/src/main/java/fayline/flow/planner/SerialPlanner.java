package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.serial.ChainSchedule;

/**
 * Plans in plain Java, chain by chain, within a fraction of a second for a shop's twelve weeks. It promises a plan that keeps
 * the rules, not the best one.
 */
public final class SerialPlanner implements PlanSolver {
    /** A planner; it keeps nothing between plans. */
    public SerialPlanner() {}

    @Override
    public Plan plan(Work work) {
        return ChainSchedule.of(work);
    }
}
