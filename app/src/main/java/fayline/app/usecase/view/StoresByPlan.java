package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;

/** The stores against the work in the order of the plan: what runs out when, and what to order by when. */
public final class StoresByPlan {
    private StoresByPlan() {}

    /** The stores as the shop is seen. */
    public static StoresResult of(ShopView view) {
        Map<String, Instant> starts = new HashMap<>();
        for (Plan.PlannedStep s : view.plan().steps()) {
            starts.put(s.step(), s.start());
        }
        return new StoresCheck(view.definition(), view.state())
                .check(view.result().steps(), starts);
    }
}
