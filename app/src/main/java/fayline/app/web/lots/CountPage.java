package fayline.app.web.lots;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.TakeStock;
import fayline.app.usecase.view.StoresByPlan;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.TakesKept;
import fayline.app.web.frame.Typed;
import fayline.app.web.frame.Visit;
import fayline.flow.record.stock.StockTake;
import fayline.flow.result.stock.LotStanding;
import fayline.flow.result.stock.take.LotAudit;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** The form of a stock-take, and what stock-takes say of mixing ratios. */
public final class CountPage implements Page, TakesKept {
    private static final String HERE = "/stores/count";
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public CountPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(visit, sight -> show(visit, sight, List.of(), Map.of()));
        });
        routes.post(
                HERE,
                ctx -> {
                    Visit visit = new Visit(ctx);
                    sights.with(visit, sight -> take(visit, sight));
                },
                Asks.to(Act.WORK));
        routes.get("/stores/counts", ctx -> {
            Visit visit = new Visit(ctx);
            sights.with(
                    visit,
                    sight -> sights.show(
                            visit,
                            "lots/counts.jte",
                            sights.frame(visit, sight, "Stock-takes", "/stores"),
                            said(sight)));
        });
    }

    private void show(Visit visit, Sight sight, List<String> refused, Map<String, String> typed) {
        List<CountView.Row> rows = new ArrayList<>();
        for (LotStanding l : StoresByPlan.of(sight.view()).lots()) {
            rows.add(new CountView.Row(
                    rows.size(),
                    l.lot().id(),
                    LotWords.what(sight, l.lot()),
                    sight.amount(l.left()),
                    typed.getOrDefault(l.lot().id(), ""),
                    l.lot().quantity().asTyped()));
        }
        sights.show(
                visit,
                "lots/count.jte",
                sights.frame(visit, sight, "Take stock", "/stores"),
                new CountView(refused, rows));
    }

    @Override
    public Optional<Outcome> takeKept(Sight sight, String address, Typed typed, Sent sent) {
        if (!address.equals(HERE)) {
            return Optional.empty();
        }
        String project = sight.view().project();
        // what was counted without network is judged against the project as it was then
        TakeStock.Against then =
                TakeStock.Against.of(shop, project, typed.moment().orElseGet(shop::now));
        return Optional.of(new TakeStock(shop).take(sent, project, counts(typed), then, typed.moment()));
    }

    private static List<StockTake.Count> counts(Typed typed) {
        List<String> lots = typed.fields("lot");
        List<String> left = typed.fields("left");
        List<StockTake.Count> counts = new ArrayList<>();
        for (int i = 0; i < Math.min(lots.size(), left.size()); i++) {
            String said = left.get(i).strip();
            if (!said.isEmpty()) {
                counts.add(new StockTake.Count(lots.get(i), said));
            }
        }
        return counts;
    }

    private void take(Visit visit, Sight sight) {
        List<StockTake.Count> counts = counts(visit);
        Map<String, String> typed = new TreeMap<>();
        counts.forEach(c -> typed.put(c.lot(), c.left()));
        Outcome outcome = new TakeStock(shop)
                .take(
                        Sent.live(visit.once(), sight.sender(visit)),
                        sight.view().project(),
                        counts,
                        new TakeStock.Against(
                                sight.view().state(), sight.result().steps()),
                        Optional.empty());
        if (outcome.stands()) {
            visit.say(Answers.said(outcome), "stores-count");
            visit.lead("/stores/counts");
            return;
        }
        visit.status(422);
        show(visit, sight, Answers.refused(outcome), typed);
    }

    private static CountsView said(Sight sight) {
        List<LotAudit> audits = StoresByPlan.audits(sight.view());
        AuditWords words = new AuditWords(sight);
        List<StockTake> takes = new ArrayList<>(sight.view().record().stock().takes());
        Collections.reverse(takes);
        return new CountsView(takes.stream().map(t -> words.take(t, audits)).toList());
    }
}
