package fayline.flow.record.stock;

import java.util.List;
import java.util.Optional;

/**
 * What moved the stores beside the work, each list in the order of its entries.
 *
 * @param receipts lots received
 * @param moves lots carried into the cold and out of it
 * @param takes stock-takes
 * @param orders orders placed, with what came of them
 */
public record StockState(List<Receipt> receipts, List<LotMove> moves, List<StockTake> takes, List<Order> orders) {
    /** Nothing moved. */
    public static final StockState NONE = new StockState(List.of(), List.of(), List.of(), List.of());

    /** Copies the lists. */
    public StockState {
        receipts = List.copyOf(receipts);
        moves = List.copyOf(moves);
        takes = List.copyOf(takes);
        orders = List.copyOf(orders);
    }

    /** The receipt of a lot; the first, where it was entered twice. */
    public Optional<Receipt> receipt(String lot) {
        return receipts.stream().filter(r -> r.lot().equals(lot)).findFirst();
    }

    /** An order by its name; the first, where it was entered twice. */
    public Optional<Order> order(String id) {
        return orders.stream().filter(o -> o.id().equals(id)).findFirst();
    }
}
