package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanConflict;
import fayline.flow.planner.PlanConflict.Conflict;
import fayline.flow.planner.SerialPlanner;
import java.util.List;
import java.util.Optional;

/** What keeps steps out of the plan, worked out once for each plan: only where the trouble begins. */
public final class WhyNot {
    private static final int MOST_STEPS = 3;
    private Optional<Kept> kept = Optional.empty();

    /** Nothing kept yet. */
    public WhyNot() {}

    private record Kept(Work work, Plan plan, List<Conflict> conflicts) {}

    /** The conflicts of a plan. */
    public synchronized List<Conflict> of(ShopView view) {
        if (kept.filter(k -> k.plan().equals(view.plan()) && k.work().equals(view.work()))
                .isEmpty()) {
            kept = Optional.of(new Kept(view.work(), view.plan(), find(view.work(), view.plan())));
        }
        return kept.orElseThrow().conflicts();
    }

    private static List<Conflict> find(Work work, Plan plan) {
        if (plan.unplanned().isEmpty()) {
            return List.of();
        }
        return PlanConflict.roots(work, plan, SerialPlanner.quick(), MOST_STEPS).stream()
                .flatMap(s -> PlanConflict.of(work, s, SerialPlanner.quick()).stream())
                .toList();
    }
}
