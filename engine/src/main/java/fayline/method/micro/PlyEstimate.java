package fayline.method.micro;

import fayline.method.laminate.Lamina;

/**
 * Estimated constants of a ply.
 *
 * @param e1Pa along, rule of mixtures, Pa
 * @param nu12 rule of mixtures
 * @param e2InversePa across, inverse rule: a lower limit, Pa
 * @param g12InversePa in shear, inverse rule: a lower limit, Pa
 * @param e2Pa across, Halpin-Tsai, Pa
 * @param g12Pa in shear, Halpin-Tsai, Pa
 * @param alpha1PerK along, Schapery, 1/K
 * @param alpha2PerK across, Schapery, 1/K
 */
public record PlyEstimate(
        double e1Pa,
        double nu12,
        double e2InversePa,
        double g12InversePa,
        double e2Pa,
        double g12Pa,
        double alpha1PerK,
        double alpha2PerK) {
    /** The ply these estimates make, Halpin-Tsai across and in shear. */
    public Lamina lamina() {
        return new Lamina(e1Pa, e2Pa, g12Pa, nu12, alpha1PerK, alpha2PerK);
    }

    /**
     * A balanced cloth of such plies, taken as two of them crossed at 90 degrees: half the thickness each way, not coupled. Crimp
     * is left out: a plain weave is some 5 to 15 percent softer and weaker (common practice, no source), so a cloth is measured
     * or taken from its data sheet wherever that matters.
     */
    public Lamina cloth() {
        Lamina p = lamina();
        double q = (p.q11Pa() + p.q22Pa()) / 2;
        double nu = p.q12Pa() / q;
        double e = q * (1 - nu * nu);
        double thermal = (p.q11Pa() * p.alpha1PerK()
                        + p.q12Pa() * (p.alpha1PerK() + p.alpha2PerK())
                        + p.q22Pa() * p.alpha2PerK())
                / 2;
        double alpha = thermal / (q + p.q12Pa());
        return new Lamina(e, e, p.g12Pa(), nu, alpha, alpha);
    }
}
