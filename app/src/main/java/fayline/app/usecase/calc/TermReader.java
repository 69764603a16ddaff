package fayline.app.usecase.calc;

import com.fasterxml.jackson.databind.JsonNode;
import fayline.basis.finding.InputProblem;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnitOfMeasure;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * Reads one field of a question: {@code "23 degC"}, {@code {"v": 23, "u": "degC"}}, lists and tables of these, or a plain
 * number where the quantity has no dimension.
 */
final class TermReader {
    private final List<InputProblem> problems;

    TermReader(List<InputProblem> problems) {
        this.problems = problems;
    }

    /** The value in SI after the term's shape; empty, with a problem noted, if it is not readable. */
    Optional<Object> read(Term term, JsonNode node) {
        try {
            return Optional.of(value(term, node));
        } catch (CalcInputException e) {
            problems.addAll(e.problems());
            return Optional.empty();
        }
    }

    private Object value(Term t, JsonNode node) {
        JsonNode v = node;
        Optional<String> unit = Optional.empty();
        if (node.isObject()) {
            v = measured(t, node);
            unit = Optional.of(node.path("u").asText("-"));
        }
        return switch (t.shape()) {
            case TEXT -> v.isArray() ? texts(t, v) : text(t, v);
            case YES_NO -> yesNo(t, v);
            case NUMBER, COUNT -> v.isArray() ? list(t, v, unit, t.units()) : number(t, v, unit, t.unit());
            // One value alone is a list of one.
            case LIST -> v.isArray() ? list(t, v, unit, t.units()) : List.of(number(t, v, unit, t.unit()));
            case ROWS -> rows(t, array(t, v), unit);
        };
    }

    private static JsonNode measured(Term t, JsonNode node) {
        for (String key : (Iterable<String>) node::fieldNames) {
            if (!"v".equals(key) && !"u".equals(key)) {
                throw CalcInputException.of(t.name() + "." + key, Json.shown(node), "only \"v\" and \"u\"");
            }
        }
        JsonNode v = node.get("v");
        if (v == null) {
            throw CalcInputException.of(t.name(), Json.shown(node), "{\"v\": value, \"u\": \"unit\"}");
        }
        return v;
    }

    private static List<Object> texts(Term t, JsonNode v) {
        List<Object> words = new ArrayList<>();
        v.forEach(w -> words.add(text(t, w)));
        if (words.isEmpty()) {
            throw CalcInputException.of(t.name(), "an empty list", "at least one word");
        }
        return List.copyOf(words);
    }

    private static String text(Term t, JsonNode v) {
        if (!v.isTextual()) {
            throw CalcInputException.of(t.name(), Json.shown(v), "a word");
        }
        return v.asText();
    }

    private static Boolean yesNo(Term t, JsonNode v) {
        if (!v.isBoolean()) {
            throw CalcInputException.of(t.name(), Json.shown(v), "true or false");
        }
        return v.asBoolean();
    }

    private static JsonNode array(Term t, JsonNode v) {
        if (!v.isArray()) {
            throw CalcInputException.of(t.name(), Json.shown(v), "a list, " + example(t));
        }
        return v;
    }

    private static List<Object> list(Term t, JsonNode v, Optional<String> unit, List<UnitOfMeasure> units) {
        List<Object> values = new ArrayList<>();
        for (int i = 0; i < v.size(); i++) {
            values.add(number(t, v.get(i), unit, units.get(Math.min(i, units.size() - 1))));
        }
        if (values.isEmpty()) {
            throw CalcInputException.of(t.name(), "an empty list", "at least one value");
        }
        return List.copyOf(values);
    }

    private static List<Object> rows(Term t, JsonNode v, Optional<String> unit) {
        List<Object> rows = new ArrayList<>();
        String[] units = unit.map(u -> columns(t, u)).orElse(new String[0]);
        if (unit.isPresent() && units.length != t.units().size()) {
            throw CalcInputException.of(
                    t.name(), "the units \"" + unit.orElse("") + "\"", "a unit for each column, " + example(t));
        }
        for (JsonNode row : v) {
            if (!row.isArray() || row.size() != t.units().size()) {
                throw CalcInputException.of(
                        t.name(), Json.shown(row), "a row of " + t.units().size() + ", " + example(t));
            }
            List<Object> values = new ArrayList<>();
            for (int i = 0; i < row.size(); i++) {
                Optional<String> u = unit.isPresent() ? Optional.of(units[i].trim()) : Optional.empty();
                values.add(number(t, row.get(i), u, t.units().get(i)));
            }
            rows.add(List.copyOf(values));
        }
        if (rows.isEmpty()) {
            throw CalcInputException.of(t.name(), "an empty list", "at least one row");
        }
        return List.copyOf(rows);
    }

    /** A unit for each column; one alone holds for all where all measure the same. */
    private static String[] columns(Term t, String unit) {
        String[] units = unit.split(",");
        boolean alike =
                t.units().stream().map(UnitOfMeasure::dimension).distinct().count() == 1;
        return units.length == 1 && alike
                ? Collections.nCopies(t.units().size(), unit).toArray(String[]::new)
                : units;
    }

    private static Double number(Term t, JsonNode v, Optional<String> unit, UnitOfMeasure expected) {
        double number;
        String symbol;
        if (v.isObject() && unit.isEmpty()) {
            return number(t, measured(t, v), Optional.of(v.path("u").asText("-")), expected);
        } else if (v.isNumber()) {
            if (unit.isEmpty() && !t.isPlain()) {
                throw CalcInputException.of(t.name(), "the plain number " + v, "a number with its unit, " + example(t));
            }
            number = v.doubleValue();
            symbol = unit.orElse("-");
        } else if (v.isTextual() && unit.isEmpty()) {
            Optional<QuantityParser.NumberAndUnit> parts = QuantityParser.split(v.asText());
            if (parts.isEmpty()) {
                throw CalcInputException.of(t.name(), Json.shown(v), "a number with its unit, " + example(t));
            }
            number = parts.get().number();
            symbol = parts.get().unit();
        } else {
            throw CalcInputException.of(t.name(), Json.shown(v), "a number with its unit, " + example(t));
        }
        return inUnit(t, number, symbol, expected);
    }

    private static Double inUnit(Term t, double number, String symbol, UnitOfMeasure expected) {
        Optional<UnitOfMeasure> unit = UnitOfMeasure.parse(symbol);
        // A dash says that the number is meant as a plain ratio; nothing at all may be a unit forgotten.
        boolean bare = symbol.isEmpty();
        if (unit.isEmpty()
                || !unit.get().dimension().equals(expected.dimension())
                || (bare && !t.isPlain() && expected.factor() != 1)) {
            throw CalcInputException.of(
                    t.name(),
                    bare ? "the plain number " + number : "the unit \"" + symbol + "\"",
                    "a unit such as " + expected.text() + ", " + example(t));
        }
        boolean difference = expected.offset() == 0;
        double si = (difference ? unit.get().ofDifferences() : unit.get()).toSi(number);
        if (!Double.isFinite(si)) {
            throw CalcInputException.of(t.name(), String.valueOf(number), "a finite number");
        }
        if (t.shape() == Term.Shape.COUNT && (si != Math.rint(si) || Math.abs(si) > Integer.MAX_VALUE)) {
            throw CalcInputException.of(t.name(), String.valueOf(number), "a whole number");
        }
        return si;
    }

    /** How a value of a term may be written. */
    static String example(Term t) {
        return switch (t.shape()) {
            case TEXT -> "as \"" + t.name() + "\": \"...\"";
            case YES_NO -> "as \"" + t.name() + "\": true";
            case COUNT -> "as \"" + t.name() + "\": 3";
            case NUMBER -> "as \"" + t.name() + "\": " + one(t.unit());
            case LIST -> "as \"" + t.name() + "\": [" + one(t.unit()) + ", " + one(t.unit()) + "]";
            case ROWS ->
                "as \"" + t.name() + "\": [["
                        + String.join(
                                ", ", t.units().stream().map(TermReader::one).toList()) + "]]";
        };
    }

    private static String one(UnitOfMeasure u) {
        return u.text().equals("-") ? "1.5" : "\"20 " + u.text() + "\"";
    }
}
