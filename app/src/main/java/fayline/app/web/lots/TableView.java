package fayline.app.web.lots;

import java.util.List;

/**
 * Lots from a table, before they are taken.
 *
 * @param refused what is wrong, cell by cell; empty where all of it can be taken
 * @param rows the lots read
 * @param text the table to be taken; empty where it cannot be
 */
public record TableView(List<String> refused, List<Row> rows, String text) {
    /** Nothing was sent yet. */
    public static final TableView EMPTY = new TableView(List.of(), List.of(), "");

    /** Copies the lists. */
    public TableView {
        refused = List.copyOf(refused);
        rows = List.copyOf(rows);
    }

    /** A lot as read. */
    public record Row(String lot, String what, String quantity, String received, String expires, String price) {}
}
