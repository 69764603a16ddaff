package fayline.basis.finding;

import java.util.List;

/**
 * A computed figure that can be asked "why": its value as shown, the inputs with their origin, the method and its source.
 *
 * @param name what the figure is, in the builder's words
 * @param told the value with its unit, as shown in the reader's units
 * @param formula the formula in words or symbols, with the inputs named
 * @param inputs the inputs, each with its value, unit and origin
 * @param source where the method comes from: a key of {@code docs/sources.md} or "common practice, no source"
 * @param cautions what limits the figure
 */
public record Figure(
        String name, Phrase told, String formula, List<Input> inputs, String source, List<String> cautions) {
    /** Copies the lists. */
    public Figure {
        inputs = List.copyOf(inputs);
        cautions = List.copyOf(cautions);
    }

    /** A figure whose value is the same in every unit a reader may wish. */
    public Figure(String name, String value, String formula, List<Input> inputs, String source, List<String> cautions) {
        this(name, Phrase.plain(value), formula, inputs, source, cautions);
    }

    /** The value in metric units. */
    public String value() {
        return told.toString();
    }

    /**
     * One input of a figure.
     *
     * @param name what it is
     * @param told value and unit as shown
     * @param origin where it comes from
     */
    public record Input(String name, Phrase told, Origin origin) {
        /** An input whose value is the same in every unit a reader may wish. */
        public Input(String name, String value, Origin origin) {
            this(name, Phrase.plain(value), origin);
        }

        /** The value in metric units. */
        public String value() {
            return told.toString();
        }
    }

    /** Where an input comes from. */
    public enum Origin {
        /** Written in the definition or typed by a person. */
        ENTERED,
        /** Read from a data sheet, as the definition says. */
        DATA_SHEET,
        /** Measured in the shop. */
        MEASURED,
        /** Derived from the shop's own record. */
        LEARNED,
        /** Computed from other figures. */
        COMPUTED,
        /** A default of the program that nobody has confirmed; always shown as such. */
        ASSUMED
    }
}
