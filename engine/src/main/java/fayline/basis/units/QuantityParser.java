package fayline.basis.units;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads quantities as people write them at the bench: {@code 15 thou}, {@code .050 in}, {@code 3/32 in},
 * {@code 1 3/32 in}, {@code 0.5 mm}, {@code 200 g/m2}, {@code 24 inHg}. A number without a unit is refused, but for a
 * fraction. A decimal comma is refused with a suggestion, because {@code 1,200} means two things.
 */
public final class QuantityParser {
    private static final Pattern FORM = Pattern.compile("\\s*([-+]?)\\s*(?:(\\d+)[ -]+)?(?:(\\d+)\\s*/\\s*(\\d+)"
            + "|(\\d+\\.?\\d*(?:[eE][-+]?\\d+)?|\\.\\d+(?:[eE][-+]?\\d+)?))\\s*([^\\d\\s.,/+-][^\\s]*|)\\s*");
    private static final Pattern NUMBER_FIRST = Pattern.compile(
            "\\s*([-+]?)\\s*(?:(\\d+)[ -]+)?(?:(\\d+)\\s*/\\s*(\\d+)"
                    + "|(\\d+\\.?\\d*(?:[eE][-+]?\\d+)?|\\.\\d+(?:[eE][-+]?\\d+)?))(?:\\s+(.*?)|([^\\d\\s.,/+-].*?)|)\\s*");
    private static final int MAX_LENGTH = 60;

    private QuantityParser() {}

    /**
     * Reads a quantity.
     *
     * @param text what was typed
     * @param kind the kind that is expected here
     * @param <Q> the type of the quantity
     * @return the quantity with the text kept as typed
     * @throws UnreadableQuantityException if the text is no such quantity; tells what was found, expected, and a
     *     suggestion where there is one
     */
    public static <Q extends Quantity> Entered<Q> parse(String text, QuantityKind<Q> kind) {
        if (text.length() > MAX_LENGTH) {
            throw refuse(text.substring(0, MAX_LENGTH) + "...", kind, "");
        }
        Matcher m = FORM.matcher(text);
        if (!m.matches() || (m.group(2) != null && m.group(5) != null)) {
            throw refuse(text, kind, pointed(text, kind));
        }
        double number = number(m, text, kind);
        String symbol = m.group(6);
        Optional<Q> found;
        try {
            found = kind.of(number, symbol);
        } catch (IllegalArgumentException e) {
            throw refuse(text, kind, String.valueOf(e.getMessage()));
        }
        if (found.isPresent()) {
            return new Entered<>(text.trim(), found.get());
        }
        throw refuse(text, kind, suggestion(text.trim(), symbol, kind));
    }

    /**
     * Splits a text into its number and whatever unit follows, for units that are no kind of {@link QuantityKind}.
     *
     * @param text what was typed, for example {@code 0.36 hPa L/s}
     * @return number and unit text, or empty if the text does not begin with a number
     */
    public static Optional<NumberAndUnit> split(String text) {
        Matcher m = NUMBER_FIRST.matcher(text);
        if (text.length() > MAX_LENGTH || !m.matches() || (m.group(2) != null && m.group(5) != null)) {
            return Optional.empty();
        }
        String unit = m.group(6) != null ? m.group(6) : m.group(7) != null ? m.group(7) : "";
        return Optional.of(new NumberAndUnit(number(m, text, QuantityKind.FRACTION), unit));
    }

    /**
     * A number and the text of its unit.
     *
     * @param number the number
     * @param unit the unit as written; empty where there is none
     */
    public record NumberAndUnit(double number, String unit) {}

    private static double number(Matcher m, String text, QuantityKind<?> kind) {
        double value;
        if (m.group(3) != null) {
            double denominator = Double.parseDouble(m.group(4));
            if (denominator == 0) {
                throw refuse(text, kind, "a fraction cannot have 0 below the line");
            }
            value = Double.parseDouble(m.group(3)) / denominator;
            if (m.group(2) != null) {
                value += Double.parseDouble(m.group(2));
            }
        } else {
            value = Double.parseDouble(m.group(5));
        }
        return "-".equals(m.group(1)) ? -value : value;
    }

    /** The text with a point where it has a comma, if that can be read or lacks but its unit. */
    private static String pointed(String text, QuantityKind<?> kind) {
        String pointed = text.trim().replace(',', '.');
        Matcher m = FORM.matcher(pointed);
        return text.matches("\\s*[-+]?\\d+,\\d+.*")
                        && m.matches()
                        && (m.group(6).isEmpty() || kind.spellings().contains(m.group(6)))
                ? "write " + pointed
                : "";
    }

    private static String suggestion(String text, String symbol, QuantityKind<?> kind) {
        if (symbol.isEmpty()) {
            return "add the unit: " + text + " " + kind.symbols().get(0) + "?";
        }
        for (String known : kind.symbols()) {
            if (known.toLowerCase(Locale.ROOT).equals(symbol.toLowerCase(Locale.ROOT))) {
                return "write " + text.replace(symbol, known);
            }
        }
        for (QuantityKind<?> other : QuantityKind.all()) {
            if (other.of(1, symbol).isPresent()) {
                return symbol + " is a unit of " + other.name();
            }
        }
        return "";
    }

    private static UnreadableQuantityException refuse(String text, QuantityKind<?> kind, String suggestion) {
        String expected = kind.named() + " such as " + kind.example() + " (units: "
                + String.join(
                        ", ", kind.symbols().stream().filter(s -> !s.isEmpty()).toList()) + ")";
        return new UnreadableQuantityException(text, expected, suggestion);
    }
}
