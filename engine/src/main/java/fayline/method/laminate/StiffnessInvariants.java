package fayline.method.laminate;

/**
 * Invariants of a ply's stiffness [tsai-hahn1980], and with them the constants of a stack whose directions are evenly spread.
 *
 * @param u1Pa U1, Pa
 * @param u2Pa U2, Pa
 * @param u3Pa U3, Pa
 * @param u4Pa U4, Pa
 * @param u5Pa U5, Pa
 */
public record StiffnessInvariants(double u1Pa, double u2Pa, double u3Pa, double u4Pa, double u5Pa) {
    static StiffnessInvariants of(Lamina p) {
        double q11 = p.q11Pa();
        double q12 = p.q12Pa();
        double q22 = p.q22Pa();
        double q66 = p.q66Pa();
        return new StiffnessInvariants(
                (3 * q11 + 3 * q22 + 2 * q12 + 4 * q66) / 8,
                (q11 - q22) / 2,
                (q11 + q22 - 2 * q12 - 4 * q66) / 8,
                (q11 + q22 + 6 * q12 - 4 * q66) / 8,
                (q11 + q22 - 2 * q12 + 4 * q66) / 8);
    }

    /** Modulus of the evenly spread stack: (U1^2 - U4^2)/U1, Pa. */
    public double evenModulusPa() {
        return (u1Pa * u1Pa - u4Pa * u4Pa) / u1Pa;
    }

    /** Its shear modulus, U5, Pa. */
    public double evenShearModulusPa() {
        return u5Pa;
    }

    /** Its Poisson's ratio, U4/U1. */
    public double evenPoisson() {
        return u4Pa / u1Pa;
    }
}
