package fayline.store.file.shape;

import com.fasterxml.jackson.databind.node.ObjectNode;
import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.store.file.yaml.Problems;
import fayline.store.file.yaml.Tree;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * A quantity with its unit, of one kind or of several.
 *
 * @param kinds the kinds
 * @param range what values are allowed
 * @param plain whether a number without a unit is allowed as well
 */
public record Measure(List<QuantityKind<?>> kinds, Range range, boolean plain) implements Shape {
    private static final Pattern NUMBER = Pattern.compile("\\+?(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?");

    /** Copies the list. */
    public Measure {
        kinds = List.copyOf(kinds);
    }

    /** Allowed values. */
    public enum Range {
        /** Any. */
        ANY,
        /** Nought or more. */
        NOT_NEGATIVE,
        /** More than nought. */
        POSITIVE,
        /** From nought to one. */
        SHARE
    }

    /** Makes such a shape. */
    public static Measure any(QuantityKind<?> kind) {
        return new Measure(List.of(kind), Range.ANY, false);
    }

    /** Makes such a shape. */
    public static Measure zeroUp(QuantityKind<?> kind) {
        return new Measure(List.of(kind), Range.NOT_NEGATIVE, false);
    }

    /** Makes such a shape. */
    public static Measure above(QuantityKind<?>... kinds) {
        return new Measure(List.of(kinds), Range.POSITIVE, false);
    }

    /** Makes such a shape. */
    public static Measure share() {
        return new Measure(List.of(QuantityKind.FRACTION), Range.SHARE, false);
    }

    @Override
    public String words() {
        String names =
                kinds.stream().map(k -> k.named() + " such as " + k.example()).collect(Collectors.joining(" or "));
        return (plain ? "a plain number or " : "")
                + names
                + switch (range) {
                    case ANY -> "";
                    case NOT_NEGATIVE -> ", not negative";
                    case POSITIVE -> ", more than nought";
                    case SHARE -> ", from 0 to 100 %";
                };
    }

    @Override
    public Tree.Form form() {
        return Tree.Form.SCALAR;
    }

    @Override
    public void check(Tree at, Problems problems) {
        if (!fits(at, problems)) {
            return;
        }
        if (plain && NUMBER.matcher(at.text()).matches()) {
            return;
        }
        UnreadableQuantityException first = null;
        for (QuantityKind<?> kind : kinds) {
            try {
                double si = QuantityParser.parse(at.text(), kind).value().si();
                if (!allowed(si)) {
                    problems.stop(at, Problems.quote(at.text()), words(), "");
                }
                return;
            } catch (UnreadableQuantityException e) {
                first = first == null ? e : first;
            } catch (IllegalArgumentException e) {
                problems.stop(at, Problems.quote(at.text()), words(), "");
                return;
            }
        }
        if (first != null) {
            String expected = kinds.size() == 1 ? first.expected() : words();
            problems.stop(at, Problems.quote(first.found()), expected, first.suggestion());
        }
    }

    private boolean allowed(double si) {
        return switch (range) {
            case ANY -> true;
            case NOT_NEGATIVE -> si >= 0;
            case POSITIVE -> si > 0;
            case SHARE -> si >= 0 && si <= 1;
        };
    }

    @Override
    public ObjectNode schema() {
        String sign = range == Range.ANY ? "[-+]?" : "\\+?";
        String some = range == Range.POSITIVE ? "(?=[^A-Za-z%]*[1-9])" : "";
        String number = "(?:(?:\\d+[ -]+)?\\d+\\s*/\\s*0*[1-9]\\d*|(?:\\d+\\.?\\d*|\\.\\d+)(?:[eE][-+]?\\d+)?)";
        boolean bare = plain || kinds.contains(QuantityKind.FRACTION);
        String units = kinds.stream()
                .flatMap(k -> k.spellings().stream())
                .filter(u -> !u.isEmpty())
                .distinct()
                .map(u -> u.replaceAll("([/.^$*+?()\\[\\]{}|\\\\])", "\\\\$1"))
                .collect(Collectors.joining("|"));
        String pattern =
                "^\\s*" + some + sign + "\\s*" + number + "\\s*(?:" + units + ")" + (bare ? "?" : "") + "\\s*$";
        ObjectNode s = Shape.node();
        if (bare) {
            s.putArray("type").add("string").add("number");
            s.put("minimum", 0);
            if (range == Range.SHARE) {
                s.put("maximum", 1);
            }
        } else {
            s.put("type", "string");
        }
        return s.put("pattern", pattern);
    }
}
