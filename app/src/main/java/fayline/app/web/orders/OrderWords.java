package fayline.app.web.orders;

import fayline.app.web.frame.Sight;
import fayline.flow.record.stock.Order;
import fayline.flow.result.stock.OrderCheck;
import fayline.flow.result.stock.Orders;
import fayline.flow.result.stock.StoresResult;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Orders in words. */
final class OrderWords {
    private final Sight sight;
    private final boolean costs;

    OrderWords(Sight sight, boolean costs) {
        this.sight = sight;
        this.costs = costs;
    }

    OrdersView.ToOrder toOrder(StoresResult.Shortage s) {
        return new OrdersView.ToOrder(
                sight.stuffName(s.of()) + (s.component().isEmpty() ? "" : ", " + s.component()),
                sight.amount(s.shortBy()),
                s.orderBy()
                        .map(d -> (s.late() ? "now: the last day was " : "by ")
                                + sight.time().day(d))
                        .orElse("lead time unknown: ask how long it takes"),
                sight.stepName(s.step())
                        + s.by().map(b -> ", " + sight.time().at(b)).orElse(""),
                Sight.cardLink(s.step()),
                s.late());
    }

    List<OrdersView.Placed> placed() {
        List<OrdersView.Placed> all = new ArrayList<>();
        for (Order o : sight.view().record().stock().orders()) {
            if (o.project().equals(sight.view().project())) {
                all.add(new OrdersView.Placed(
                        o.id(),
                        "/orders/" + o.id(),
                        what(o),
                        due(o),
                        state(o),
                        o.accepted().isEmpty(),
                        price(o)));
            }
        }
        Collections.reverse(all);
        return all;
    }

    private String what(Order o) {
        return o.quantity() + " of " + sight.stuffName(o.what()) + (o.maker().isEmpty() ? "" : " from " + o.maker());
    }

    private String due(Order o) {
        return Orders.due(o, sight.time().now()).map(sight.time()::day).orElse(o.due());
    }

    private String price(Order o) {
        return costs && !o.price().isEmpty()
                ? o.price() + " " + sight.definition().facts().currency()
                : "";
    }

    private String state(Order o) {
        return o.accepted()
                .map(a -> "accepted " + sight.time().at(a.at()))
                .orElse(o.arrivals().isEmpty() ? "on order" : "went back, the next is due " + due(o));
    }

    /** What the definition says is on order and no order of the record stands for. */
    List<String> others() {
        return sight.definition().deliveries().stream()
                .filter(d -> d.arrived().isEmpty()
                        && sight.view().record().stock().order(d.id()).isEmpty())
                .map(d -> d.quantity() + " of " + sight.stuffName(d.what()) + ", due "
                        + sight.time().day(d.due()))
                .toList();
    }

    OrderView order(Order o, List<String> refused, List<String> typed) {
        List<OrderView.Fact> facts = new ArrayList<>();
        facts.add(new OrderView.Fact("What", what(o)));
        if (!o.drawing().isEmpty()) {
            facts.add(new OrderView.Fact("Drawing", o.drawing() + ", revision " + o.revision()));
        }
        facts.add(new OrderView.Fact("Ordered", sight.time().at(o.at()) + ", " + sight.personName(o.by())));
        facts.add(new OrderView.Fact("Promised", due(o)));
        if (!price(o).isEmpty()) {
            facts.add(new OrderView.Fact("Price", price(o)));
        }
        facts.add(new OrderView.Fact("State", state(o)));
        List<OrderView.Feature> features = new ArrayList<>();
        for (Order.Feature f : o.features()) {
            int n = features.size();
            features.add(new OrderView.Feature(
                    n, f.name(), f.drawn() + " within " + f.within(), n < typed.size() ? typed.get(n) : ""));
        }
        return new OrderView(
                refused,
                o.id(),
                facts,
                o.revision(),
                features,
                o.arrivals().stream().map(a -> arrival(o, a)).toList(),
                opens(o),
                o.accepted().isEmpty());
    }

    private OrderView.Arrival arrival(Order o, Order.Arrival a) {
        return new OrderView.Arrival(
                sight.time().at(a.at()) + ", " + sight.personName(a.by()),
                a.accepted() ? "accepted" : "sent back",
                a.accepted(),
                a.note(),
                sight.say(OrderCheck.of(o, a.revision(), a.measured())));
    }

    /** The steps that wait for it: the checks of the new part first. */
    private List<OrderView.Link> opens(Order o) {
        List<OrderView.Link> links = new ArrayList<>();
        for (String n : o.needed()) {
            String made = n.split("/", -1)[0];
            Optional<String> first = sight.result().stepsOf(made).stream()
                    .filter(s -> s.work().state() == fayline.flow.plan.WorkStep.State.TODO)
                    .map(s -> s.id())
                    .findFirst();
            links.add(first.map(s -> new OrderView.Link(sight.stepName(s), Sight.cardLink(s)))
                    .orElse(new OrderView.Link(sight.madeName(made), sight.madeLink(made))));
        }
        return links;
    }
}
