package fayline.basis.units;

import java.util.Map;
import java.util.Optional;

/**
 * A unit written out, simple or compound: {@code g/m2}, {@code hPa L/s}, {@code J/(kg K)}, {@code 1/min}, or a name as
 * NIST SP 811 [nist-sp811] prints it, {@code gallon (U.S.)}. Read where calculations and tables come in whose quantities
 * have no type of their own; factors come from the same table as those of {@link QuantityKind}.
 *
 * <p>A unit may carry what it is counted in, which does not change its size: {@code percent of nominal hardener},
 * {@code kJ/kg of dry air}, {@code h at 23 degC}, {@code per 100 by weight}. {@code inHg in 5 min} is a rate.
 *
 * @param text the unit as written
 * @param factor the SI value of one unit
 * @param offset the SI value of zero of the unit; not zero for {@code degC} and {@code degF} alone
 * @param dimension what it measures
 */
public record UnitOfMeasure(String text, double factor, double offset, Dimension dimension) {
    /** The unit of a plain number. */
    public static final UnitOfMeasure ONE = new UnitOfMeasure("-", 1, 0, Dimension.NONE);

    private static final Dimension ENERGY = new Dimension(2, 1, -2, 0, 0);
    private static final Map<QuantityKind<?>, Dimension> KINDS = Map.ofEntries(
            Map.entry(QuantityKind.LENGTH, new Dimension(1, 0, 0, 0, 0)),
            Map.entry(QuantityKind.AREA, new Dimension(2, 0, 0, 0, 0)),
            Map.entry(QuantityKind.VOLUME, new Dimension(3, 0, 0, 0, 0)),
            Map.entry(QuantityKind.MASS, new Dimension(0, 1, 0, 0, 0)),
            Map.entry(QuantityKind.AREAL_MASS, new Dimension(-2, 1, 0, 0, 0)),
            Map.entry(QuantityKind.DENSITY, new Dimension(-3, 1, 0, 0, 0)),
            Map.entry(QuantityKind.PRESSURE, new Dimension(-1, 1, -2, 0, 0)),
            Map.entry(QuantityKind.TEMPERATURE_DIFFERENCE, new Dimension(0, 0, 0, 1, 0)),
            Map.entry(QuantityKind.TIME_SPAN, new Dimension(0, 0, 1, 0, 0)),
            Map.entry(QuantityKind.ANGLE, Dimension.NONE),
            Map.entry(QuantityKind.FORCE, new Dimension(1, 1, -2, 0, 0)),
            Map.entry(QuantityKind.MOLAR_ENERGY, ENERGY.times(new Dimension(0, 0, 0, 0, -1), 1)),
            Map.entry(QuantityKind.SPEED, new Dimension(1, 0, -1, 0, 0)),
            Map.entry(QuantityKind.FRACTION, Dimension.NONE),
            Map.entry(QuantityKind.STRESS, new Dimension(-1, 1, -2, 0, 0)),
            Map.entry(QuantityKind.BENDING_STIFFNESS, new Dimension(3, 1, -2, 0, 0)),
            Map.entry(QuantityKind.LINE_FORCE, new Dimension(0, 1, -2, 0, 0)));
    /** Symbols of kinds that no definition file uses. */
    private static final Map<String, UnitOfMeasure> MORE = Map.ofEntries(
            Map.entry("J", new UnitOfMeasure("J", 1, 0, ENERGY)),
            Map.entry("kJ", new UnitOfMeasure("kJ", 1000, 0, ENERGY)),
            Map.entry("MJ", new UnitOfMeasure("MJ", 1e6, 0, ENERGY)),
            Map.entry("W", new UnitOfMeasure("W", 1, 0, new Dimension(2, 1, -3, 0, 0))),
            Map.entry("kW", new UnitOfMeasure("kW", 1000, 0, new Dimension(2, 1, -3, 0, 0))),
            Map.entry("mol", new UnitOfMeasure("mol", 1, 0, new Dimension(0, 0, 0, 0, 1))),
            Map.entry("mPa", new UnitOfMeasure("mPa", 1e-3, 0, new Dimension(-1, 1, -2, 0, 0))),
            Map.entry("Hz", new UnitOfMeasure("Hz", 1, 0, new Dimension(0, 0, -1, 0, 0))),
            Map.entry("nm", new UnitOfMeasure("nm", 1e-9, 0, new Dimension(1, 0, 0, 0, 0))),
            Map.entry("A", new UnitOfMeasure("A", 1, 0, new Dimension(0, 0, 0, 0, 0, 1))),
            Map.entry("mA", new UnitOfMeasure("mA", 1e-3, 0, new Dimension(0, 0, 0, 0, 0, 1))),
            Map.entry("V", new UnitOfMeasure("V", 1, 0, new Dimension(2, 1, -3, 0, 0, -1))),
            Map.entry("ohm", new UnitOfMeasure("ohm", 1, 0, new Dimension(2, 1, -3, 0, 0, -2))));

    /**
     * Reads a unit.
     *
     * @param text the unit as written; {@code -} and the empty text are a plain number
     * @return the unit, or empty if the text is none
     */
    public static Optional<UnitOfMeasure> parse(String text) {
        String t = text.trim();
        if (t.isEmpty() || "-".equals(t)) {
            return Optional.of(ONE);
        }
        Optional<UnitOfMeasure> whole = alone(t);
        if (whole.isPresent()) {
            return whole;
        }
        Optional<String> named = UnitNames.expression(t);
        return UnitExpression.parse(named.orElseGet(() -> UnitNames.withoutRemark(t)))
                .map(u -> new UnitOfMeasure(t, u.factor, 0, u.dimension));
    }

    /** A symbol, in a compound: without its zero. */
    static Optional<UnitOfMeasure> symbol(String symbol) {
        for (Map.Entry<QuantityKind<?>, Dimension> e : KINDS.entrySet()) {
            Optional<QuantityKind.Unit> unit = e.getKey().unit(symbol);
            if (unit.isPresent()) {
                return Optional.of(new UnitOfMeasure(symbol, unit.orElseThrow().factor(), 0, e.getValue()));
            }
        }
        return Optional.ofNullable(MORE.get(symbol))
                .or(() -> UnitNames.expression(symbol).flatMap(UnitExpression::parse));
    }

    private static Optional<UnitOfMeasure> alone(String t) {
        String bare = UnitNames.withoutRemark(t);
        Dimension kelvin = new Dimension(0, 0, 0, 1, 0);
        return QuantityKind.TEMPERATURE.unit(bare).map(s -> new UnitOfMeasure(t, s.factor(), s.offset(), kelvin));
    }

    /** The same unit for a difference: one degree, wherever its zero is. */
    public UnitOfMeasure ofDifferences() {
        return new UnitOfMeasure(text, factor, 0, dimension);
    }

    /** The SI value of a number of these units. */
    public double toSi(double number) {
        return number * factor + offset;
    }

    /** The number of these units in an SI value. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }
}
