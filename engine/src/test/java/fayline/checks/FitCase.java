package fayline.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A copy of a reference case of the fit-up from the test resources: inputs, what is expected, and how close. A tolerance is
 * keyed by the field's name wherever it stands; without one it is 1e-6.
 */
public final class FitCase {
    private static final double USUAL = 1e-6;

    private final Map<String, Object> whole;

    private FitCase(Map<String, Object> whole) {
        this.whole = whole;
    }

    /** Reads a case by the name of its file below {@code cases}, without the ending. */
    public static FitCase read(String name) {
        try (InputStream in = Objects.requireNonNull(FitCase.class.getResourceAsStream("/cases/" + name + ".json"))) {
            return new FitCase(MiniJson.object(new String(in.readAllBytes(), StandardCharsets.UTF_8)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The inputs. */
    public Node inputs() {
        return new Node(whole.get("inputs"));
    }

    /** What is expected. */
    public Node expected() {
        return new Node(whole.get("expected"));
    }

    /** Checks a number against an expected one. */
    public void holds(String field, double wanted, double computed) {
        Node t = new Node(whole.get("tolerance")).get(field);
        double allowed = !t.isThere() ? USUAL : t.isNumber() ? t.number() : t.number("rel") * Math.abs(wanted);
        assertEquals(wanted, computed, allowed, field);
    }

    /** Checks numbers against an expected list. */
    public void holds(String field, Node wanted, List<Double> computed) {
        List<Double> all = wanted.get(field).numbers();
        assertEquals(all.size(), computed.size(), field);
        for (int i = 0; i < all.size(); i++) {
            holds(field, all.get(i), computed.get(i));
        }
    }

    /** Checks a number against the one of this name. */
    public void holds(String field, Node wanted, double computed) {
        holds(field, wanted.number(field), computed);
    }

    /** A value in the case. */
    public static final class Node {
        private final Object value;

        private Node(Object value) {
            this.value = value;
        }

        /** A member; not there where there is none. */
        public Node get(String name) {
            return new Node(value instanceof Map<?, ?> m && m.containsKey(name) ? m.get(name) : Map.of());
        }

        /** Whether it is anything. */
        public boolean isThere() {
            return !Map.of().equals(value);
        }

        /** Whether it is a number. */
        public boolean isNumber() {
            return value instanceof Double;
        }

        /** A number. */
        public double number() {
            return (Double) value;
        }

        /** A member that is a number. */
        public double number(String name) {
            return get(name).number();
        }

        /** A member that is a word. */
        public String text(String name) {
            return (String) get(name).value;
        }

        /** A member that is true or false. */
        public boolean yes(String name) {
            return (Boolean) get(name).value;
        }

        /** The elements of a list. */
        public List<Node> items() {
            assertTrue(value instanceof List, "a list, not " + value);
            return ((List<?>) value).stream().map(Node::new).toList();
        }

        /** The numbers of a list. */
        public List<Double> numbers() {
            return items().stream().map(Node::number).toList();
        }

        /** The words of a list. */
        public List<String> texts() {
            return items().stream().map(n -> (String) n.value).toList();
        }

        /** The names of the members. */
        public List<String> names() {
            return ((Map<?, ?>) value).keySet().stream().map(String.class::cast).toList();
        }
    }
}
