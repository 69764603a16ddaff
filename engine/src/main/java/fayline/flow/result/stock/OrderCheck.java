package fayline.flow.result.stock;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.basis.units.Length;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.record.stock.Order;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What came of an order against its drawing: the revision, and each measure within its limits or not. */
public final class OrderCheck {
    private OrderCheck() {}

    /**
     * Compares.
     *
     * @param order the order with what the drawing says
     * @param revision the revision that stands on what came; empty where none does
     * @param measured what was measured
     * @return a stop for each measure outside its limits and for another revision; a note where a measure is within
     */
    public static List<Finding> of(Order order, String revision, List<Order.Measured> measured) {
        List<Finding> found = new ArrayList<>();
        if (!order.revision().isEmpty() && !order.revision().equals(revision)) {
            found.add(new Finding(
                    Severity.STOP,
                    order.id(),
                    "Ordered to revision " + order.revision() + " of drawing " + order.drawing() + ", on it stands "
                            + (revision.isEmpty() ? "none" : revision) + ".",
                    "the order"));
        }
        for (Order.Feature f : order.features()) {
            measured.stream()
                    .filter(m -> m.name().equals(f.name()))
                    .findFirst()
                    .flatMap(m -> one(order, f, m.found()))
                    .ifPresent(found::add);
        }
        return found;
    }

    private static Optional<Finding> one(Order order, Order.Feature f, String typed) {
        Optional<Length> drawn = length(f.drawn());
        Optional<Length> within = length(f.within());
        Optional<Length> found = length(typed);
        if (drawn.isEmpty() || within.isEmpty() || found.isEmpty()) {
            return Optional.empty();
        }
        double off = found.get().metres() - drawn.get().metres();
        // A reading on the limit must not fall out by the last bit of a double.
        boolean in = Math.abs(off) <= within.get().metres() + 1e-12;
        return Optional.of(new Finding(
                in ? Severity.NOTE : Severity.STOP,
                order.id(),
                f.name() + " is " + typed + ", drawn " + f.drawn() + " within " + f.within()
                        + (in ? "." : ": outside the drawing."),
                "the drawing"));
    }

    private static Optional<Length> length(String text) {
        try {
            return Optional.of(QuantityParser.parse(text, QuantityKind.LENGTH).value());
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }
}
