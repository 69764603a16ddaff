package fayline.flow.record.payload;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Reads the narrow JSON of the record. Whatever the record itself would never write is refused; the caller compares with what
 * would be written, so this reader need not judge order or escapes.
 */
final class CanonicalParser {
    private static final int DEEPEST = 32;

    private final String in;
    private int at;

    CanonicalParser(String in) {
        this.in = in;
    }

    Value parse() {
        Value value = value(0);
        if (at != in.length()) {
            throw wrong("the end");
        }
        return value;
    }

    private Value value(int depth) {
        if (depth > DEEPEST) {
            throw new NotCanonicalException("nested deeper than " + DEEPEST);
        }
        char c = peek();
        if (c == '"') {
            return whole(text());
        }
        if (c == '{') {
            return fields(depth);
        }
        if (c == '[') {
            return many(depth);
        }
        return number();
    }

    private static Value whole(String text) {
        try {
            return new Value.Text(text);
        } catch (IllegalArgumentException e) {
            throw new NotCanonicalException(String.valueOf(e.getMessage()));
        }
    }

    private Value fields(int depth) {
        SortedMap<String, Value> fields = new TreeMap<>();
        expect('{');
        while (peek() != '}') {
            if (!fields.isEmpty()) {
                expect(',');
            }
            String name = text();
            expect(':');
            if (fields.put(name, value(depth + 1)) != null) {
                throw new NotCanonicalException("field " + name + " stands twice");
            }
        }
        expect('}');
        try {
            return new Value.Fields(fields);
        } catch (IllegalArgumentException e) {
            throw new NotCanonicalException(String.valueOf(e.getMessage()));
        }
    }

    private Value many(int depth) {
        List<Value> items = new ArrayList<>();
        expect('[');
        while (peek() != ']') {
            if (!items.isEmpty()) {
                expect(',');
            }
            items.add(value(depth + 1));
        }
        expect(']');
        return new Value.Many(items);
    }

    private Value number() {
        int from = at;
        while (at < in.length() && (in.charAt(at) == '-' || isDigit(in.charAt(at)))) {
            at++;
        }
        try {
            return new Value.Whole(Long.parseLong(in.substring(from, at)));
        } catch (IllegalArgumentException e) {
            at = from;
            throw wrong("a text, a whole number, a list or fields");
        }
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private String text() {
        expect('"');
        StringBuilder out = new StringBuilder();
        while (peek() != '"') {
            char c = in.charAt(at++);
            out.append(c == '\\' ? escaped() : c);
        }
        expect('"');
        return out.toString();
    }

    private char escaped() {
        char c = peek();
        at++;
        return switch (c) {
            case '"', '\\' -> c;
            case 'b' -> '\b';
            case 't' -> '\t';
            case 'n' -> '\n';
            case 'f' -> '\f';
            case 'r' -> '\r';
            case 'u' -> unit();
            default -> throw wrong("an escape of the canonical form");
        };
    }

    private char unit() {
        if (at + 4 > in.length()) {
            throw wrong("four hexadecimal digits");
        }
        String digits = in.substring(at, at + 4);
        at += 4;
        try {
            return (char) Integer.parseInt(digits, 16);
        } catch (NumberFormatException e) {
            throw wrong("four hexadecimal digits");
        }
    }

    private char peek() {
        if (at >= in.length()) {
            throw wrong("more text");
        }
        return in.charAt(at);
    }

    private void expect(char c) {
        if (peek() != c) {
            throw wrong("'" + c + "'");
        }
        at++;
    }

    private NotCanonicalException wrong(String expected) {
        return new NotCanonicalException("character " + (at + 1) + ": expected " + expected);
    }
}
