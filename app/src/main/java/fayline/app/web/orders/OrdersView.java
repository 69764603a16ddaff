package fayline.app.web.orders;

import java.util.List;

/**
 * What the page of orders shows.
 *
 * @param refused why a form was not taken
 * @param list what is to be ordered by when, the earliest first
 * @param orders orders of the record, the latest first
 * @param others what the definition says is on order besides
 * @param today the day
 * @param rows how many measures the form takes, as numbers
 */
public record OrdersView(
        List<String> refused,
        List<ToOrder> list,
        List<Placed> orders,
        List<String> others,
        String today,
        List<Integer> rows) {
    /** Copies the lists. */
    public OrdersView {
        refused = List.copyOf(refused);
        list = List.copyOf(list);
        orders = List.copyOf(orders);
        others = List.copyOf(others);
        rows = List.copyOf(rows);
    }

    /** Something to order: what, how much at least, by when, for which step, whether that day has passed. */
    public record ToOrder(String what, String amount, String by, String step, String link, boolean late) {}

    /**
     * An order.
     *
     * @param id its name
     * @param link its page
     * @param what what was ordered from whom
     * @param due when it is promised
     * @param state in words
     * @param open whether it is still open
     * @param price what it costs, for those who may see it; may be empty
     */
    public record Placed(String id, String link, String what, String due, String state, boolean open, String price) {}
}
