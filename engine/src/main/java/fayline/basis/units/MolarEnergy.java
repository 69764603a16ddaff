package fayline.basis.units;

/**
 * Energy per amount of substance, as an activation energy. Immutable; held in SI.
 *
 * @param joulesPerMole the value in joules per mole; finite
 */
public record MolarEnergy(double joulesPerMole) implements Quantity, Comparable<MolarEnergy> {
    private static final double KILOJOULES_PER_MOLE = 1000;

    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public MolarEnergy {
        Quantity.requireFinite("MolarEnergy", joulesPerMole);
    }

    /** Makes a value from joules per mole. */
    public static MolarEnergy ofJoulesPerMole(double joulesPerMole) {
        return new MolarEnergy(joulesPerMole);
    }

    /** Makes a value from kilojoules per mole. */
    public static MolarEnergy ofKilojoulesPerMole(double kilojoulesPerMole) {
        return new MolarEnergy(kilojoulesPerMole * KILOJOULES_PER_MOLE);
    }

    /** The value in kilojoules per mole. */
    public double kilojoulesPerMole() {
        return joulesPerMole / KILOJOULES_PER_MOLE;
    }

    /** The sum of this and another. */
    public MolarEnergy plus(MolarEnergy other) {
        return new MolarEnergy(joulesPerMole + other.joulesPerMole);
    }

    /** This less another. */
    public MolarEnergy minus(MolarEnergy other) {
        return new MolarEnergy(joulesPerMole - other.joulesPerMole);
    }

    /** This times a plain number. */
    public MolarEnergy times(double factor) {
        return new MolarEnergy(joulesPerMole * factor);
    }

    @Override
    public double si() {
        return joulesPerMole;
    }

    @Override
    public int compareTo(MolarEnergy other) {
        return Double.compare(joulesPerMole, other.joulesPerMole);
    }
}
