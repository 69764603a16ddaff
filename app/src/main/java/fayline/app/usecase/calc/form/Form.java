package fayline.app.usecase.calc.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.CalcInputException;
import fayline.app.usecase.calc.Json;
import fayline.basis.finding.InputProblem;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The fields of one object: which there are, which are needed, what stands in each. An unknown field, a missing one or one of
 * another kind is refused, all at once, each by its path.
 */
public final class Form {
    private final Map<String, Field> fields;

    private Form(Map<String, Field> fields) {
        this.fields = fields;
    }

    private record Field(Kind kind, boolean needed, String about) {}

    /** A form without fields. */
    public static Form empty() {
        return new Form(Map.of());
    }

    /** This form with one more field that must be there. */
    public Form needs(String name, Kind kind, String about) {
        return with(name, new Field(kind, true, about));
    }

    /** This form with one more field that may be missing. */
    public Form takes(String name, Kind kind, String about) {
        return with(name, new Field(kind, false, about));
    }

    private Form with(String name, Field field) {
        Map<String, Field> more = new LinkedHashMap<>(fields);
        if (more.put(name, field) != null) {
            throw new IllegalArgumentException("two fields are named " + name);
        }
        return new Form(more);
    }

    /** This form as what may stand in a field of another. */
    public Kind asKind() {
        return new Kind("an object with " + String.join(", ", fields.keySet()), this::schema, this::check);
    }

    /**
     * Reads one object strictly.
     *
     * @param inputs the object
     * @return the object, every field of which is as this form says
     * @throws CalcInputException naming every field at fault
     */
    public Given read(JsonNode inputs) {
        List<InputProblem> problems = new ArrayList<>();
        check("", inputs, problems);
        if (!problems.isEmpty()) {
            throw new CalcInputException(problems);
        }
        return new Given(inputs);
    }

    private void check(String path, JsonNode n, List<InputProblem> problems) {
        if (!n.isObject()) {
            problems.add(Kind.problem(path.isEmpty() ? "inputs" : path, Json.shown(n), "one JSON object"));
            return;
        }
        String before = path.isEmpty() ? "" : path + ".";
        n.properties().forEach(e -> {
            Field f = fields.get(e.getKey());
            if (f == null) {
                problems.add(Kind.problem(
                        before + e.getKey(), "an unknown field", "one of " + String.join(", ", fields.keySet())));
            } else {
                f.kind.check(before + e.getKey(), e.getValue(), problems);
            }
        });
        fields.forEach((name, f) -> {
            if (f.needed && !n.has(name)) {
                problems.add(Kind.problem(before + name, "nothing", f.kind.expected()));
            }
        });
    }

    /** The JSON Schema (2020-12) of such an object. */
    public ObjectNode schema() {
        ObjectNode s = Json.object().put("type", "object").put("additionalProperties", false);
        ObjectNode properties = s.putObject("properties");
        ArrayNode required = Json.array();
        fields.forEach((name, f) -> {
            ObjectNode one = f.kind.schema();
            if (!f.about.isEmpty()) {
                one.put("description", f.about);
            }
            properties.set(name, one);
            if (f.needed) {
                required.add(name);
            }
        });
        if (!required.isEmpty()) {
            s.set("required", required);
        }
        return s;
    }

    /** The schema of a whole topic. */
    public ObjectNode schema(String topic, String about) {
        ObjectNode s = Json.object()
                .put("$schema", "https://json-schema.org/draft/2020-12/schema")
                .put("title", topic)
                .put("description", about);
        s.setAll(schema());
        return s;
    }
}
