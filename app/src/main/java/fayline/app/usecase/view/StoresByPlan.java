package fayline.app.usecase.view;

import fayline.flow.plan.Plan;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import fayline.flow.result.stock.take.LotAudit;
import fayline.flow.result.stock.take.StockTakeAudit;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stores against the work, in the order of the plan: what runs out when, and what to order by when. */
public final class StoresByPlan {
    private StoresByPlan() {}

    /** What stock-takes say of mixing ratios, the latest first. */
    public static List<LotAudit> audits(ShopView view) {
        return new StockTakeAudit(view.definition(), view.state(), view.result().steps()).all();
    }

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
