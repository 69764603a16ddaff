package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.record.stock.Order;
import fayline.flow.result.stock.OrderCheck;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Takes in what was ordered: every measure of the drawing is read, then it is accepted or goes back. What is outside the drawing, or of
 * another revision, is accepted only with a reason.
 */
public final class ReceiveOrder {
    private final ShopRecord shop;

    /** On a shop's record. */
    public ReceiveOrder(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What came.
     *
     * @param order the order
     * @param revision the revision that stands on it; may be empty where the order names none
     * @param measured what was measured, as typed
     * @param accepted whether it is accepted; otherwise it goes back
     * @param note why, or what else was seen
     * @param due where it goes back, when the next one is promised; may be empty
     */
    public record Came(
            String order, String revision, List<Order.Measured> measured, boolean accepted, String note, String due) {
        /** Copies the list. */
        public Came {
            measured = List.copyOf(measured);
        }
    }

    /**
     * Records what came.
     *
     * @param sent who sends it under which id
     * @param came what came
     * @param at when; now where nothing is said
     */
    public Outcome receive(Sent sent, Came came, Optional<Instant> at) {
        return shop.deciding(() -> {
            Optional<Order> order = shop.state().stock().order(came.order());
            if (order.isEmpty()) {
                return Outcome.refused("There is no order \"" + came.order() + "\".");
            }
            Optional<Definition> definition = shop.definition(order.get().project());
            if (definition.isEmpty()) {
                return Outcome.refused("The project of order " + came.order() + " is not in this shop.");
            }
            Instant when = at.orElseGet(() -> shop.timeOf(sent));
            Checks checks = new Checks(definition.get());
            checks.person("by", sent.by());
            checks.time(sent, when, shop.now());
            List<Finding> off = OrderCheck.of(order.get(), came.revision(), came.measured());
            check(definition.get(), checks, order.get(), came, off);
            if (!shop.knows(sent.client()) && order.get().accepted().isPresent()) {
                checks.stop("order", "order " + came.order() + " again", "an order that is still open", "");
            }
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("What came was not recorded.", checks.problems());
            }
            Outcome outcome = shop.append(
                    Checks.entry(shop, sent, order.get().project(), EntryKind.ORDER_RECEIVED, payload(came, when)));
            return outcome.stands() ? outcome.with(off) : outcome;
        });
    }

    private static void check(Definition d, Checks checks, Order order, Came came, List<Finding> off) {
        for (Order.Feature f : order.features()) {
            Optional<Order.Measured> found = came.measured().stream()
                    .filter(m -> m.name().equals(f.name()))
                    .findFirst();
            if (found.isPresent()) {
                PlaceOrder.length(checks, "measured." + f.name(), found.get().found());
            } else if (came.accepted()) {
                checks.stop(
                        "measured." + f.name(), "nothing", "the reading of " + f.name() + ", drawn " + f.drawn(), "");
            }
        }
        for (Order.Measured m : came.measured()) {
            if (order.features().stream().noneMatch(f -> f.name().equals(m.name()))) {
                checks.stop("measured", "\"" + m.name() + "\"", "a measure that the order names", "");
            }
        }
        boolean wrong = off.stream().anyMatch(f -> f.severity() == Severity.STOP);
        checks.text("note", came.note(), !came.accepted() || wrong);
        new StoreChecks(d, checks).day("due", came.due(), false);
    }

    private static Value.Fields payload(Came c, Instant when) {
        Value.Fields f = Value.Fields.NONE
                .with("order", c.order())
                .with("at", when.toString())
                .withUnlessEmpty("revision", c.revision())
                .withUnlessEmpty("accepted", c.accepted() ? "yes" : "")
                .withUnlessEmpty("note", c.note())
                .withUnlessEmpty("due", c.due());
        return c.measured().isEmpty()
                ? f
                : f.with(
                        "measured",
                        new Value.Many(c.measured().stream()
                                .map(m -> (Value)
                                        Value.Fields.NONE.with("name", m.name()).with("found", m.found()))
                                .toList()));
    }
}
