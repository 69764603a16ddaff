package fayline.app.usecase.folder;

import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.MoveLot;
import fayline.app.usecase.stores.PlaceOrder;
import fayline.app.usecase.stores.ReceiveLot;
import fayline.app.usecase.stores.ReceiveOrder;
import fayline.app.usecase.stores.ReceivedLot;
import fayline.app.usecase.stores.TakeStock;
import fayline.flow.record.stock.Order;
import fayline.flow.record.stock.StockTake;
import fayline.store.file.HistoryEvent;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Does what a history tells of the stores and of orders. */
final class StoresReplay {
    private final ShopRecord shop;
    private final String project;

    StoresReplay(ShopRecord shop, String project) {
        this.shop = shop;
        this.project = project;
    }

    Outcome replay(Sent sent, HistoryEvent e) {
        return switch (e.act()) {
            case RECEIVE -> receive(sent, e);
            case MOVE ->
                new MoveLot(shop).move(sent, project, lot(e), e.said("place").equals("cold"), Optional.of(e.at()));
            case COUNT ->
                new TakeStock(shop)
                        .take(
                                sent,
                                project,
                                e.rows().stream()
                                        .map(r -> new StockTake.Count(at(r, "lot"), at(r, "left")))
                                        .toList(),
                                TakeStock.Against.of(shop, project, e.at()),
                                Optional.of(e.at()));
            case ORDER -> order(sent, e);
            default ->
                new ReceiveOrder(shop)
                        .receive(
                                sent,
                                new ReceiveOrder.Came(
                                        e.said("order"),
                                        e.said("revision"),
                                        e.rows().stream()
                                                .map(r -> new Order.Measured(at(r, "name"), at(r, "found")))
                                                .toList(),
                                        MadeReplay.isYes(e, "accepted"),
                                        e.text(),
                                        e.said("due")),
                                Optional.of(e.at()));
        };
    }

    private Outcome receive(Sent sent, HistoryEvent e) {
        return new ReceiveLot(shop)
                .receive(
                        sent,
                        project,
                        new ReceivedLot(
                                lot(e),
                                e.of(),
                                e.said("component"),
                                e.said("quantity"),
                                MadeReplay.isYes(e, "weighed"),
                                e.said("received"),
                                e.said("expires"),
                                e.said("opened-life"),
                                e.said("price"),
                                e.said("order")),
                        Optional.empty(),
                        Optional.of(e.at()));
    }

    private Outcome order(Sent sent, HistoryEvent e) {
        return new PlaceOrder(shop)
                .place(
                        sent,
                        project,
                        new PlaceOrder.Placed(
                                e.said("order"),
                                e.said("what"),
                                e.said("quantity"),
                                e.said("maker"),
                                e.said("drawing"),
                                e.said("revision"),
                                e.said("due"),
                                e.said("price"),
                                e.said("needed").isEmpty()
                                        ? List.of()
                                        : List.of(e.said("needed").split(" ")),
                                e.rows().stream()
                                        .map(r -> new Order.Feature(at(r, "name"), at(r, "drawn"), at(r, "within")))
                                        .toList()),
                        Optional.of(e.at()));
    }

    private static String lot(HistoryEvent e) {
        return e.values().getOrDefault("lot", "");
    }

    private static String at(Map<String, String> row, String key) {
        return row.getOrDefault(key, "");
    }
}
