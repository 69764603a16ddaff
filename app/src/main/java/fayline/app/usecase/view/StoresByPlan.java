package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.TakeStock;
import fayline.flow.plan.Plan;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The stores against the work, in the order of the plan: what runs out when, and what to order by when. */
public final class StoresByPlan {
    private StoresByPlan() {}

    /**
     * What a stock-take is judged against, as the shop was at a moment.
     *
     * @param shop the record
     * @param project the project whose steps draw from the stores
     * @param at the moment
     */
    public static TakeStock.Against against(ShopRecord shop, String project, Instant at) {
        ShopState state = RecordedState.of(shop.state(), project, at);
        return new TakeStock.Against(
                state,
                shop.definition(project)
                        .map(d -> ProjectCalculator.calculate(d, state).steps())
                        .orElse(List.of()));
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
