package fayline.app.usecase.archive;

import fayline.flow.record.RecordState;
import fayline.flow.record.stock.LotMove;
import fayline.flow.record.stock.Order;
import fayline.flow.record.stock.Receipt;
import fayline.flow.record.stock.StockTake;
import fayline.store.file.table.CsvText;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What moved the stores, and what was ordered, as tables. */
final class StoresTables {
    private StoresTables() {}

    static Map<String, String> of(RecordState state) {
        Map<String, String> tables = new TreeMap<>();
        tables.put("lots-received.csv", receipts(state));
        tables.put("lots-moved.csv", moves(state));
        tables.put("stock-takes.csv", takes(state));
        tables.put("orders.csv", orders(state));
        tables.put("arrivals.csv", arrivals(state));
        return tables;
    }

    private static String receipts(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (Receipt r : state.stock().receipts()) {
            rows.add(List.of(
                    String.valueOf(r.seq()),
                    r.at().toString(),
                    r.by(),
                    r.lot(),
                    r.of(),
                    r.component(),
                    r.quantity(),
                    r.weighed() ? "yes" : "",
                    r.received(),
                    r.expires(),
                    r.openedLife(),
                    r.price(),
                    r.order(),
                    r.certificate()));
        }
        return CsvText.of(
                List.of(
                        "entry",
                        "at",
                        "by",
                        "lot",
                        "of",
                        "part",
                        "quantity",
                        "weighed",
                        "received",
                        "expires",
                        "opened life",
                        "price",
                        "order",
                        "certificate"),
                rows);
    }

    private static String moves(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (LotMove m : state.stock().moves()) {
            rows.add(List.of(String.valueOf(m.seq()), m.at().toString(), m.by(), m.lot(), m.cold() ? "cold" : "room"));
        }
        return CsvText.of(List.of("entry", "at", "by", "lot", "to"), rows);
    }

    private static String takes(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (StockTake t : state.stock().takes()) {
            for (StockTake.Count c : t.counts()) {
                rows.add(List.of(String.valueOf(t.seq()), t.at().toString(), t.by(), c.lot(), c.left()));
            }
        }
        return CsvText.of(List.of("entry", "at", "by", "lot", "left"), rows);
    }

    private static String orders(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (Order o : state.stock().orders()) {
            rows.add(List.of(
                    String.valueOf(o.seq()),
                    o.project(),
                    o.at().toString(),
                    o.by(),
                    o.id(),
                    o.what(),
                    o.quantity(),
                    o.maker(),
                    o.drawing(),
                    o.revision(),
                    o.due(),
                    o.price(),
                    String.join("; ", o.needed())));
        }
        return CsvText.of(
                List.of(
                        "entry",
                        "project",
                        "at",
                        "by",
                        "order",
                        "what",
                        "quantity",
                        "maker",
                        "drawing",
                        "revision",
                        "due",
                        "price",
                        "needed"),
                rows);
    }

    /** One line for each measure that was taken, one at least for each arrival. */
    private static String arrivals(RecordState state) {
        List<List<String>> rows = new ArrayList<>();
        for (Order o : state.stock().orders()) {
            for (Order.Arrival a : o.arrivals()) {
                List<Order.Measured> measured =
                        a.measured().isEmpty() ? List.of(new Order.Measured("", "")) : a.measured();
                for (Order.Measured m : measured) {
                    rows.add(List.of(
                            String.valueOf(a.seq()),
                            o.id(),
                            a.at().toString(),
                            a.by(),
                            a.revision(),
                            a.accepted() ? "yes" : "",
                            a.note(),
                            m.name(),
                            m.found()));
                }
            }
        }
        return CsvText.of(
                List.of("entry", "order", "at", "by", "revision", "accepted", "note", "measure", "found"), rows);
    }
}
