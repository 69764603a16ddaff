package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.serial.ChainSchedule;

/**
 * Plans in plain Java, chain by chain, within a fraction of a second for a shop's twelve weeks. It promises a plan that keeps
 * the rules, not the best one.
 */
public final class SerialPlanner implements PlanSolver {
    private final int passes;

    /** A planner; it keeps nothing between plans. */
    public SerialPlanner() {
        this(Integer.MAX_VALUE);
    }

    private SerialPlanner(int passes) {
        this.passes = passes;
    }

    /** A planner that makes one pass only: for plans that are counted, not followed. */
    public static SerialPlanner quick() {
        return new SerialPlanner(1);
    }

    @Override
    public Plan plan(Work work) {
        return ChainSchedule.of(work, passes);
    }
}
