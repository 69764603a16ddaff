package fayline.basis.units;

/**
 * Mass per area, as of cloth. Immutable; held in SI.
 *
 * @param kilogramsPerSquareMetre the value in kilograms per square metre; finite
 */
public record ArealMass(double kilogramsPerSquareMetre) implements Quantity, Comparable<ArealMass> {
    private static final double GRAMS_PER_SQUARE_METRE = 1e-3;
    private static final double OUNCES_PER_SQUARE_YARD = 0.45359237 / 16 / (0.9144 * 0.9144);

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public ArealMass {
        Quantity.requireFinite("ArealMass", kilogramsPerSquareMetre);
    }

    /** Makes a value from kilograms per square metre. */
    public static ArealMass ofKilogramsPerSquareMetre(double kilogramsPerSquareMetre) {
        return new ArealMass(kilogramsPerSquareMetre);
    }

    /** Makes a value from grams per square metre. */
    public static ArealMass ofGramsPerSquareMetre(double gramsPerSquareMetre) {
        return new ArealMass(gramsPerSquareMetre * GRAMS_PER_SQUARE_METRE);
    }

    /** The value in grams per square metre. */
    public double gramsPerSquareMetre() {
        return kilogramsPerSquareMetre / GRAMS_PER_SQUARE_METRE;
    }

    /** Makes a value from ounces per square yard. */
    public static ArealMass ofOuncesPerSquareYard(double ouncesPerSquareYard) {
        return new ArealMass(ouncesPerSquareYard * OUNCES_PER_SQUARE_YARD);
    }

    /** The value in ounces per square yard. */
    public double ouncesPerSquareYard() {
        return kilogramsPerSquareMetre / OUNCES_PER_SQUARE_YARD;
    }

    /** The sum of this and another. */
    public ArealMass plus(ArealMass other) {
        return new ArealMass(kilogramsPerSquareMetre + other.kilogramsPerSquareMetre);
    }

    /** This less another. */
    public ArealMass minus(ArealMass other) {
        return new ArealMass(kilogramsPerSquareMetre - other.kilogramsPerSquareMetre);
    }

    /** This times a plain number. */
    public ArealMass times(double factor) {
        return new ArealMass(kilogramsPerSquareMetre * factor);
    }

    @Override
    public double si() {
        return kilogramsPerSquareMetre;
    }

    @Override
    public int compareTo(ArealMass other) {
        return Double.compare(kilogramsPerSquareMetre, other.kilogramsPerSquareMetre);
    }
}
