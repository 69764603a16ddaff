package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.bench.cases.Subject.Reckoned;
import fayline.app.bench.cases.Verdict.Difference;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Holds what was reckoned against what is expected. */
final class Comparison {
    private Comparison() {}

    /** The difference, or empty if the quantity holds. */
    static Optional<Difference> of(Expectation e, Reckoned r) {
        Optional<UnitOfMeasure> unit = r.isNumeric() ? unit(e, r) : Optional.of(UnitOfMeasure.ONE);
        if (unit.isEmpty()) {
            return Optional.of(new Difference(
                    e.name(),
                    e.value().toString(),
                    shown(r.value(), r.unit()) + " " + r.unit().text(),
                    e.unit()));
        }
        return same(e.value(), r.value(), unit.get(), e.tolerance(), largest(e.value()))
                ? Optional.empty()
                : Optional.of(new Difference(e.name(), e.value().toString(), shown(r.value(), unit.get()), e.unit()));
    }

    /** The expected unit, if it measures what was reckoned. */
    private static Optional<UnitOfMeasure> unit(Expectation e, Reckoned r) {
        if ("as listed".equals(e.unit())) {
            return Optional.of(r.unit());
        }
        return UnitOfMeasure.parse(e.unit())
                .filter(u -> u.dimension().equals(r.unit().dimension()))
                .map(u -> r.unit().offset() == 0 ? u.ofDifferences() : u);
    }

    private static boolean same(JsonNode expected, Object found, UnitOfMeasure unit, Tolerance t, double largest) {
        if (expected.isArray()) {
            if (!(found instanceof List<?> items) || items.size() != expected.size()) {
                return false;
            }
            for (int i = 0; i < expected.size(); i++) {
                if (!same(expected.get(i), items.get(i), unit, t, largest)) {
                    return false;
                }
            }
            return true;
        }
        if (expected.isNumber()) {
            return found instanceof Double number && t.allows(expected.doubleValue(), unit.fromSi(number), largest);
        }
        if (expected.isBoolean()) {
            return found instanceof Boolean truth && truth == expected.asBoolean();
        }
        return expected.isTextual() && expected.asText().equals(found);
    }

    private static double largest(JsonNode n) {
        if (n.isArray()) {
            double most = 0;
            for (JsonNode item : n) {
                most = Math.max(most, largest(item));
            }
            return most;
        }
        return n.isNumber() ? Math.abs(n.doubleValue()) : 0;
    }

    private static String shown(Object value, UnitOfMeasure unit) {
        if (value instanceof List<?> values) {
            List<String> items = new ArrayList<>();
            values.forEach(v -> items.add(shown(v, unit)));
            return "[" + String.join(",", items) + "]";
        }
        return value instanceof Double number
                ? String.format(Locale.ROOT, "%.10g", unit.fromSi(number))
                : value instanceof String ? "\"" + value + "\"" : String.valueOf(value);
    }
}
