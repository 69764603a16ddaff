package fayline.app.web.lots;

import java.util.List;

/**
 * The form of a stock-take.
 *
 * @param refused why it was not taken; empty on a fresh form
 * @param lots the lots to count
 */
public record CountView(List<String> refused, List<Row> lots) {
    /** Copies the lists. */
    public CountView {
        refused = List.copyOf(refused);
        lots = List.copyOf(lots);
    }

    /**
     * A lot to count.
     *
     * @param number its place on the form
     * @param id its number
     * @param what of what
     * @param reckoned what should be left
     * @param typed what was typed
     * @param hint what to type
     */
    public record Row(int number, String id, String what, String reckoned, String typed, String hint) {}
}
