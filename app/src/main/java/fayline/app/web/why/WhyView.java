package fayline.app.web.why;

import java.util.List;

/**
 * What the page behind a "why" shows.
 *
 * @param about what the figures belong to
 * @param back the page they come from
 * @param figures the figures
 */
public record WhyView(String about, String back, List<Shown> figures) {
    /** Copies the list. */
    public WhyView {
        figures = List.copyOf(figures);
    }

    /**
     * A figure.
     *
     * @param name what it is
     * @param value its value
     * @param formula how it comes about
     * @param inputs its inputs
     * @param source where the method comes from
     * @param cautions what limits it
     * @param asked whether this is the one that was asked for
     */
    public record Shown(
            String name,
            String value,
            String formula,
            List<Input> inputs,
            String source,
            List<String> cautions,
            boolean asked) {
        /** Copies the lists. */
        public Shown {
            inputs = List.copyOf(inputs);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * An input.
     *
     * @param name what it is
     * @param value its value
     * @param origin where it comes from, in words
     * @param assumed whether nobody has confirmed it
     * @param link the page where it can be read; empty for none
     */
    public record Input(String name, String value, String origin, boolean assumed, String link) {}
}
