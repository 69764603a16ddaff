package fayline.app.web.orders;

import fayline.app.usecase.people.Act;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.app.usecase.stores.PlaceOrder;
import fayline.app.usecase.stores.ReceiveOrder;
import fayline.app.usecase.view.StoresByPlan;
import fayline.app.web.frame.Answers;
import fayline.app.web.frame.Asks;
import fayline.app.web.frame.Frame;
import fayline.app.web.frame.Page;
import fayline.app.web.frame.Refusal;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.Sights;
import fayline.app.web.frame.Visit;
import fayline.flow.record.stock.Order;
import io.javalin.config.RoutesConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The order list, orders to makers outside, and what came of them. */
public final class OrdersPage implements Page {
    private static final String HERE = "/orders";
    private static final int MEASURES = 6;
    private final Sights sights;
    private final ShopRecord shop;

    /** Makes the page. */
    public OrdersPage(Sights sights, ShopRecord shop) {
        this.sights = sights;
        this.shop = shop;
    }

    @Override
    public void addTo(RoutesConfig routes) {
        routes.get(HERE, ctx -> with(new Visit(ctx), (v, s) -> show(v, s, List.of())));
        routes.post(HERE, ctx -> with(new Visit(ctx), this::place), Asks.to(Act.ORDER));
        routes.get(HERE + "/{id}", ctx -> with(new Visit(ctx), (v, s) -> show(v, s, order(v, s), List.of())));
        routes.post(HERE + "/{id}", ctx -> with(new Visit(ctx), this::receive), Asks.to(Act.ORDER));
    }

    private void with(Visit visit, BiConsumer<Visit, Sight> then) {
        sights.with(visit, sight -> then.accept(visit, sight));
    }

    private void show(Visit visit, Sight sight, List<String> refused) {
        Frame frame = sights.frame(visit, sight, "Orders", "/stores");
        OrderWords words = new OrderWords(sight, frame.may(Act.SEE_COSTS));
        sights.show(
                visit,
                "orders/orders.jte",
                frame,
                new OrdersView(
                        refused,
                        StoresByPlan.of(sight.view()).shortages().stream()
                                .map(words::toOrder)
                                .toList(),
                        words.placed(),
                        words.others(),
                        sight.time().today().toString(),
                        IntStream.range(0, MEASURES).boxed().toList()));
    }

    private static Order order(Visit visit, Sight sight) {
        return sight.view()
                .record()
                .stock()
                .order(visit.inPath("id"))
                .orElseThrow(() -> Refusal.absent("order of that name"));
    }

    private void show(Visit visit, Sight sight, Order order, List<String> refused) {
        Frame frame = sights.frame(visit, sight, "Order " + order.id(), "/stores");
        List<String> typed = visit.fields("found");
        sights.show(
                visit,
                "orders/order.jte",
                frame,
                new OrderWords(sight, frame.may(Act.SEE_COSTS)).order(order, refused, typed));
    }

    private void place(Visit visit, Sight sight) {
        List<Order.Feature> features = new ArrayList<>();
        List<String> names = visit.fields("name");
        List<String> drawn = visit.fields("drawn");
        List<String> within = visit.fields("within");
        for (int i = 0; i < Math.min(names.size(), Math.min(drawn.size(), within.size())); i++) {
            if (!names.get(i).isBlank()
                    || !drawn.get(i).isBlank()
                    || !within.get(i).isBlank()) {
                features.add(new Order.Feature(
                        names.get(i).strip(),
                        drawn.get(i).strip(),
                        within.get(i).strip()));
            }
        }
        Outcome outcome = new PlaceOrder(shop)
                .place(
                        Sent.live(visit.once(), sight.sender(visit)),
                        sight.view().project(),
                        new PlaceOrder.Placed(
                                visit.field("order"),
                                visit.field("what"),
                                visit.field("quantity"),
                                visit.field("maker"),
                                visit.field("drawing"),
                                visit.field("revision"),
                                visit.field("due"),
                                visit.field("price"),
                                Stream.of(visit.field("needed").split("[ ,]+"))
                                        .filter(n -> !n.isBlank())
                                        .toList(),
                                features),
                        Optional.empty());
        if (outcome.stands()) {
            visit.say(Answers.said(outcome), "orders-new");
            visit.lead(HERE + "/" + visit.field("order"));
            return;
        }
        visit.status(422);
        show(visit, sight, Answers.refused(outcome));
    }

    private void receive(Visit visit, Sight sight) {
        Order order = order(visit, sight);
        List<String> found = visit.fields("found");
        List<Order.Measured> measured = new ArrayList<>();
        for (int i = 0; i < Math.min(found.size(), order.features().size()); i++) {
            if (!found.get(i).isBlank()) {
                measured.add(new Order.Measured(
                        order.features().get(i).name(), found.get(i).strip()));
            }
        }
        Outcome outcome = new ReceiveOrder(shop)
                .receive(
                        Sent.live(visit.once(), sight.sender(visit)),
                        new ReceiveOrder.Came(
                                order.id(),
                                visit.field("revision"),
                                measured,
                                visit.field("verdict").equals("accept"),
                                visit.field("note"),
                                visit.field("due")),
                        Optional.empty());
        if (outcome.stands()) {
            visit.say(Answers.said(outcome), "order-came");
            visit.lead(HERE + "/" + order.id());
            return;
        }
        visit.status(422);
        show(visit, sight, order, Answers.refused(outcome));
    }
}
