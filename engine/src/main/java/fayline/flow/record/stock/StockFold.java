package fayline.flow.record.stock;

import fayline.flow.record.payload.Happened;
import fayline.flow.record.payload.Room;
import fayline.flow.record.payload.Value;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/** Folds {@code lot-received}, {@code lot-moved}, {@code stock-taken}, {@code order-placed} and {@code order-received}. */
public final class StockFold implements Room {
    private final SortedMap<Long, Receipt> receipts = new TreeMap<>();
    private final SortedMap<Long, LotMove> moves = new TreeMap<>();
    private final SortedMap<Long, StockTake> takes = new TreeMap<>();
    private final SortedMap<Long, Happened> orders = new TreeMap<>();
    private final SortedMap<Long, Happened> arrivals = new TreeMap<>();

    /** An empty fold. */
    public StockFold() {}

    @Override
    public void hold(Happened h) {
        switch (h.kind()) {
            case "lot-received" -> receipts.put(h.seq(), receipt(h));
            case "lot-moved" ->
                moves.put(
                        h.seq(),
                        new LotMove(
                                h.seq(),
                                h.at(),
                                h.by(),
                                h.fields().text("lot"),
                                h.fields().text("to").equals("cold")));
            case "stock-taken" -> takes.put(h.seq(), take(h));
            case "order-placed" -> orders.put(h.seq(), h);
            default -> arrivals.put(h.seq(), h);
        }
    }

    @Override
    public void drop(long seq) {
        for (Map<Long, ?> kept : List.of(receipts, moves, takes, orders, arrivals)) {
            kept.remove(seq);
        }
    }

    /** What all of it amounts to now. */
    public StockState state() {
        Map<String, List<Order.Arrival>> came = new LinkedHashMap<>();
        arrivals.values()
                .forEach(h -> came.computeIfAbsent(h.fields().text("order"), o -> new ArrayList<>())
                        .add(arrival(h)));
        return new StockState(
                List.copyOf(receipts.values()),
                List.copyOf(moves.values()),
                List.copyOf(takes.values()),
                orders.values().stream()
                        .map(h -> order(h, came.getOrDefault(h.fields().text("order"), List.of())))
                        .toList());
    }

    private static Receipt receipt(Happened h) {
        Value.Fields f = h.fields();
        return new Receipt(
                h.seq(),
                h.at(),
                h.by(),
                f.text("lot"),
                f.text("of"),
                f.text("component"),
                f.text("quantity"),
                f.text("weighed").equals("yes"),
                f.text("received"),
                f.text("expires"),
                f.text("opened-life"),
                f.text("price"),
                f.text("certificate"),
                f.text("order"));
    }

    private static StockTake take(Happened h) {
        List<StockTake.Count> counts = new ArrayList<>();
        for (Value.Fields c : rows(h, "counts")) {
            counts.add(new StockTake.Count(c.text("lot"), c.text("left")));
        }
        return new StockTake(h.seq(), h.at(), h.by(), counts);
    }

    private static Order order(Happened h, List<Order.Arrival> came) {
        Value.Fields f = h.fields();
        List<Order.Feature> features = new ArrayList<>();
        for (Value.Fields c : rows(h, "features")) {
            features.add(new Order.Feature(c.text("name"), c.text("drawn"), c.text("within")));
        }
        return new Order(
                h.seq(),
                h.at(),
                h.by(),
                h.project(),
                f.text("order"),
                f.text("what"),
                f.text("quantity"),
                f.text("maker"),
                f.text("drawing"),
                f.text("revision"),
                f.text("due"),
                f.text("price"),
                f.texts("needed"),
                features,
                came);
    }

    private static Order.Arrival arrival(Happened h) {
        Value.Fields f = h.fields();
        List<Order.Measured> measured = new ArrayList<>();
        for (Value.Fields c : rows(h, "measured")) {
            measured.add(new Order.Measured(c.text("name"), c.text("found")));
        }
        return new Order.Arrival(
                h.seq(),
                h.at(),
                h.by(),
                f.text("revision"),
                measured,
                f.text("accepted").equals("yes"),
                f.text("note"),
                f.text("due"));
    }

    private static List<Value.Fields> rows(Happened h, String name) {
        return h.fields().items(name).stream()
                .filter(Value.Fields.class::isInstance)
                .map(Value.Fields.class::cast)
                .toList();
    }
}
