package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;

/** What may stand in a place of a definition file. */
public sealed interface Shape permits Either, Keys, Listed, Measure, Named, Numeral, Text, Words, YesNo {

    /** What is expected, for messages and the documentation: {@code a date such as 2026-03-02}. */
    String words();

    /** The form in which it is written. */
    Tree.Form form();

    /**
     * Tells what is wrong with a value, everything at once.
     *
     * @param at the value
     * @param problems where problems go
     */
    void check(Tree at, Problems problems);

    /** The same as a JSON Schema (2020-12). */
    ObjectNode schema();

    /** Tells that a value has another form than expected; returns whether it has the right one. */
    default boolean fits(Tree at, Problems problems) {
        if (at.form() == form() && !at.isBlank()) {
            return true;
        }
        problems.stop(at, Problems.found(at), words(), at.isBlank() ? "fill it in or remove the key" : "");
        return false;
    }

    /** An empty schema. */
    static ObjectNode node() {
        return JsonNodeFactory.instance.objectNode();
    }
}
