package fayline.basis.units;

/**
 * Force per width: what a laminate carries in its plane. Immutable; held in SI.
 *
 * @param newtonsPerMetre the value in newtons per metre; finite
 */
public record LineForce(double newtonsPerMetre) implements Quantity, Comparable<LineForce> {
    /**
     * Refuses a value that is no number.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public LineForce {
        Quantity.requireFinite("LineForce", newtonsPerMetre);
    }

    /** Makes a value from newtons per millimetre. */
    public static LineForce ofNewtonsPerMillimetre(double value) {
        return new LineForce(value * 1e3);
    }

    @Override
    public double si() {
        return newtonsPerMetre;
    }

    @Override
    public int compareTo(LineForce other) {
        return Double.compare(newtonsPerMetre, other.newtonsPerMetre);
    }
}
