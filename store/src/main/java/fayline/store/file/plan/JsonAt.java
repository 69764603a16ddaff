package fayline.store.file.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeType;
import com.fasterxml.jackson.databind.node.MissingNode;
import fayline.basis.finding.InputProblem;
import fayline.basis.finding.Severity;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * A place in a JSON tree. Reads fields, notes every problem with its key path and goes on with a harmless value, so that one
 * reading finds them all. Every field read is ticked off; {@link #noOthers()} reports the rest.
 */
final class JsonAt {
    private static final int FIRST_YEAR = 1900;
    private static final int LAST_YEAR = 2200;
    private static final int LONGEST_SHOWN = 60;

    private final JsonNode node;
    private final String path;
    private final String file;
    private final List<InputProblem> problems;
    private final Set<String> known = new LinkedHashSet<>();

    JsonAt(JsonNode node, String path, String file, List<InputProblem> problems) {
        this.node = node;
        this.path = path;
        this.file = file;
        this.problems = problems;
        if (!node.isObject()) {
            problem(path, show(node), "an object");
        }
    }

    JsonAt object(String key) {
        return new JsonAt(field(key), at(key), file, problems);
    }

    Optional<JsonAt> optionalObject(String key) {
        return has(key) ? Optional.of(object(key)) : Optional.empty();
    }

    String text(String key) {
        JsonNode found = field(key);
        if (!found.isTextual()) {
            problem(at(key), show(found), "a text");
            return "";
        }
        return found.textValue();
    }

    Optional<String> optionalText(String key) {
        return has(key) ? Optional.of(text(key)) : Optional.empty();
    }

    boolean flag(String key) {
        JsonNode found = field(key);
        if (!found.isBoolean()) {
            problem(at(key), show(found), "true or false");
        }
        return found.booleanValue();
    }

    int whole(String key) {
        return whole(field(key), at(key));
    }

    private int whole(JsonNode found, String where) {
        if (!found.isIntegralNumber() || !found.canConvertToInt()) {
            problem(where, show(found), "a whole number");
            return 0;
        }
        return found.intValue();
    }

    double number(String key) {
        return number(field(key), at(key));
    }

    private double number(JsonNode found, String where) {
        if (!found.isNumber() || !Double.isFinite(found.doubleValue())) {
            problem(where, show(found), "a number");
            return 0;
        }
        return found.doubleValue();
    }

    Instant time(String key) {
        String expected = "a date-time with offset such as 2026-03-02T07:30:00+01:00, between the years " + FIRST_YEAR
                + " and " + LAST_YEAR;
        JsonNode found = field(key);
        if (found.isTextual()) {
            try {
                OffsetDateTime time = OffsetDateTime.parse(found.textValue());
                if (time.getYear() >= FIRST_YEAR && time.getYear() <= LAST_YEAR) {
                    return time.toInstant();
                }
            } catch (DateTimeException e) {
                problem(at(key), show(found), expected);
                return Instant.EPOCH;
            }
        }
        problem(at(key), show(found), expected);
        return Instant.EPOCH;
    }

    Optional<Instant> optionalTime(String key) {
        return has(key) ? Optional.of(time(key)) : Optional.empty();
    }

    ZoneId zone(String key) {
        String id = text(key);
        try {
            return ZoneId.of(id);
        } catch (DateTimeException e) {
            problem(at(key), "'" + id + "'", "a time zone such as Europe/Vienna");
            return ZoneId.of("UTC");
        }
    }

    /** One of some words, given in lower case. */
    <E extends Enum<E>> E word(String key, E[] constants) {
        JsonNode found = field(key);
        List<String> words = new ArrayList<>();
        for (E constant : constants) {
            String word = constant.name().toLowerCase(Locale.ROOT);
            if (found.isTextual() && word.equals(found.textValue())) {
                return constant;
            }
            words.add(word);
        }
        problem(at(key), show(found), "one of " + String.join(", ", words));
        return constants[0];
    }

    String word(String key, List<String> words) {
        JsonNode found = field(key);
        if (!found.isTextual() || !words.contains(found.textValue())) {
            problem(at(key), show(found), "one of " + String.join(", ", words));
            return words.get(0);
        }
        return found.textValue();
    }

    <T> List<T> list(String key, Function<JsonAt, T> item) {
        return items(key, (found, where) -> item.apply(new JsonAt(found, where, file, problems)));
    }

    /** A list that may be left out, which is empty then. */
    <T> List<T> optionalList(String key, Function<JsonAt, T> item) {
        return has(key) ? list(key, item) : List.of();
    }

    List<String> texts(String key) {
        return items(key, (found, where) -> {
            if (!found.isTextual()) {
                problem(where, show(found), "a text");
                return "";
            }
            return found.textValue();
        });
    }

    List<Integer> wholes(String key) {
        return items(key, this::whole);
    }

    List<Double> numbers(String key) {
        return items(key, this::number);
    }

    /** An object whose keys are names and whose values are whole numbers. */
    Map<String, Integer> counts(String key) {
        JsonNode found = field(key);
        Map<String, Integer> counts = new TreeMap<>();
        if (!found.isObject()) {
            problem(at(key), show(found), "an object of whole numbers");
        }
        found.properties().forEach(e -> counts.put(e.getKey(), whole(e.getValue(), at(key) + "." + e.getKey())));
        return counts;
    }

    /** Reports every field that was not asked for. */
    void noOthers() {
        if (node.isObject()) {
            node.fieldNames().forEachRemaining(name -> {
                if (!known.contains(name)) {
                    problem(at(name), "an unknown field", "one of " + String.join(", ", known));
                }
            });
        }
    }

    void problem(String key, String found, String expected) {
        problems.add(new InputProblem(Severity.STOP, file, 0, key, found, expected, ""));
    }

    private interface Item<T> {
        T read(JsonNode found, String where);
    }

    private <T> List<T> items(String key, Item<T> item) {
        JsonNode found = field(key);
        if (!found.isArray()) {
            problem(at(key), show(found), "a list");
            return List.of();
        }
        List<T> items = new ArrayList<>();
        for (int i = 0; i < found.size(); i++) {
            items.add(item.read(found.get(i), at(key) + "[" + i + "]"));
        }
        return items;
    }

    private boolean has(String key) {
        known.add(key);
        return node.has(key);
    }

    private JsonNode field(String key) {
        known.add(key);
        JsonNode found = node.get(key);
        return found == null ? MissingNode.getInstance() : found;
    }

    private String at(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    private static String show(JsonNode found) {
        if (found.getNodeType() == JsonNodeType.MISSING) {
            return "nothing";
        }
        if (found.isObject()) {
            return "an object";
        }
        if (found.isArray()) {
            return "a list";
        }
        String text = found.toString();
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "...";
    }
}
