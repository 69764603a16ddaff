package fayline.solver.shop;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.goal.PlanGoal;
import fayline.solver.CpSatLibrary;

/** Betters plans with CP-SAT: the whole once, from the plan as it stands, then parts of it anew until the limit. */
public final class ShopPlanner implements PlanImprover {
    private final CpSatLibrary library;

    /**
     * With a library.
     *
     * @param library the native library, loaded when first needed
     */
    public ShopPlanner(CpSatLibrary library) {
        this.library = library;
    }

    @Override
    public Improved improve(Work work, Plan base, PlanGoal goal, Limits limits, Watch watch) {
        library.load();
        return new ShopSearch(library, work, base, goal, limits, watch).go();
    }
}
