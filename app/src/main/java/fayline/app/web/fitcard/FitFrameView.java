package fayline.app.web.fitcard;

import java.util.List;

/**
 * What the page of a sprung frame shows.
 *
 * @param fit the fit's id
 * @param name its name
 * @param fields the widths as typed
 * @param asked whether anything was typed
 * @param refused what was wrong with it, a sentence each
 * @param verdict what to do, in a few words; empty where nothing was asked
 * @param ready whether the last trial came out within tolerance
 * @param facts the figures, each with its name
 * @param says what must be said, a sentence each
 * @param why formula, inputs and source, a sentence each
 * @param cautions what not to do, a sentence each
 */
public record FitFrameView(
        String fit,
        String name,
        List<Field> fields,
        boolean asked,
        List<String> refused,
        String verdict,
        boolean ready,
        List<Fact> facts,
        List<String> says,
        List<String> why,
        List<String> cautions) {
    /** Copies the lists. */
    public FitFrameView {
        fields = List.copyOf(fields);
        refused = List.copyOf(refused);
        facts = List.copyOf(facts);
        says = List.copyOf(says);
        why = List.copyOf(why);
        cautions = List.copyOf(cautions);
    }

    /**
     * A field.
     *
     * @param key its word in the address
     * @param label its label
     * @param typed as typed; empty for nothing
     * @param needed whether it must be filled
     */
    public record Field(String key, String label, String typed, boolean needed) {}

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     */
    public record Fact(String name, String value) {}
}
