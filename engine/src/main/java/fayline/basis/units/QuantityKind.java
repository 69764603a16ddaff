package fayline.basis.units;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;

/**
 * A kind of quantity with the units in which a person may write it. The first unit of a kind is the one proposed in
 * messages. Factors are from exact definitions, see the package page.
 *
 * @param <Q> the type of the quantity
 */
public final class QuantityKind<Q extends Quantity> {
    static final double INCH = 0.0254;
    private static final double YARD = 0.9144;
    static final double POUND = 0.45359237;
    static final double GRAVITY = 9.80665;
    static final double PSI = POUND * GRAVITY / (INCH * INCH);
    private static final double INCH_OF_MERCURY = 3386.389;
    private static final double MILLIMETRE_OF_MERCURY = 133.322387415;
    private static final double GALLON = 231 * INCH * INCH * INCH;

    /** Lengths, for example {@code 0.5 mm}, {@code 15 thou}, {@code 3/32 in}. */
    public static final QuantityKind<Length> LENGTH = new QuantityKind<>(
            "length",
            Length::new,
            "0.5 mm",
            units(
                    unit(1e-3, "mm"),
                    unit(1e-2, "cm"),
                    unit(1, "m", "metre", "meter"),
                    unit(1e-6, "um", "µm", "micron"),
                    unit(1e3, "km"),
                    unit(INCH, "in", "inch", "inches", "\""),
                    unit(INCH * 1e-3, "thou", "mil"),
                    unit(12 * INCH, "ft", "foot", "feet"),
                    unit(YARD, "yd", "yard"),
                    unit(1609.344, "mi", "mile")));

    /** Areas, for example {@code 2.6 m2}. */
    public static final QuantityKind<Area> AREA = new QuantityKind<>(
            "area",
            Area::new,
            "2.6 m2",
            units(
                    unit(1, "m2", "m²", "sqm"),
                    unit(1e-4, "cm2", "cm²"),
                    unit(1e-6, "mm2", "mm²"),
                    unit(144 * INCH * INCH, "ft2", "ft²", "sqft"),
                    unit(INCH * INCH, "in2", "in²", "sqin"),
                    unit(YARD * YARD, "yd2", "yd²")));

    /** Volumes, for example {@code 18 L}. */
    public static final QuantityKind<Volume> VOLUME = new QuantityKind<>(
            "volume",
            Volume::new,
            "18 L",
            units(
                    unit(1e-3, "L", "l", "litre", "liter"),
                    unit(1e-6, "mL", "ml", "cm3", "cm³"),
                    unit(1, "m3", "m³"),
                    unit(GALLON, "gal"),
                    unit(GALLON / 4, "qt"),
                    unit(GALLON / 8, "pt"),
                    unit(0.158987294928, "bbl")));

    /** Masses, for example {@code 250 g}. */
    public static final QuantityKind<Mass> MASS = new QuantityKind<>(
            "mass",
            Mass::new,
            "250 g",
            units(
                    unit(1, "kg"),
                    unit(1e-3, "g"),
                    unit(1e-6, "mg"),
                    unit(POUND, "lb", "lbs"),
                    unit(POUND / 16, "oz"),
                    unit(1000, "t")));

    /** Mass per area, for example {@code 200 g/m2} or {@code 5.8 oz/yd2}. */
    public static final QuantityKind<ArealMass> AREAL_MASS = new QuantityKind<>(
            "mass per area",
            ArealMass::new,
            "200 g/m2",
            units(
                    unit(1e-3, "g/m2", "g/m²", "gsm"),
                    unit(1, "kg/m2", "kg/m²"),
                    unit(POUND / 16 / (YARD * YARD), "oz/yd2", "oz/yd²"),
                    unit(POUND / 16 / (144 * INCH * INCH), "oz/ft2"),
                    unit(POUND / (144 * INCH * INCH), "lb/ft2")));

    /** Densities, for example {@code 1.15 g/cm3}. */
    public static final QuantityKind<Density> DENSITY = new QuantityKind<>(
            "density",
            Density::new,
            "1.15 g/cm3",
            units(
                    unit(1000, "g/cm3", "g/cm³", "g/ml", "g/mL"),
                    unit(1000, "kg/L", "kg/l"),
                    unit(1, "kg/m3", "kg/m³"),
                    unit(POUND / (1728 * INCH * INCH * INCH), "lb/ft3"),
                    unit(POUND / GALLON, "lb/gal")));

    /** Absolute pressures, for example {@code 1013 hPa}. */
    public static final QuantityKind<Pressure> PRESSURE =
            new QuantityKind<>("absolute pressure", Pressure::new, "1013 hPa", pressureUnits());

    /** Readings below ambient, for example {@code 24 inHg} or {@code 0.7 bar}. */
    public static final QuantityKind<Vacuum> VACUUM =
            new QuantityKind<>("vacuum below ambient", Vacuum::new, "0.7 bar", pressureUnits());

    /** Temperatures, for example {@code 23 degC}. */
    public static final QuantityKind<Temperature> TEMPERATURE = new QuantityKind<>(
            "temperature",
            Temperature::new,
            "23 degC",
            units(
                    new Unit(List.of("degC", "°C", "C"), 1, 273.15),
                    new Unit(List.of("degF", "°F", "F"), 5.0 / 9.0, 273.15 - 32 * 5.0 / 9.0),
                    unit(1, "K")));

    /** Temperature differences, for example {@code 5 K}. */
    public static final QuantityKind<TemperatureDifference> TEMPERATURE_DIFFERENCE = new QuantityKind<>(
            "temperature difference",
            TemperatureDifference::new,
            "5 K",
            units(unit(1, "K", "degC", "°C"), unit(5.0 / 9.0, "degF", "°F")));

    /** Spans of time, for example {@code 90 min}. */
    public static final QuantityKind<TimeSpan> TIME_SPAN = new QuantityKind<>(
            "span of time",
            TimeSpan::new,
            "90 min",
            units(
                    unit(60, "min", "minute", "minutes"),
                    unit(3600, "h", "hour", "hours"),
                    unit(1, "s", "sec", "second", "seconds"),
                    unit(86400, "d", "day", "days"),
                    unit(7 * 86400.0, "week", "weeks"),
                    unit(365.25 * 86400.0 / 12, "month", "months")));

    /** Angles, for example {@code 45 deg}. */
    public static final QuantityKind<Angle> ANGLE =
            new QuantityKind<>("angle", Angle::new, "45 deg", units(unit(Math.PI / 180, "deg", "°"), unit(1, "rad")));

    /** Forces, for example {@code 120 N}. */
    public static final QuantityKind<Force> FORCE = new QuantityKind<>(
            "force",
            Force::new,
            "120 N",
            units(unit(1, "N"), unit(1000, "kN"), unit(POUND * GRAVITY, "lbf"), unit(GRAVITY, "kgf")));

    /** Energy per amount of substance, for example {@code 55 kJ/mol}. */
    public static final QuantityKind<MolarEnergy> MOLAR_ENERGY = new QuantityKind<>(
            "energy per mole", MolarEnergy::new, "55 kJ/mol", units(unit(1000, "kJ/mol"), unit(1, "J/mol")));

    /** Speeds, for example {@code 60 kn}. */
    public static final QuantityKind<Speed> SPEED = new QuantityKind<>(
            "speed",
            Speed::new,
            "30 m/s",
            units(
                    unit(1, "m/s"),
                    unit(1 / 3.6, "km/h"),
                    unit(1852.0 / 3600, "kn", "knot", "knots"),
                    unit(1609.344 / 3600, "mph"),
                    unit(12 * INCH, "ft/s")));

    /** Plain fractions, for example {@code 15 %} or {@code 0.15}. */
    public static final QuantityKind<Fraction> FRACTION =
            new QuantityKind<>("fraction", Fraction::new, "15 %", units(unit(0.01, "%", "percent"), unit(1, "")));

    /** Moduli and stresses, for example {@code 70 GPa}. */
    public static final QuantityKind<Stress> STRESS = new QuantityKind<>(
            "stress or modulus",
            Stress::new,
            "70 GPa",
            units(
                    unit(1e6, "MPa"),
                    unit(1e9, "GPa"),
                    unit(1000, "kPa"),
                    unit(1, "Pa"),
                    unit(PSI, "psi"),
                    unit(1000 * PSI, "ksi"),
                    unit(1e6 * PSI, "Msi")));

    /** Stiffness of a section in bending or twist, for example {@code 95 N*m2}. */
    public static final QuantityKind<BendingStiffness> BENDING_STIFFNESS = new QuantityKind<>(
            "bending stiffness",
            BendingStiffness::new,
            "95 N*m2",
            units(
                    unit(1, "N*m2", "N·m2", "N·m²", "Nm2"),
                    unit(1e-6, "N*mm2", "N·mm2", "N·mm²", "Nmm2"),
                    unit(1000, "kN*m2", "kN·m2", "kN·m²", "kNm2"),
                    unit(POUND * GRAVITY * INCH * INCH, "lbf*in2", "lbf·in2", "lbf·in²", "lbfin2")));

    /** Force per width, for example {@code 40 N/mm}. */
    public static final QuantityKind<LineForce> LINE_FORCE = new QuantityKind<>(
            "force per width",
            LineForce::new,
            "40 N/mm",
            units(unit(1000, "N/mm", "kN/m"), unit(1, "N/m"), unit(POUND * GRAVITY / INCH, "lbf/in", "lb/in")));

    private final String name;
    private final DoubleFunction<Q> maker;
    private final String example;
    private final List<Unit> units;

    private QuantityKind(String name, DoubleFunction<Q> maker, String example, List<Unit> units) {
        this.name = name;
        this.maker = maker;
        this.example = example;
        this.units = units;
    }

    /** Every kind there is, in the order in which a bare unit is looked up. */
    public static List<QuantityKind<?>> all() {
        return List.of(
                LENGTH,
                AREA,
                VOLUME,
                MASS,
                AREAL_MASS,
                DENSITY,
                PRESSURE,
                VACUUM,
                TEMPERATURE,
                TEMPERATURE_DIFFERENCE,
                TIME_SPAN,
                ANGLE,
                FORCE,
                MOLAR_ENERGY,
                SPEED,
                FRACTION,
                STRESS,
                BENDING_STIFFNESS,
                LINE_FORCE);
    }

    /** The name for messages, as {@code length}. */
    public String name() {
        return name;
    }

    /** The name with its article, as {@code an area}. */
    public String named() {
        return ("aeiou".indexOf(name.charAt(0)) >= 0 ? "an " : "a ") + name;
    }

    /** A correct example for messages, as {@code 0.5 mm}. */
    public String example() {
        return example;
    }

    /** The main symbol of each unit, in order. */
    public List<String> symbols() {
        return units.stream().map(u -> u.symbols().get(0)).toList();
    }

    /** Every symbol that is understood, the main ones and their other spellings. */
    public List<String> spellings() {
        return units.stream().flatMap(u -> u.symbols().stream()).toList();
    }

    /**
     * Makes a quantity of this kind.
     *
     * @param number the number before the unit
     * @param symbol a unit symbol of this kind
     * @return the quantity, or empty if the symbol is not a unit of this kind
     */
    public Optional<Q> of(double number, String symbol) {
        return unit(symbol).map(u -> maker.apply(number * u.factor() + u.offset()));
    }

    /**
     * Reads a quantity out in a unit.
     *
     * @param quantity a quantity of this kind
     * @param symbol a unit symbol of this kind
     * @return the number before the unit
     * @throws IllegalArgumentException if the symbol is not a unit of this kind
     */
    public double in(Q quantity, String symbol) {
        Unit u = unit(symbol).orElseThrow(() -> new IllegalArgumentException(symbol + " is not a unit of " + name));
        return (quantity.si() - u.offset()) / u.factor();
    }

    /** The unit with a symbol, or empty. */
    Optional<Unit> unit(String symbol) {
        return units.stream().filter(u -> u.symbols().contains(symbol)).findFirst();
    }

    @Override
    public String toString() {
        return name;
    }

    private static List<Unit> pressureUnits() {
        return units(
                unit(1e5, "bar"),
                unit(100, "mbar", "hPa"),
                unit(1000, "kPa"),
                unit(1, "Pa"),
                unit(1e6, "MPa"),
                unit(INCH_OF_MERCURY, "inHg"),
                unit(MILLIMETRE_OF_MERCURY, "mmHg"),
                unit(PSI, "psi"),
                unit(101325, "atm"));
    }

    private static Unit unit(double factor, String... symbols) {
        return new Unit(List.of(symbols), factor, 0);
    }

    private static List<Unit> units(Unit... units) {
        return List.copyOf(new ArrayList<>(Arrays.asList(units)));
    }

    /** SI value = number times factor plus offset. */
    record Unit(List<String> symbols, double factor, double offset) {}
}
