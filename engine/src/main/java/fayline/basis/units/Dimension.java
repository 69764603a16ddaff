package fayline.basis.units;

/**
 * What a unit measures: the exponents of metre, kilogram, second, kelvin, mole and ampere. Angles and fractions have none.
 *
 * @param length exponent of the metre
 * @param mass exponent of the kilogram
 * @param time exponent of the second
 * @param temperature exponent of the kelvin
 * @param amount exponent of the mole
 * @param current exponent of the ampere
 */
public record Dimension(int length, int mass, int time, int temperature, int amount, int current) {
    /** Plain numbers, angles, fractions. */
    public static final Dimension NONE = new Dimension(0, 0, 0, 0, 0);

    /** What has nothing to do with electric current. */
    public Dimension(int length, int mass, int time, int temperature, int amount) {
        this(length, mass, time, temperature, amount, 0);
    }

    /** This times another, each exponent of the other taken {@code power} times. */
    public Dimension times(Dimension other, int power) {
        return new Dimension(
                length + power * other.length,
                mass + power * other.mass,
                time + power * other.time,
                temperature + power * other.temperature,
                amount + power * other.amount,
                current + power * other.current);
    }
}
