package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a case gives and asks; never what it expects.
 *
 * @param given the given quantities, each {@code {"v": value, "u": unit}}
 * @param borrowed quantities taken from another case that this one refers to, where it does not give them itself
 * @param asked the names of the quantities asked for
 */
public record Question(Map<String, JsonNode> given, Map<String, JsonNode> borrowed, List<String> asked) {
    /** Copies map and list. */
    public Question {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        borrowed = Collections.unmodifiableMap(new LinkedHashMap<>(borrowed));
        asked = List.copyOf(asked);
    }
}
