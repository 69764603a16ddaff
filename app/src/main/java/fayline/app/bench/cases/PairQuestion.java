package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import fayline.app.bench.cases.PairLayout.Pair;
import fayline.app.usecase.calc.Json;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a case of pairs gives and asks; never what it expects.
 *
 * @param title what is reckoned, in words; some tables say the load or the edges only here
 * @param given the given pairs by name; of two of one name the first
 * @param asked the names asked for
 */
record PairQuestion(String title, Map<String, Pair> given, Set<String> asked) {
    private static final Map<String, String> UNITS = Map.of(
            "psia", "psi",
            "F", "degF",
            "C", "degC",
            "q a4/D", "-",
            "q a2", "-",
            "in.lb/in", "in lbf/in",
            "fraction of mixed", "-");

    PairQuestion {
        given = Collections.unmodifiableMap(new LinkedHashMap<>(given));
        asked = Collections.unmodifiableSet(new LinkedHashSet<>(asked));
    }

    PairQuestion(String title, List<Pair> given, Set<String> asked) {
        this(title, byName(given), asked);
    }

    private static Map<String, Pair> byName(List<Pair> pairs) {
        Map<String, Pair> all = new LinkedHashMap<>();
        pairs.forEach(p -> all.putIfAbsent(p.name(), p));
        return all;
    }

    /** A unit of the tables as a topic reads it. */
    static String unit(String written) {
        return UNITS.getOrDefault(written, written.replaceAll("(?<=[A-Za-z0-9])\\.(?=[A-Za-z])", " "));
    }

    /** A pair as a topic reads it: a quantity, several of one unit, or a word. */
    static JsonNode node(Pair p) {
        if (p.numbers().isEmpty()) {
            return TextNode.valueOf(p.text());
        }
        ObjectNode n = Json.object();
        if (p.numbers().size() == 1) {
            n.put("v", p.numbers().get(0));
        } else {
            ArrayNode all = n.putArray("v");
            p.numbers().forEach(all::add);
        }
        return n.put("u", unit(p.unit()));
    }
}
