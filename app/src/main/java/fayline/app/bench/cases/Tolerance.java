package fayline.app.bench.cases;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.app.usecase.calc.Json;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * How close is close enough: {@code {"abs": x}} in the expected unit, {@code {"rel": x}} of the expected value (in a list: of
 * its largest element), {@code {"rel_each": x}} of each element, {@code {"exact": true}}. With abs and rel both, either will
 * do.
 *
 * @param abs absolute
 * @param rel relative to the largest element
 * @param relEach relative to each element
 */
record Tolerance(OptionalDouble abs, OptionalDouble rel, OptionalDouble relEach) {
    /** Room for the rounding of binary numbers where exact is asked: 4 x 100 x 0.8^2 is 256.00000000000006. */
    private static final double ROUNDING = 1e-12;

    private static final Set<String> WORDS = Set.of("abs", "rel", "rel_each", "exact");

    static Tolerance read(String where, JsonNode n) {
        boolean sound = n.isObject() && !n.isEmpty();
        for (String key : (Iterable<String>) n::fieldNames) {
            boolean value = "exact".equals(key)
                    ? n.path(key).asBoolean()
                    : n.path(key).isNumber() && n.path(key).doubleValue() >= 0;
            sound &= WORDS.contains(key) && value;
        }
        if (!sound) {
            throw new UnreadableCasesException(where + ": found the tolerance " + Json.shown(n)
                    + ", expected abs, rel or rel_each with a number, or exact: true");
        }
        return new Tolerance(number(n, "abs"), number(n, "rel"), number(n, "rel_each"));
    }

    private static OptionalDouble number(JsonNode n, String key) {
        return n.has(key) ? OptionalDouble.of(n.path(key).doubleValue()) : OptionalDouble.empty();
    }

    /**
     * Whether a number is close enough.
     *
     * @param expected the expected number
     * @param found the number reckoned, in the same unit
     * @param largest the largest magnitude in the list in which it stands
     */
    boolean allows(double expected, double found, double largest) {
        double off = Math.abs(found - expected);
        double each = Math.abs(expected);
        return off <= abs.orElse(-1)
                || off <= rel.orElse(-1) * largest
                || off <= relEach.orElse(-1) * each
                || off <= ROUNDING * each;
    }
}
