package fayline.app.usecase.calc;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Writes the JSON Schema of a topic from its terms and relations, so that the two cannot disagree. */
final class TopicSchema {
    private static final String NUMBER =
            "^\\s*[-+]?\\s*(\\d+[ -]+)?(\\d+\\s*/\\s*\\d+|\\d+\\.?\\d*([eE][-+]?\\d+)?|\\.\\d+([eE][-+]?\\d+)?).*$";

    private final String name;
    private final String about;
    private final List<Term> inputs;
    private final List<Relation> relations;

    TopicSchema(String name, String about, List<Term> inputs, List<Relation> relations) {
        this.name = name;
        this.about = about;
        this.inputs = inputs;
        this.relations = relations;
    }

    ObjectNode toJson() {
        ObjectNode s = Json.object();
        s.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        s.put("title", name);
        s.put("description", about);
        s.put("type", "object");
        ObjectNode properties = s.putObject("properties");
        inputs.forEach(t -> properties.set(t.name(), property(t)));
        s.put("additionalProperties", false);
        ArrayNode any = s.putArray("anyOf");
        Set<List<String>> ways = new LinkedHashSet<>();
        relations.stream().map(Relation::needs).forEach(ways::add);
        ways.forEach(w -> w.forEach(any.addObject().putArray("required")::add));
        ObjectNode defs = s.putObject("$defs");
        ObjectNode quantity = defs.putObject("quantity");
        ArrayNode one = quantity.putArray("oneOf");
        one.addObject().put("type", "string").put("pattern", NUMBER);
        ObjectNode measured = one.addObject().put("type", "object").put("additionalProperties", false);
        measured.putArray("required").add("v").add("u");
        measured.putObject("properties").putObject("v");
        ((ObjectNode) measured.get("properties")).putObject("u").put("type", "string");
        return s;
    }

    private static ObjectNode property(Term t) {
        ObjectNode p = Json.object();
        p.put("description", t.about() + ", " + TermReader.example(t));
        switch (t.shape()) {
            case TEXT -> {
                ArrayNode any = p.putArray("anyOf");
                any.addObject().put("type", "string");
                any.addObject()
                        .put("type", "array")
                        .put("minItems", 1)
                        .putObject("items")
                        .put("type", "string");
            }
            case YES_NO -> p.put("type", "boolean");
            case NUMBER, COUNT -> {
                ArrayNode any = p.putArray("anyOf");
                single(any, t);
                single(
                        any.addObject()
                                .put("type", "array")
                                .put("minItems", 1)
                                .putObject("items")
                                .putArray("anyOf"),
                        t);
            }
            case LIST -> listOrMeasured(p, t, false);
            case ROWS -> listOrMeasured(p, t, true);
        }
        return p;
    }

    private static void listOrMeasured(ObjectNode p, Term t, boolean rows) {
        ArrayNode any = p.putArray("anyOf");
        any.addObject().put("$ref", "#/$defs/quantity");
        ObjectNode items =
                any.addObject().put("type", "array").put("minItems", 1).putObject("items");
        if (rows) {
            int n = t.units().size();
            items.put("type", "array").put("minItems", n).put("maxItems", n);
            items = items.putObject("items");
        }
        single(items.putArray("anyOf"), t);
    }

    private static void single(ArrayNode any, Term t) {
        any.addObject().put("$ref", "#/$defs/quantity");
        if (t.isPlain()) {
            any.addObject().put("type", t.shape() == Term.Shape.COUNT ? "integer" : "number");
        }
    }
}
