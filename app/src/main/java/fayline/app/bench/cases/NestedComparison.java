package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.bench.cases.Verdict.Difference;
import fayline.app.usecase.calc.Json;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Holds a nested answer against a nested expectation. A tolerance belongs to a field's name wherever it stands, and to all that
 * stands below that field; it is absolute unless it says {@code rel}. Where the expectation says that the best move is not
 * unique, moves and gaps of it are held to a looser one. Explanations are passed over.
 */
final class NestedComparison {
    private static final double USUAL = 1e-6;
    private static final double NOT_UNIQUE = 2e-3;
    private static final double ROUNDING = 1e-12;
    private static final Set<String> PASSED_OVER = Set.of("moveRule", "candidateRule", "meaning", "handCheck", "notes");
    private static final Set<String> OF_THE_MOVE = Set.of("dx", "dy", "thetaDeg", "gaps");

    /** Free directions are equal up to sign and length, so only their number counts. */
    private static final String FREE = "undetermined";

    private final JsonNode tolerance;

    NestedComparison(JsonNode tolerance) {
        this.tolerance = tolerance;
    }

    /** What differs, each named by its path. */
    List<Difference> of(JsonNode expected, JsonNode found) {
        List<Difference> off = new ArrayList<>();
        compare(expected, found, new Place("", "", tolerance.path("default"), false), off);
        return off;
    }

    /** Where the comparison stands: the path, the last field's name, the tolerance that holds there. */
    private record Place(String path, String name, JsonNode allowed, boolean loose) {
        Place field(String field, JsonNode tolerance, boolean loose) {
            String below = path.isEmpty() ? field : path + "." + field;
            return new Place(below, field, tolerance.has(field) ? tolerance.path(field) : allowed, loose);
        }

        Place item(int i) {
            return new Place(path + "[" + i + "]", name, allowed, loose);
        }

        double limit(double expected) {
            double usual = allowed.isObject()
                    ? allowed.path("abs").asDouble(0) + allowed.path("rel").asDouble(0) * Math.abs(expected)
                    : allowed.isNumber() ? allowed.asDouble() : USUAL;
            return Math.max(ROUNDING, loose && OF_THE_MOVE.contains(name) ? Math.max(usual, NOT_UNIQUE) : usual);
        }
    }

    private void compare(JsonNode expected, JsonNode found, Place at, List<Difference> off) {
        if (expected.isObject() && found.isObject()) {
            boolean loose = at.loose()
                    || (expected.has("optimumUnique")
                            && !expected.path("optimumUnique").asBoolean());
            expected.properties().forEach(e -> {
                if (!PASSED_OVER.contains(e.getKey())) {
                    compare(e.getValue(), found.path(e.getKey()), at.field(e.getKey(), tolerance, loose), off);
                }
            });
        } else if (expected.isArray() && found.isArray() && expected.size() == found.size()) {
            for (int i = 0; i < expected.size() && !at.name().equals(FREE); i++) {
                compare(expected.get(i), found.get(i), at.item(i), off);
            }
        } else if (!same(expected, found, at)) {
            off.add(new Difference(
                    at.path(), Json.shown(expected), found.isMissingNode() ? "nothing" : Json.shown(found), "-"));
        }
    }

    private static boolean same(JsonNode expected, JsonNode found, Place at) {
        if (expected.isNumber()) {
            return found.isNumber()
                    && Math.abs(found.doubleValue() - expected.doubleValue()) <= at.limit(expected.doubleValue());
        }
        return !expected.isContainerNode() && expected.equals(found);
    }
}
