package fayline.method.laminate.strength;

import fayline.method.laminate.Lamina;

/**
 * Strains one ply bears in its own axes; all positive.
 *
 * @param e1t pulled along the fibres
 * @param e1c pressed along the fibres
 * @param e2t pulled across
 * @param e2c pressed across
 * @param g12 in-plane shear (engineering)
 */
public record StrainLimits(double e1t, double e1c, double e2t, double e2c, double g12) {
    /**
     * Refuses what no limit can be.
     *
     * @throws IllegalArgumentException if one is not above nothing
     */
    public StrainLimits {
        for (double e : new double[] {e1t, e1c, e2t, e2c, g12}) {
            if (!(e > 0) || !Double.isFinite(e)) {
                throw new IllegalArgumentException("a strain limit of " + e + ": expected above 0");
            }
        }
    }

    /** Where only strengths are known: strength over modulus, the ply linear to failure. */
    public static StrainLimits of(Lamina l, PlyStrength s) {
        return new StrainLimits(
                s.xtPa() / l.e1Pa(),
                s.xcPa() / l.e1Pa(),
                s.ytPa() / l.e2Pa(),
                s.ycPa() / l.e2Pa(),
                s.sPa() / l.g12Pa());
    }
}
