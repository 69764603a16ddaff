package fayline.app.web.lots;

import fayline.app.web.frame.Frame;
import java.util.List;
import java.util.Map;

/**
 * The form by which a lot is received.
 *
 * @param refused why it was not taken; empty on a fresh form
 * @param typed what was typed, by field
 * @param stuff materials and systems, each part of a system by itself
 * @param orders what is on order
 * @param today the day
 */
public record ReceiveView(
        List<String> refused,
        Map<String, String> typed,
        List<Frame.Choice> stuff,
        List<Frame.Choice> orders,
        String today) {
    /** Copies the lists. */
    public ReceiveView {
        refused = List.copyOf(refused);
        typed = Map.copyOf(typed);
        stuff = List.copyOf(stuff);
        orders = List.copyOf(orders);
    }

    /** What was typed in a field; empty where nothing was. */
    public String was(String field) {
        return typed.getOrDefault(field, "");
    }
}
