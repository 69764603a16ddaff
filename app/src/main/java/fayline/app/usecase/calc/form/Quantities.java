package fayline.app.usecase.calc.form;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.app.usecase.calc.Json;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads quantities of forms. The unit of a kind says what is measured; {@code K} means a difference of temperatures, {@code
 * degC} a temperature.
 */
final class Quantities {
    private Quantities() {}

    static Optional<Double> si(JsonNode n, String unit) {
        if (n.isNumber()) {
            return "-".equals(unit) ? finite(n.doubleValue()) : Optional.empty();
        }
        if (n.isTextual()) {
            return QuantityParser.split(n.asText()).flatMap(q -> si(q.number(), q.unit(), unit));
        }
        return n.isObject()
                        && n.size() == 2
                        && n.path("v").isNumber()
                        && n.path("u").isTextual()
                ? si(n.path("v").doubleValue(), n.path("u").asText(), unit)
                : Optional.empty();
    }

    static Optional<List<Double>> list(JsonNode n, String unit) {
        List<Double> all = new ArrayList<>();
        boolean together = n.isObject() && n.path("v").isArray() && n.size() == 2;
        JsonNode items = together ? n.path("v") : n;
        if (!items.isArray()) {
            return si(n, unit).map(List::of);
        }
        for (JsonNode item : items) {
            Optional<Double> one = together
                    ? item.isNumber() ? si(item.doubleValue(), n.path("u").asText(), unit) : Optional.empty()
                    : si(item, unit);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.add(one.get());
        }
        return Optional.of(all);
    }

    private static Optional<Double> si(double number, String symbol, String expected) {
        UnitOfMeasure wanted = unit(expected);
        boolean bare = symbol.isEmpty() || "-".equals(symbol);
        if (bare && !"-".equals(expected)) {
            return Optional.empty();
        }
        return UnitOfMeasure.parse(symbol)
                .filter(u -> u.dimension().equals(wanted.dimension()))
                .map(u -> "K".equals(expected) ? u.ofDifferences() : u)
                .map(u -> u.toSi(number))
                .flatMap(Quantities::finite);
    }

    private static UnitOfMeasure unit(String text) {
        return UnitOfMeasure.parse(text).orElseThrow(() -> new IllegalArgumentException(text + " is no unit"));
    }

    private static Optional<Double> finite(double v) {
        return Double.isFinite(v) ? Optional.of(v) : Optional.empty();
    }

    static ObjectNode schema(String unit, boolean several) {
        ObjectNode s = Json.object();
        ArrayNode any = s.putArray("anyOf");
        one(any, unit);
        if (several) {
            one(
                    any.addObject()
                            .put("type", "array")
                            .put("minItems", 1)
                            .putObject("items")
                            .putArray("anyOf"),
                    unit);
            ObjectNode together = measured(any);
            together.putObject("v").put("type", "array").put("minItems", 1);
            together.putObject("u").put("type", "string");
        }
        return s;
    }

    private static void one(ArrayNode any, String unit) {
        any.addObject().put("type", "string");
        ObjectNode measured = measured(any);
        measured.putObject("v").put("type", "number");
        measured.putObject("u").put("type", "string");
        if ("-".equals(unit)) {
            any.addObject().put("type", "number");
        }
    }

    private static ObjectNode measured(ArrayNode any) {
        ObjectNode n = any.addObject().put("type", "object").put("additionalProperties", false);
        n.putArray("required").add("v").add("u");
        return n.putObject("properties");
    }
}
