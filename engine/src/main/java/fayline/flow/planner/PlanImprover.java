package fayline.flow.planner;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScore;

/** Looks for a better plan than a given one. A module border: the native solver stands behind it. */
public interface PlanImprover {
    /**
     * Looks for a better plan.
     *
     * @param work the work
     * @param base a plan of it that keeps the rules; what it leaves unplanned stays so
     * @param goal what is wanted
     * @param limits how far to look
     * @param watch who judges, hears of each better plan and may stop the search
     * @return the best that was found and counts, the base itself if none is better
     */
    Improved improve(Work work, Plan base, PlanGoal goal, Limits limits, Watch watch);

    /**
     * How far a search goes. Equal work, base, goal and limits give an equal plan, unless the watch stops the search.
     *
     * @param effortS limit in the solver's own deterministic time, of the order of seconds; positive
     * @param seed of what is chosen by chance
     */
    record Limits(double effortS, int seed) {
        /** Checks the range. */
        public Limits {
            if (!(effortS > 0) || Double.isInfinite(effortS)) {
                throw new IllegalArgumentException("an effort is more than nought, not " + effortS);
            }
        }
    }

    /** Who looks on. Calls come from the searching threads. */
    interface Watch {
        /** Whether a plan keeps the rules; one that does not is thrown away. */
        boolean counts(Plan plan);

        /** A better plan that counts. */
        default void better(Plan plan, PlanScore score) {}

        /** Whether to stop now and keep the best; asked often. */
        default boolean stop() {
            return false;
        }
    }

    /**
     * What a search found.
     *
     * @param plan the best plan
     * @param score its score
     * @param stopped whether the watch stopped the search before its limit
     * @param effortS deterministic time used
     * @param rounds how many parts of the plan were looked at anew
     * @param found how many better plans were found on the way
     * @param refused how many did not count
     */
    record Improved(Plan plan, PlanScore score, boolean stopped, double effortS, int rounds, int found, int refused) {}
}
