package fayline.flow.project.stock;

import fayline.basis.units.QuantityKind;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A price in the project's currency.
 *
 * @param amount the amount, not negative
 * @param per the unit it buys: {@code kg}, {@code m2}, {@code m} or {@code each}
 */
public record Price(double amount, String per) {
    private static final Pattern WRITTEN =
            Pattern.compile("([0-9]{1,8}(?:\\.[0-9]{1,6})?)\\s*(?:per|/)\\s*(kg|g|lb|oz|m2|ft2|yd2|m|ft|yd|in|each)");

    /** The same price for a kilogram, square metre or metre, as is reckoned with; a price for pieces as it is. */
    public static Price of(double amount, String per) {
        Optional<Price> mass = QuantityKind.MASS.of(1, per).map(q -> new Price(amount / q.si(), "kg"));
        Optional<Price> area = QuantityKind.AREA.of(1, per).map(q -> new Price(amount / q.si(), "m2"));
        Optional<Price> length = QuantityKind.LENGTH.of(1, per).map(q -> new Price(amount / q.si(), "m"));
        return mass.or(() -> area).or(() -> length).orElseGet(() -> new Price(amount, per));
    }

    /** A price as it is written, as {@code 17.80 per kg}; empty where it is not one. */
    public static Optional<Price> read(String text) {
        Matcher m = WRITTEN.matcher(text.strip());
        return m.matches() ? Optional.of(of(Double.parseDouble(m.group(1)), m.group(2))) : Optional.empty();
    }
}
