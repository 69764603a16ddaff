package fayline.app.web;

import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.LookAtShop;
import fayline.app.usecase.view.ShopView;
import fayline.app.web.frame.Sight;
import fayline.flow.plan.WorkStep;
import fayline.flow.result.step.StepResult;

/** A hold point of the demonstration that is still to do. */
final class HoldStep {
    private HoldStep() {}

    /** The address of its card. */
    static String path(ShopRecord shop) {
        ShopView view = new LookAtShop(shop).look("").orElseThrow();
        String id = view.result().steps().stream()
                .filter(StepResult::signed)
                .filter(s -> s.work().state() == WorkStep.State.TODO)
                .map(StepResult::id)
                .findFirst()
                .orElseThrow();
        String link = Sight.cardLink(id);
        return link.substring(0, link.indexOf('?'));
    }
}
