package fayline.basis.units;

/**
 * Mass per volume. Immutable; held in SI.
 *
 * @param kilogramsPerCubicMetre the value in kilograms per cubic metre; finite
 */
public record Density(double kilogramsPerCubicMetre) implements Quantity, Comparable<Density> {
    private static final double GRAMS_PER_CUBIC_CENTIMETRE = 1000;
    private static final double KILOGRAMS_PER_LITRE = 1000;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Density {
        Quantity.requireFinite("Density", kilogramsPerCubicMetre);
    }

    /** Makes a value from kilograms per cubic metre. */
    public static Density ofKilogramsPerCubicMetre(double kilogramsPerCubicMetre) {
        return new Density(kilogramsPerCubicMetre);
    }

    /** Makes a value from grams per cubic centimetre. */
    public static Density ofGramsPerCubicCentimetre(double gramsPerCubicCentimetre) {
        return new Density(gramsPerCubicCentimetre * GRAMS_PER_CUBIC_CENTIMETRE);
    }

    /** The value in grams per cubic centimetre. */
    public double gramsPerCubicCentimetre() {
        return kilogramsPerCubicMetre / GRAMS_PER_CUBIC_CENTIMETRE;
    }

    /** Makes a value from kilograms per litre. */
    public static Density ofKilogramsPerLitre(double kilogramsPerLitre) {
        return new Density(kilogramsPerLitre * KILOGRAMS_PER_LITRE);
    }

    /** The value in kilograms per litre. */
    public double kilogramsPerLitre() {
        return kilogramsPerCubicMetre / KILOGRAMS_PER_LITRE;
    }

    /** The sum of this and another. */
    public Density plus(Density other) {
        return new Density(kilogramsPerCubicMetre + other.kilogramsPerCubicMetre);
    }

    /** This less another. */
    public Density minus(Density other) {
        return new Density(kilogramsPerCubicMetre - other.kilogramsPerCubicMetre);
    }

    /** This times a plain number. */
    public Density times(double factor) {
        return new Density(kilogramsPerCubicMetre * factor);
    }

    @Override
    public double si() {
        return kilogramsPerCubicMetre;
    }

    @Override
    public int compareTo(Density other) {
        return Double.compare(kilogramsPerCubicMetre, other.kilogramsPerCubicMetre);
    }
}
