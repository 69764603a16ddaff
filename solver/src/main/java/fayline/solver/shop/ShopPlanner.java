package fayline.solver.shop;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanImprover;
import fayline.flow.planner.goal.PlanGoal;
import fayline.solver.CpSatLibrary;

/** Betters plans with CP-SAT: the whole once, from the plan as it stands, then parts of it anew until the limit. */
public final class ShopPlanner implements PlanImprover {
    private final CpSatLibrary library;
    private final boolean plain;

    /**
     * With a library.
     *
     * @param library the native library, loaded when first needed
     */
    public ShopPlanner(CpSatLibrary library) {
        this(library, false);
    }

    private ShopPlanner(CpSatLibrary library, boolean plain) {
        this.library = library;
        this.plain = plain;
    }

    /**
     * The whole model alone, without a start, to measure the other against. Its first plan may be worse than the base.
     *
     * @param library the native library, loaded when first needed
     */
    public static ShopPlanner plain(CpSatLibrary library) {
        return new ShopPlanner(library, true);
    }

    @Override
    public Improved improve(Work work, Plan base, PlanGoal goal, Limits limits, Watch watch) {
        library.load();
        Work own = work.inSetsOf(base);
        return plain || own.sets().otherwise().isEmpty()
                ? new ShopSearch(library, own, base, goal, limits, watch, plain).go()
                : new SetSearch(library, own, base, goal, limits, watch).go();
    }
}
