package fayline.app.usecase.calc;

import fayline.basis.units.UnitOfMeasure;
import java.util.Arrays;
import java.util.List;

/**
 * One named quantity of a topic, given or answered.
 *
 * @param name its field name
 * @param shape what a value of it looks like
 * @param units the unit in which it is answered, and by whose dimension an input is judged; one for each column of
 *     {@link Shape#ROWS}; none for text and yes or no
 * @param about what it is
 */
public record Term(String name, Shape shape, List<UnitOfMeasure> units, String about) {
    /** What a value looks like. */
    public enum Shape {
        /** A number with a unit. A list of them is answered item by item. */
        NUMBER,
        /** A whole number. */
        COUNT,
        /** A list of numbers that belong together. */
        LIST,
        /** A table: rows of numbers, a unit for each column. */
        ROWS,
        /** A word. A list of them is answered item by item. */
        TEXT,
        /** True or false. As an output, false is the answer no. */
        YES_NO
    }

    /** Copies the list. */
    public Term {
        units = List.copyOf(units);
    }

    /** A number in a unit; the unit {@code K} means a difference of temperatures. */
    public static Term number(String name, String unit, String about) {
        return new Term(name, Shape.NUMBER, List.of(unit(unit)), about);
    }

    /** A whole number. */
    public static Term count(String name, String about) {
        return new Term(name, Shape.COUNT, List.of(UnitOfMeasure.ONE), about);
    }

    /** Numbers in one unit that belong together. */
    public static Term list(String name, String unit, String about) {
        return new Term(name, Shape.LIST, List.of(unit(unit)), about);
    }

    /** A table with a unit for each column, as {@code min, degC}. */
    public static Term rows(String name, String units, String about) {
        return new Term(
                name,
                Shape.ROWS,
                Arrays.stream(units.split(",")).map(Term::unit).toList(),
                about);
    }

    /** A word. */
    public static Term text(String name, String about) {
        return new Term(name, Shape.TEXT, List.of(), about);
    }

    /** True or false. */
    public static Term yesNo(String name, String about) {
        return new Term(name, Shape.YES_NO, List.of(), about);
    }

    private static UnitOfMeasure unit(String text) {
        UnitOfMeasure u =
                UnitOfMeasure.parse(text).orElseThrow(() -> new IllegalArgumentException(text + " is no unit"));
        return "K".equals(u.text()) ? u.ofDifferences() : u;
    }

    /** The unit for answers and messages. */
    public UnitOfMeasure unit() {
        return units.get(0);
    }

    /** Whether a plain number says all: the quantity has no dimension and is not counted in hundredths. */
    boolean isPlain() {
        return units.stream().allMatch(u -> u.dimension().equals(UnitOfMeasure.ONE.dimension()) && u.factor() == 1);
    }

    /** Whether a list of values is answered item by item. */
    boolean isSingle() {
        return shape == Shape.NUMBER || shape == Shape.COUNT || shape == Shape.TEXT;
    }
}
