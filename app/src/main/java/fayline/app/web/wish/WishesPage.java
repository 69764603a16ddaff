package fayline.app.web.wish;

import fayline.app.usecase.act.WishForSteps;
import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhyNot;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import io.javalin.config.RoutesConfig;
import java.util.List;
import java.util.Optional;

/** All that the lead has decided about steps beforehand, to be looked over and withdrawn. */
public final class WishesPage implements Page {
    private static final String HERE = "/wishes";
    private final Sights sights;
    private final ShopRecord shop;
    private final WhatIf whatIf;
    private final WhyNot whyNot = new WhyNot();

    /**
     * Makes the page.
     *
     * @param sights looks at the shop
     * @param shop the record to add to
     * @param whatIf plans without a wish
     */
    public WishesPage(Sights sights, ShopRecord shop, WhatIf whatIf) {
        this.sights = sights;
        this.shop = shop;
        this.whatIf = whatIf;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, List.of()));
        });
        routes.post(
                HERE + "/withdraw",
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> withdraw(visit, sight));
                },
                Asks.to(Act.CHANGE_DEFINITION));
    }

    private void withdraw(Visit visit, Sight sight) {
        Sent sent = Sent.live(visit.once(), sight.sender(visit));
        Outcome outcome =
                new WishForSteps(shop).withdraw(sent, sight.view().project(), visit.needed("wish", "The wish"));
        if (outcome.stands() || outcome.kind() == Outcome.Kind.NOTHING) {
            visit.say("Withdrawn. " + Answers.said(outcome));
            visit.lead(visit.field("back").isEmpty() ? HERE : visit.field("back"));
            return;
        }
        visit.status(422);
        show(visit, sight, Answers.refused(outcome));
    }

    private void show(Visit visit, Sight sight, List<String> refused) {
        boolean costs = !visit.query("costs").isEmpty();
        List<WishRow> rows = new WishRows(sight, whyNot).of(w -> true, costs ? Optional.of(whatIf) : Optional.empty());
        List<WishRow> bind = rows.stream().filter(r -> !isPast(r)).toList();
        sights.show(
                visit,
                "wish/wishes.jte",
                sights.frame(visit, sight, "Wishes", "/weeks"),
                new WishesView(
                        bind,
                        rows.stream().filter(WishesPage::isPast).toList(),
                        costs || bind.isEmpty() ? "" : HERE + "?costs=yes",
                        refused));
    }

    private static boolean isPast(WishRow row) {
        return row.state() == WishRow.State.PAST;
    }
}
