package fayline.basis.units;

import java.util.Locale;

/** What a number of a fit measures, and in which unit each reader is told it. */
public enum Measure {
    /** A gap, a shift, a depth, a thickness, in mm; thou in inch units. */
    GAP("mm", "thou", 1 / QuantityKind.INCH, 0, -1),
    /** A place or a large size, in mm; inches in inch units. */
    PLACE("mm", "in", 1e-3 / QuantityKind.INCH, 0, 2),
    /** An area, in mm²; square inches in inch units. */
    AREA("mm²", "in²", 1e-6 / (QuantityKind.INCH * QuantityKind.INCH), 0, 2),
    /** A slope, in mm per metre; thou per foot in inch units. */
    SLOPE("mm per metre", "thou per foot", 12, 0, -1),
    /** A temperature, in degC; degF in inch units. */
    TEMPERATURE("degC", "degF", 1.8, 32, 0),
    /** A force, in N; pounds in inch units. */
    FORCE("N", "lbf", 1 / (QuantityKind.POUND * QuantityKind.GRAVITY), 0, 1),
    /** A force along a line, in N per mm; pounds per inch in inch units. */
    LINE_FORCE("N per mm", "lbf per in", 1000 * QuantityKind.INCH / (QuantityKind.POUND * QuantityKind.GRAVITY), 0, 0),
    /** A stiffness in bending or twist, in N mm²; lbf in² in inch units. */
    BENDING(
            "N mm²",
            "lbf in²",
            1e-6 / (QuantityKind.POUND * QuantityKind.GRAVITY * QuantityKind.INCH * QuantityKind.INCH),
            0,
            0),
    /** A stress or modulus, in MPa; psi in inch units. */
    STRESS("MPa", "psi", 1e6 / QuantityKind.PSI, 0, -2);

    private final String metric;
    private final String inch;
    private final double factor;
    private final double offset;
    private final int moreDigits;

    Measure(String metric, String inch, double factor, double offset, int moreDigits) {
        this.metric = metric;
        this.inch = inch;
        this.factor = factor;
        this.offset = offset;
        this.moreDigits = moreDigits;
    }

    /** The unit's symbol. */
    public String symbol(UnitSystem system) {
        return system == UnitSystem.METRIC ? metric : inch;
    }

    /** A number of the metric unit in the reader's unit. */
    public double in(UnitSystem system, double metricValue) {
        return system == UnitSystem.METRIC ? metricValue : metricValue * factor + offset;
    }

    /** The digits after the point that say no more than so many after the metric number. */
    int digits(UnitSystem system, int metricDigits) {
        return system == UnitSystem.METRIC ? metricDigits : Math.max(0, metricDigits + moreDigits);
    }

    /** A number without its unit, with as many digits as the metric one would have, as {@code 2.3} or {@code 91}. */
    public String number(UnitSystem system, double metricValue, int metricDigits) {
        String told = String.format(Locale.ROOT, "%." + digits(system, metricDigits) + "f", in(system, metricValue));
        return told.matches("-0(\\.0*)?") ? told.substring(1) : told;
    }
}
