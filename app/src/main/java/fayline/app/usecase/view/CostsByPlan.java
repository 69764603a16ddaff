package fayline.app.usecase.view;

import fayline.flow.result.cost.CostReport;
import fayline.flow.result.cost.ProjectCosts;

/** What the work costs as the shop is seen. */
public final class CostsByPlan {
    private CostsByPlan() {}

    /** Costs of the project that is seen. */
    public static CostReport of(ShopView view) {
        return ProjectCosts.of(view.definition(), view.state(), view.result(), StoresByPlan.of(view));
    }
}
