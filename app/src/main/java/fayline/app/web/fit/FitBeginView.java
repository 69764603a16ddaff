package fayline.app.web.fit;

import fayline.app.web.frame.Frame;
import java.util.List;
import java.util.Map;

/**
 * What the form of a new fit shows.
 *
 * @param typed its fields as typed, by name
 * @param parts the parts that can be neighbours; none in a shop without a project
 * @param gauges what gaps are read with, by name
 * @param usual what is assumed of a gauge where a chance is asked for and nothing was given
 * @param unit the unit that a bare number gets
 * @param refused why it was not begun, a sentence each
 */
public record FitBeginView(
        Map<String, String> typed,
        List<Frame.Choice> parts,
        List<String> gauges,
        List<String> usual,
        String unit,
        List<String> refused) {
    /** Copies the collections. */
    public FitBeginView {
        typed = Map.copyOf(typed);
        parts = List.copyOf(parts);
        gauges = List.copyOf(gauges);
        usual = List.copyOf(usual);
        refused = List.copyOf(refused);
    }

    /** A field as typed; empty where nothing is. */
    public String of(String field) {
        return typed.getOrDefault(field, "");
    }

    /** Whether a choice stands at a value; the first of the choices where nothing was chosen. */
    public boolean chosen(String field, String value, boolean usual) {
        return typed.containsKey(field) ? value.equals(typed.get(field)) : usual;
    }
}
