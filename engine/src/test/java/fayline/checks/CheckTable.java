package fayline.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** A copy of a reference table from the test resources: one case per row, each with its source beside it. */
public final class CheckTable {
    private CheckTable() {}

    /** All rows of a table, by its path below {@code cases/checks}. */
    public static List<Row> rows(String path) {
        try (InputStream in = Objects.requireNonNull(CheckTable.class.getResourceAsStream("/cases/checks/" + path))) {
            List<List<String>> cells = cells(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return cells.subList(1, cells.size()).stream()
                    .map(c -> new Row(
                            c.get(0), MiniJson.object(c.get(2)), MiniJson.object(c.get(3)), MiniJson.object(c.get(4))))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<List<String>> cells(String text) {
        List<List<String>> rows = new ArrayList<>();
        List<String> row = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted && c == '"' && i + 1 < text.length() && text.charAt(i + 1) == '"') {
                cell.append('"');
                i++;
            } else if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == ',' || c == '\n')) {
                row.add(cell.toString());
                cell.setLength(0);
                if (c == '\n') {
                    rows.add(row);
                    row = new ArrayList<>();
                }
            } else {
                cell.append(c);
            }
        }
        return rows;
    }

    /** One case. */
    public record Row(
            String id, Map<String, Object> inputs, Map<String, Object> expected, Map<String, Object> tolerance) {
        /** Whether a quantity is given. */
        public boolean gives(String name) {
            return inputs.containsKey(name);
        }

        /** Whether a quantity is asked. */
        public boolean asks(String name) {
            return expected.containsKey(name);
        }

        /** A given number as written. */
        public double raw(String name) {
            return (Double) field(inputs, name, "v");
        }

        /** A given number in SI. */
        public double si(String name) {
            return CheckUnits.toSi(raw(name), (String) field(inputs, name, "u"));
        }

        /** A given list as written; a single number is a list of one. */
        public List<Double> list(String name) {
            return numbers(field(inputs, name, "v"));
        }

        /** A given list of pairs as written. */
        @SuppressWarnings("unchecked")
        public List<List<Double>> pairs(String name) {
            return (List<List<Double>>) field(inputs, name, "v");
        }

        /** Checks a computed number, in the unit of the table. */
        public void holds(String name, double computed) {
            holds(name, List.of(computed));
        }

        /** Checks computed numbers, in the unit of the table. */
        public void holds(String name, List<Double> computed) {
            List<Double> wanted = numbers(field(expected, name, "v"));
            assertEquals(wanted.size(), computed.size(), id + " " + name);
            double largest = wanted.stream().mapToDouble(Math::abs).max().orElseThrow();
            Object abs = part(tolerance, name).get("abs");
            Object rel = part(tolerance, name).get("rel");
            double allowed = abs != null ? (Double) abs : rel != null ? (Double) rel * largest : 0;
            for (int i = 0; i < wanted.size(); i++) {
                assertEquals(wanted.get(i), computed.get(i), allowed, id + " " + name);
            }
        }

        /** Checks a computed answer of yes or no. */
        public void holds(String name, boolean computed) {
            assertEquals(field(expected, name, "v"), computed, id + " " + name);
        }

        private static List<Double> numbers(Object value) {
            List<Double> all = new ArrayList<>();
            if (value instanceof List<?> list) {
                list.forEach(v -> all.add((Double) v));
            } else {
                all.add((Double) value);
            }
            return all;
        }

        @SuppressWarnings("unchecked")
        private Map<String, Object> part(Map<String, Object> map, String name) {
            assertTrue(map.containsKey(name), id + " has no " + name);
            return (Map<String, Object>) map.get(name);
        }

        private Object field(Map<String, Object> map, String name, String key) {
            return Objects.requireNonNull(part(map, name).get(key));
        }
    }
}
