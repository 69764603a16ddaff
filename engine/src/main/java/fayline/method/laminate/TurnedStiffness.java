package fayline.method.laminate;

/**
 * Stiffness and expansion of a ply in axes x, y from which its fibres are turned counter-clockwise (Qbar). Strain is engineering
 * strain: the shear is twice the tensor's.
 *
 * @param q11Pa Qbar11, Pa
 * @param q12Pa Qbar12, Pa
 * @param q22Pa Qbar22, Pa
 * @param q16Pa Qbar16, Pa
 * @param q26Pa Qbar26, Pa
 * @param q66Pa Qbar66, Pa
 * @param alphaXPerK expansion along x, 1/K
 * @param alphaYPerK expansion along y, 1/K
 * @param alphaXyPerK expansion in shear (engineering), 1/K
 */
public record TurnedStiffness(
        double q11Pa,
        double q12Pa,
        double q22Pa,
        double q16Pa,
        double q26Pa,
        double q66Pa,
        double alphaXPerK,
        double alphaYPerK,
        double alphaXyPerK) {
    static TurnedStiffness of(Lamina p, double angleDeg) {
        return of(p, Turn.by(angleDeg));
    }

    /** [jones1999] eqs. 2.80 and 4.107 (recalled). */
    static TurnedStiffness of(Lamina p, Turn t) {
        double q11 = p.q11Pa();
        double q12 = p.q12Pa();
        double q22 = p.q22Pa();
        double q66 = p.q66Pa();
        double c2 = t.cos() * t.cos();
        double s2 = t.sin() * t.sin();
        double cs = t.cos() * t.sin();
        double c4 = c2 * c2;
        double s4 = s2 * s2;
        double mix = c2 * s2;
        double a = q11 - q12 - 2 * q66;
        double b = q12 - q22 + 2 * q66;
        return new TurnedStiffness(
                q11 * c4 + 2 * (q12 + 2 * q66) * mix + q22 * s4,
                (q11 + q22 - 4 * q66) * mix + q12 * (c4 + s4),
                q11 * s4 + 2 * (q12 + 2 * q66) * mix + q22 * c4,
                cs * (a * c2 + b * s2),
                cs * (a * s2 + b * c2),
                (q11 + q22 - 2 * q12 - 2 * q66) * mix + q66 * (c4 + s4),
                p.alpha1PerK() * c2 + p.alpha2PerK() * s2,
                p.alpha1PerK() * s2 + p.alpha2PerK() * c2,
                2 * cs * (p.alpha1PerK() - p.alpha2PerK()));
    }
}
