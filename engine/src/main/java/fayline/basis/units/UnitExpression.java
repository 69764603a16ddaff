package fayline.basis.units;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads products and quotients of symbols: factors side by side multiply, a stroke divides by the one factor or bracket
 * after it, digits after a symbol are its power ({@code m2}, {@code s^2}, {@code m³}), a number is a plain factor.
 */
final class UnitExpression {
    private static final Pattern TOKEN = Pattern.compile(
            "\\s*(?:([*·/()])|([0-9]+\\.?[0-9]*(?:[eE][-+]?[0-9]+)?)|([\\p{L}%°\"µ]+)(?:\\^?(-?[0-9])|([²³]))?)");

    private final String text;
    private int at;

    private UnitExpression(String text) {
        this.text = text;
    }

    static Optional<UnitOfMeasure> parse(String text) {
        UnitExpression e = new UnitExpression(text);
        Optional<UnitOfMeasure> u = e.product();
        return e.at == text.length() ? u : Optional.empty();
    }

    private Optional<UnitOfMeasure> product() {
        UnitOfMeasure product = UnitOfMeasure.ONE;
        int power = 1;
        boolean any = false;
        while (true) {
            Matcher m = TOKEN.matcher(text).region(at, text.length());
            if (!m.lookingAt() || ")".equals(m.group(1))) {
                return any && power == 1 ? Optional.of(product) : Optional.empty();
            }
            at = m.end();
            if ("/".equals(m.group(1))) {
                if (!any || power < 0) {
                    return Optional.empty();
                }
                power = -1;
                continue;
            }
            if ("*".equals(m.group(1)) || "·".equals(m.group(1))) {
                continue;
            }
            Optional<UnitOfMeasure> factor = factor(m);
            if (factor.isEmpty()) {
                return Optional.empty();
            }
            product = times(product, factor.orElseThrow(), power);
            power = 1;
            any = true;
        }
    }

    private Optional<UnitOfMeasure> factor(Matcher m) {
        if ("(".equals(m.group(1))) {
            Optional<UnitOfMeasure> inner = product();
            if (at >= text.length() || text.charAt(at) != ')') {
                return Optional.empty();
            }
            at++;
            return inner;
        }
        if (m.group(2) != null) {
            double number = Double.parseDouble(m.group(2));
            return number > 0 && Double.isFinite(number)
                    ? Optional.of(new UnitOfMeasure(m.group(2), number, 0, Dimension.NONE))
                    : Optional.empty();
        }
        int power = m.group(4) != null
                ? Integer.parseInt(m.group(4))
                : "²".equals(m.group(5)) ? 2 : "³".equals(m.group(5)) ? 3 : 1;
        return UnitOfMeasure.symbol(m.group(3)).map(u -> times(UnitOfMeasure.ONE, u, power));
    }

    private static UnitOfMeasure times(UnitOfMeasure a, UnitOfMeasure b, int power) {
        return new UnitOfMeasure(
                "", a.factor() * Math.pow(b.factor(), power), 0, a.dimension().times(b.dimension(), power));
    }
}
