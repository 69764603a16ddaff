package fayline.basis.units;

/**
 * Modulus times second moment of a section, for bending, or shear modulus times torsion constant, for twist. Immutable; held in SI.
 *
 * @param newtonMetresSquared the value in newton metres squared; finite
 */
public record BendingStiffness(double newtonMetresSquared) implements Quantity, Comparable<BendingStiffness> {
    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public BendingStiffness {
        Quantity.requireFinite("BendingStiffness", newtonMetresSquared);
    }

    /** Makes a value from newton millimetres squared. */
    public static BendingStiffness ofNewtonMillimetresSquared(double value) {
        return new BendingStiffness(value * 1e-6);
    }

    /** The value in newton millimetres squared. */
    public double newtonMillimetresSquared() {
        return newtonMetresSquared * 1e6;
    }

    @Override
    public double si() {
        return newtonMetresSquared;
    }

    @Override
    public int compareTo(BendingStiffness other) {
        return Double.compare(newtonMetresSquared, other.newtonMetresSquared);
    }
}
