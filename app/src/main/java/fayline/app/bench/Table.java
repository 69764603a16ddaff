package fayline.app.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import java.io.PrintStream;
import java.util.Locale;
import java.util.Map;

/** Prints figures as a table of two columns, or as a line of JSON. */
final class Table {
    private Table() {}

    static void print(PrintStream out, ObjectNode figures, boolean json) {
        if (json) {
            out.println(Json.line(figures));
            return;
        }
        for (Map.Entry<String, JsonNode> e : figures.properties()) {
            out.println(String.format(
                    Locale.ROOT, "%-12s  %s", e.getKey(), e.getValue().asText()));
        }
    }
}
