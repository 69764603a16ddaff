package fayline.flow.result.stock;

import fayline.flow.project.Definition;
import fayline.flow.project.stock.Delivery;
import fayline.flow.record.stock.Order;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Orders of the record as the deliveries that work waits for. */
public final class Orders {
    private Orders() {}

    /**
     * A definition with the orders of its project laid over what it says is on order: an order named as a delivery takes its place.
     *
     * @param d the definition
     * @param orders orders of the record
     * @param now the moment; nothing after it counts
     */
    public static Definition over(Definition d, List<Order> orders, Instant now) {
        Map<String, Delivery> all = new LinkedHashMap<>();
        d.deliveries().forEach(x -> all.put(x.id(), x));
        boolean any = false;
        for (Order o : orders) {
            if (o.project().equals(d.facts().id()) && !o.at().isAfter(now)) {
                Optional<Delivery> written = Optional.ofNullable(all.get(o.id()));
                Optional<Delivery> laid = delivery(o, written, now, d.shop().zone());
                laid.ifPresent(x -> all.put(x.id(), x));
                any |= laid.isPresent();
            }
        }
        return any ? d.withDeliveries(new ArrayList<>(all.values())) : d;
    }

    private static Optional<Delivery> delivery(Order o, Optional<Delivery> written, Instant now, ZoneId zone) {
        Optional<LocalDate> due = due(o, now);
        Optional<LocalDate> arrived = o.accepted()
                .filter(a -> !a.at().isAfter(now))
                .map(a -> a.at().atZone(zone).toLocalDate())
                .or(() -> written.flatMap(Delivery::arrived));
        return due.map(day -> new Delivery(
                o.id(),
                o.what(),
                o.quantity(),
                day,
                written.flatMap(Delivery::latest).filter(l -> l.isAfter(day)),
                arrived,
                o.needed().isEmpty() ? written.map(Delivery::needed).orElse(List.of()) : o.needed()));
    }

    /** The promised day: that of the order, or the one promised when it last went back. */
    public static Optional<LocalDate> due(Order o, Instant now) {
        String typed = o.arrivals().stream()
                .filter(a -> !a.at().isAfter(now) && !a.due().isEmpty())
                .map(Order.Arrival::due)
                .reduce((a, b) -> b)
                .orElse(o.due());
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
