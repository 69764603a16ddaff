package fayline.app.usecase.view;

import fayline.flow.result.stock.StoresResult;
import fayline.flow.result.stock.take.LotAudit;
import fayline.flow.result.stock.take.StockTakeAudit;
import java.util.List;

/** The stores against the work, in the order of the plan: what runs out when, and what to order by when. */
public final class StoresByPlan {
    private StoresByPlan() {}

    /** What stock-takes say of mixing ratios, the latest first. */
    public static List<LotAudit> audits(ShopView view) {
        return new StockTakeAudit(view.definition(), view.state(), view.result().steps()).all();
    }

    /** The stores as the shop is seen. */
    public static StoresResult of(ShopView view) {
        return view.stores().get();
    }
}
