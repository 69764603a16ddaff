package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.planner.serial.ChainSchedule;

/**
 * Plans in plain Java, chain by chain, within a fraction of a second for a shop's twelve weeks. It promises a plan that keeps
 * the rules, not the best one.
 */
public final class SerialPlanner implements PlanSolver {
    private static final double EPS = 1e-9;

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

    /** Plans the work in each of its divisions; the best by the goal's score counts, of equal ones the first. */
    @Override
    public Plan plan(Work work, PlanGoal goal) {
        Plan best = plan(work);
        double least = new PlanScorer(work, goal).score(best).total();
        for (Work other : work.sets().otherwise()) {
            Work alone = work.inSetsOf(other);
            Plan plan = plan(alone);
            double score = new PlanScorer(alone, goal).score(plan).total();
            if (score < least - EPS) {
                best = plan;
                least = score;
            }
        }
        return best;
    }
}
