package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanReasons;
import fayline.flow.planner.PlanReasons.Reason;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Why each step of the plan begins when it does, and the chain that holds its end; worked out once for each plan. */
public final class WhyHere {
    private Optional<Kept> kept = Optional.empty();

    /** Nothing kept yet. */
    public WhyHere() {}

    private record Kept(Work work, Plan plan, Map<String, Reason> reasons, List<Reason> chain) {}

    /** Why a step begins when it does; empty for one that is begun or has no place in the plan. */
    public Optional<Reason> of(ShopView view, String step) {
        return Optional.ofNullable(kept(view).reasons().get(step));
    }

    /** The chain that holds the end of all, the last step leading. */
    public List<Reason> chain(ShopView view) {
        return kept(view).chain();
    }

    private synchronized Kept kept(ShopView view) {
        if (kept.filter(k -> k.plan().equals(view.plan()) && k.work().equals(view.work()))
                .isEmpty()) {
            Map<String, Reason> reasons = new HashMap<>();
            PlanReasons.of(view.work(), view.plan()).forEach(r -> reasons.put(r.step(), r));
            List<Reason> chain = PlanReasons.chain(
                    view.work(),
                    view.plan(),
                    view.plan().steps().stream().map(Plan.PlannedStep::step).collect(Collectors.toSet()));
            kept = Optional.of(new Kept(view.work(), view.plan(), reasons, chain));
        }
        return kept.orElseThrow();
    }
}
