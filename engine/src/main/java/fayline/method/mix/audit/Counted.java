package fayline.method.mix.audit;

import fayline.basis.units.Mass;

/**
 * What there was of one part of a system, and what is left of it.
 *
 * @param before what there was: as received, or at the count before
 * @param beforeUncertainty standard uncertainty of that; not negative
 * @param left what is left now
 * @param leftUncertainty standard uncertainty of that; not negative
 */
public record Counted(Mass before, Mass beforeUncertainty, Mass left, Mass leftUncertainty) {
    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException if a mass or an uncertainty is negative
     */
    public Counted {
        for (Mass m : new Mass[] {before, beforeUncertainty, left, leftUncertainty}) {
            if (m.kilograms() < 0) {
                throw new IllegalArgumentException("a count of " + m.kilograms() + " kg");
            }
        }
    }

    /** What was used: what there was less what is left; negative where more is left than there was. */
    public Mass used() {
        return new Mass(before.kilograms() - left.kilograms());
    }

    /** The sum of two counts that are independent of each other. */
    public Counted plus(Counted other) {
        return new Counted(
                before.plus(other.before),
                together(beforeUncertainty, other.beforeUncertainty),
                left.plus(other.left),
                together(leftUncertainty, other.leftUncertainty));
    }

    private static Mass together(Mass a, Mass b) {
        return new Mass(Math.hypot(a.kilograms(), b.kilograms()));
    }
}
