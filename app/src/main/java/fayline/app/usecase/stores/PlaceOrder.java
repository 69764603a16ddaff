package fayline.app.usecase.stores;

import fayline.app.usecase.act.Checks;
import fayline.app.usecase.act.ProjectDeed;
import fayline.app.usecase.shop.Outcome;
import fayline.app.usecase.shop.Sent;
import fayline.app.usecase.shop.ShopRecord;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.Definition;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import fayline.flow.record.stock.Order;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Orders something from outside: a part made to a drawing, or material. */
public final class PlaceOrder {
    private final ShopRecord shop;

    /** On a shop's record. */
    public PlaceOrder(ShopRecord shop) {
        this.shop = shop;
    }

    /**
     * What is ordered. All texts as typed.
     *
     * @param order its name; that of a delivery of the definition where it is one
     * @param what the part, material or system by id, or in words
     * @param quantity how much
     * @param maker who makes or delivers it
     * @param drawing the drawing; may be empty
     * @param revision its revision; may be empty
     * @param due the promised day
     * @param price what it costs in all; may be empty
     * @param needed the parts, joints or steps that wait for it
     * @param features what is measured when it comes
     */
    public record Placed(
            String order,
            String what,
            String quantity,
            String maker,
            String drawing,
            String revision,
            String due,
            String price,
            List<String> needed,
            List<Order.Feature> features) {
        /** Copies the lists. */
        public Placed {
            needed = List.copyOf(needed);
            features = List.copyOf(features);
        }
    }

    /**
     * Records an order.
     *
     * @param sent who sends it under which id
     * @param project the project it is for
     * @param placed what is ordered
     * @param at when; now where nothing is said
     */
    public Outcome place(Sent sent, String project, Placed placed, Optional<Instant> at) {
        return ProjectDeed.decide(shop, sent, project, at, (definition, checks, when) -> {
            check(definition, checks, placed);
            if (!shop.knows(sent.client())
                    && shop.state().stock().order(placed.order()).isPresent()) {
                checks.stop("order", "order " + placed.order() + " a second time", "a name not given yet", "");
            }
            if (!checks.problems().isEmpty()) {
                return Outcome.refused("The order was not recorded.", checks.problems());
            }
            return shop.append(Checks.entry(shop, sent, project, EntryKind.ORDER_PLACED, payload(placed, when)));
        });
    }

    private static void check(Definition d, Checks checks, Placed p) {
        StoreChecks own = new StoreChecks(d, checks);
        if (!p.order().matches("[a-z0-9][a-z0-9-]{0,63}")) {
            checks.stop("order", "\"" + p.order() + "\"", "a name of a-z, 0-9 and hyphens", "");
        }
        checks.text("what", p.what(), true);
        checks.text("quantity", p.quantity(), true);
        for (String text : List.of(p.maker(), p.drawing(), p.revision())) {
            checks.text("order", text, false);
        }
        own.day("due", p.due(), true);
        if (!p.price().isEmpty() && !p.price().matches("[0-9]{1,9}(\\.[0-9]{1,2})?")) {
            checks.stop("price", "\"" + p.price() + "\"", "an amount in the project's currency such as 480", "");
        }
        if (!p.drawing().isEmpty() && p.revision().isEmpty()) {
            checks.stop("revision", "nothing", "the revision of drawing " + p.drawing(), "");
        }
        for (String n : p.needed()) {
            String made = n.contains("/") ? n.substring(0, n.indexOf('/')) : n;
            if (d.parts().find(made).isEmpty() && d.joints().find(made).isEmpty()) {
                checks.stop("needed", "\"" + n + "\"", "a part, joint or step of the definition", "");
            }
        }
        Set<String> once = new HashSet<>();
        for (Order.Feature f : p.features()) {
            checks.text("features", f.name(), true);
            length(checks, "features.drawn", f.drawn());
            length(checks, "features.within", f.within());
            if (!once.add(f.name())) {
                checks.stop("features", f.name() + " twice", "each measure once", "");
            }
        }
    }

    static Optional<Length> length(Checks checks, String key, String typed) {
        try {
            return Optional.of(QuantityParser.parse(typed, QuantityKind.LENGTH).value());
        } catch (UnreadableQuantityException e) {
            checks.stop(key, "\"" + e.found() + "\"", e.expected(), e.suggestion());
            return Optional.empty();
        }
    }

    private static Value.Fields payload(Placed p, Instant when) {
        Value.Fields f = Value.Fields.NONE
                .with("order", p.order())
                .with("at", when.toString())
                .with("what", p.what())
                .with("quantity", p.quantity())
                .withUnlessEmpty("maker", p.maker())
                .withUnlessEmpty("drawing", p.drawing())
                .withUnlessEmpty("revision", p.revision())
                .with("due", p.due())
                .withUnlessEmpty("price", p.price());
        if (!p.needed().isEmpty()) {
            f = f.with("needed", p.needed());
        }
        if (!p.features().isEmpty()) {
            f = f.with(
                    "features",
                    new Value.Many(p.features().stream()
                            .map(x -> (Value) Value.Fields.NONE
                                    .with("name", x.name())
                                    .with("drawn", x.drawn())
                                    .with("within", x.within()))
                            .toList()));
        }
        return f;
    }
}
