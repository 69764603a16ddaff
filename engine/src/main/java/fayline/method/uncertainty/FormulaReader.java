package fayline.method.uncertainty;

import fayline.method.uncertainty.Formula.Node;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a formula by descending through sums, products and single factors. */
final class FormulaReader {
    private static final Pattern NUMBER = Pattern.compile("[0-9]+\\.?[0-9]*(?:[eE][-+]?[0-9]+)?|\\.[0-9]+");
    private static final Pattern NAME = Pattern.compile("[\\p{L}_][\\p{L}0-9_]*");
    private static final Map<String, DoubleUnaryOperator> FUNCTIONS =
            Map.of("sin", StrictMath::sin, "cos", StrictMath::cos, "tan", StrictMath::tan, "sqrt", Math::sqrt);
    private static final int DEEPEST = 50;

    private final String text;
    private final List<String> names;
    private int at;
    private int depth;

    FormulaReader(String text, List<String> names) {
        this.text = text;
        this.names = names;
    }

    Node whole() {
        Node n = sum();
        blanks();
        if (at < text.length()) {
            throw unread("the end, or one of + - * /");
        }
        return n;
    }

    private Node sum() {
        if (++depth > DEEPEST) {
            throw unread("fewer brackets within brackets");
        }
        Node n = take('-') ? negated(product()) : product();
        while (true) {
            if (take('+')) {
                Node left = n;
                Node right = product();
                n = v -> left.at(v) + right.at(v);
            } else if (take('-')) {
                Node left = n;
                Node right = product();
                n = v -> left.at(v) - right.at(v);
            } else {
                depth--;
                return n;
            }
        }
    }

    private Node product() {
        Node n = factor();
        while (true) {
            if (take('*')) {
                Node left = n;
                Node right = factor();
                n = v -> left.at(v) * right.at(v);
            } else if (take('/')) {
                Node left = n;
                Node right = factor();
                n = v -> left.at(v) / right.at(v);
            } else {
                return n;
            }
        }
    }

    private Node factor() {
        blanks();
        if (take('(')) {
            Node n = sum();
            if (!take(')')) {
                throw unread("a closing bracket");
            }
            return n;
        }
        Matcher number = NUMBER.matcher(text).region(at, text.length());
        if (number.lookingAt()) {
            at = number.end();
            double value = Double.parseDouble(number.group());
            return v -> value;
        }
        Matcher name = NAME.matcher(text).region(at, text.length());
        if (name.lookingAt()) {
            return named(name);
        }
        throw unread("a number, a name or a bracket");
    }

    private Node named(Matcher name) {
        int input = names.indexOf(name.group());
        if (input >= 0) {
            at = name.end();
            return v -> v[input];
        }
        int start = at;
        at = name.end();
        blanks();
        if (at < text.length() && text.charAt(at) == '(') {
            Node n = factor();
            DoubleUnaryOperator function = FUNCTIONS.get(name.group());
            if (function != null) {
                return v -> function.applyAsDouble(n.at(v));
            }
        }
        at = start;
        throw unread("one of " + String.join(", ", names) + ", or sin, cos, tan, sqrt with brackets");
    }

    private static Node negated(Node n) {
        return v -> -n.at(v);
    }

    private boolean take(char c) {
        blanks();
        if (at < text.length() && text.charAt(at) == c) {
            at++;
            return true;
        }
        return false;
    }

    private void blanks() {
        while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
            at++;
        }
    }

    private IllegalArgumentException unread(String expected) {
        String found = at < text.length() ? "\"" + text.substring(at) + "\"" : "the end";
        return new IllegalArgumentException(
                "formula \"" + text + "\", character " + (at + 1) + ": found " + found + ", expected " + expected);
    }
}
