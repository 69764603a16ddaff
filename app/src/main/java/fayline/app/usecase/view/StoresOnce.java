package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.project.Definition;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** The stores against the work in the order of the plan, reckoned when they are asked for first. Safe for several threads. */
public final class StoresOnce {
    private final Definition definition;
    private final ShopState state;
    private final ProjectResult result;
    private final Plan plan;
    private @Nullable StoresResult reckoned;

    StoresOnce(Picture.Seen seen, Plan plan) {
        this.definition = seen.definition();
        this.state = seen.state();
        this.result = seen.result();
        this.plan = plan;
    }

    synchronized StoresResult get() {
        StoresResult known = reckoned;
        if (known == null) {
            Map<String, Instant> starts = new HashMap<>();
            for (Plan.PlannedStep s : plan.steps()) {
                starts.put(s.step(), s.start());
            }
            known = new StoresCheck(definition, state).check(result.steps(), starts);
            reckoned = known;
        }
        return known;
    }
}
