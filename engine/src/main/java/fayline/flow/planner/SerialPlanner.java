package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.planner.serial.ChainSchedule;
import java.util.Optional;

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

    /**
     * Plans the work in its own sets, and in those of another division where one pass over each promises more; the better plan by the
     * goal's score counts. So sets cost little time where they cannot be better.
     */
    @Override
    public Plan plan(Work work, PlanGoal goal) {
        if (work.sets().otherwise().isEmpty()) {
            return plan(work);
        }
        Optional<Work> likely = Optional.empty();
        double promised = score(work, quick().plan(work), goal);
        for (Work other : work.sets().otherwise()) {
            Work alone = work.inSetsOf(other);
            double score = score(alone, quick().plan(alone), goal);
            if (score < promised - EPS) {
                likely = Optional.of(alone);
                promised = score;
            }
        }
        Plan own = plan(work);
        double ownScore = score(work, own, goal);
        return likely.map(w -> new Divided(w, plan(w)))
                .filter(d -> score(d.work(), d.plan(), goal) < ownScore - EPS)
                .map(Divided::plan)
                .orElse(own);
    }

    private record Divided(Work work, Plan plan) {}

    private static double score(Work work, Plan plan, PlanGoal goal) {
        return new PlanScorer(work, goal).score(plan).total();
    }
}
