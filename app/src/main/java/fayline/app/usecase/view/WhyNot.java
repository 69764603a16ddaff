package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanConflict;
import fayline.flow.planner.PlanConflict.Conflict;
import fayline.flow.planner.SerialPlanner;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What keeps steps out of the plan, worked out once for each plan: only for those that do not merely wait for another such step. */
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
        Set<String> out = plan.unplanned().stream().map(Plan.Unplanned::step).collect(Collectors.toSet());
        return work.steps().stream()
                .filter(s -> out.contains(s.id()) && s.after().stream().noneMatch(l -> out.contains(l.step())))
                .limit(MOST_STEPS)
                .flatMap(s -> PlanConflict.of(work, s.id(), SerialPlanner.quick()).stream())
                .toList();
    }
}
