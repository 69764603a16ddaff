package fayline.flow.project.stock;

/**
 * A price in the project's currency.
 *
 * @param amount the amount, not negative
 * @param per the unit it buys: {@code kg}, {@code m2}, {@code m} or {@code each}
 */
public record Price(double amount, String per) {}
