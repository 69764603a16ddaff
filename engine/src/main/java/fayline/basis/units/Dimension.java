package fayline.basis.units;

/**
 * What a unit measures: the exponents of metre, kilogram, second, kelvin and mole. Angles and fractions have none.
 *
 * @param length exponent of the metre
 * @param mass exponent of the kilogram
 * @param time exponent of the second
 * @param temperature exponent of the kelvin
 * @param amount exponent of the mole
 */
public record Dimension(int length, int mass, int time, int temperature, int amount) {
    /** Plain numbers, angles, fractions. */
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

    /** This times another, each exponent of the other taken {@code power} times. */
    public Dimension times(Dimension other, int power) {
        return new Dimension(
                length + power * other.length,
                mass + power * other.mass,
                time + power * other.time,
                temperature + power * other.temperature,
                amount + power * other.amount);
    }
}
