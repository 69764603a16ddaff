package fayline.app.usecase.calc.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;

/** What may stand in one field. */
public final class Kind {
    private final String expected;
    private final Supplier<ObjectNode> schema;
    private final Check check;

    Kind(String expected, Supplier<ObjectNode> schema, Check check) {
        this.expected = expected;
        this.schema = schema;
        this.check = check;
    }

    /** Looks below a value for what is not as expected. */
    @FunctionalInterface
    interface Check {
        void run(String path, JsonNode value, List<InputProblem> problems);
    }

    private static Kind simple(String expected, Supplier<ObjectNode> schema, Predicate<JsonNode> is) {
        return new Kind(expected, schema, (path, n, problems) -> {
            if (!is.test(n)) {
                problems.add(problem(path, Json.shown(n), expected));
            }
        });
    }

    private static boolean isNumber(JsonNode n) {
        return n.isNumber() && Double.isFinite(n.doubleValue());
    }

    /** A finite number. */
    public static Kind number() {
        return simple("a number", () -> Json.object().put("type", "number"), Kind::isNumber);
    }

    /** A number above nothing. */
    public static Kind positive() {
        return simple(
                "a number above 0",
                () -> Json.object().put("type", "number").put("exclusiveMinimum", 0),
                n -> isNumber(n) && n.doubleValue() > 0);
    }

    /** A number that is not negative. */
    public static Kind notNegative() {
        return simple(
                "a number of 0 or more",
                () -> Json.object().put("type", "number").put("minimum", 0),
                n -> isNumber(n) && n.doubleValue() >= 0);
    }

    /** A whole number of at least so much. */
    public static Kind whole(int least) {
        return simple(
                "a whole number from " + least,
                () -> Json.object().put("type", "integer").put("minimum", least),
                n -> n.isIntegralNumber() && n.canConvertToInt() && n.intValue() >= least);
    }

    /** A text. */
    public static Kind text() {
        return simple("a text", () -> Json.object().put("type", "string"), JsonNode::isTextual);
    }

    /** True or false. */
    public static Kind truth() {
        return simple("true or false", () -> Json.object().put("type", "boolean"), JsonNode::isBoolean);
    }

    /** A quantity with its unit, as {@code "20 mm"} or {@code {"v": 20, "u": "mm"}}; a plain number only where it needs none. */
    public static Kind quantity(String unit) {
        return simple(
                expected(unit),
                () -> Quantities.schema(unit, false),
                n -> Quantities.si(n, unit).isPresent());
    }

    /** Quantities of one unit: a list of them, or {@code {"v": [20, 30], "u": "mm"}}; one alone is a list of one. */
    public static Kind quantities(String unit) {
        return simple("one or several, each " + expected(unit), () -> Quantities.schema(unit, true), n -> {
            Optional<List<Double>> all = Quantities.list(n, unit);
            return all.isPresent() && !all.get().isEmpty();
        });
    }

    private static String expected(String unit) {
        return "-".equals(unit) ? "a number" : "a number with its unit, as \"20 " + unit + "\"";
    }

    /** One of some words. */
    public static Kind word(String... words) {
        List<String> all = List.of(words);
        return simple(
                "one of " + String.join(", ", all),
                () -> {
                    ObjectNode s = Json.object();
                    all.forEach(s.putArray("enum")::add);
                    return s;
                },
                n -> n.isTextual() && all.contains(n.textValue()));
    }

    /** Whatever explains and is not read. */
    public static Kind passedOver() {
        return simple("anything", Json::object, n -> true);
    }

    /** A list of one kind, of at least so many. */
    public static Kind list(Kind item, int least) {
        return sized(item, least, Integer.MAX_VALUE, least == 0 ? "a list" : "a list of at least " + least);
    }

    /** A list of one kind of just so many, as a point of two numbers. */
    public static Kind exactly(int size, Kind item) {
        return sized(item, size, size, "a list of " + size + ", each " + item.expected);
    }

    /** A point or vector of two numbers. */
    public static Kind plane() {
        return exactly(2, number());
    }

    /** A point or vector of three numbers. */
    public static Kind space() {
        return exactly(3, number());
    }

    private static Kind sized(Kind item, int least, int most, String expected) {
        return new Kind(
                expected,
                () -> {
                    ObjectNode s = Json.object().put("type", "array");
                    s.set("items", item.schema());
                    s.put("minItems", least);
                    if (most < Integer.MAX_VALUE) {
                        s.put("maxItems", most);
                    }
                    return s;
                },
                (path, n, problems) -> {
                    if (!n.isArray() || n.size() < least || n.size() > most) {
                        problems.add(problem(path, Json.shown(n), expected));
                        return;
                    }
                    for (int i = 0; i < n.size(); i++) {
                        item.check(path + "[" + i + "]", n.get(i), problems);
                    }
                });
    }

    /** An object whose keys are the asker's own and whose values are of one kind. */
    public static Kind named(Kind value) {
        String expected = "an object of names and values";
        return new Kind(
                expected,
                () -> {
                    ObjectNode s = Json.object().put("type", "object").put("minProperties", 1);
                    s.set("additionalProperties", value.schema());
                    return s;
                },
                (path, n, problems) -> {
                    if (!n.isObject() || n.isEmpty()) {
                        problems.add(problem(path, Json.shown(n), expected));
                    }
                    n.properties().forEach(e -> value.check(path + "." + e.getKey(), e.getValue(), problems));
                });
    }

    /** This kind, or null. */
    public Kind orNull() {
        return new Kind(
                expected + ", or null",
                () -> {
                    ObjectNode s = Json.object();
                    s.putArray("anyOf").add(schema()).add(Json.object().put("type", "null"));
                    return s;
                },
                (path, n, problems) -> {
                    if (!n.isNull()) {
                        check(path, n, problems);
                    }
                });
    }

    /** Its JSON Schema (2020-12). */
    public ObjectNode schema() {
        return schema.get();
    }

    /** What is expected, in a few words. */
    public String expected() {
        return expected;
    }

    void check(String path, JsonNode value, List<InputProblem> problems) {
        check.run(path, value, problems);
    }

    static InputProblem problem(String path, String found, String expected) {
        return new InputProblem(Severity.STOP, "", 0, path, found, expected, "");
    }
}
