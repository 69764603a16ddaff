package fayline.method.laminate;

/**
 * One ply's material: orthotropic, in plane stress, linear. Axis 1 runs along the fibres (a cloth: along the warp).
 *
 * @param e1Pa modulus along, Pa; positive
 * @param e2Pa modulus across, Pa; positive, not above e1Pa unless {@code stifferAcross}
 * @param g12Pa shear modulus, Pa; positive
 * @param nu12 Poisson's ratio: contraction across over stretch along; |nu12| below sqrt(E1/E2)
 * @param alpha1PerK expansion along, 1/K
 * @param alpha2PerK expansion across, 1/K
 * @param stifferAcross whether it is known that the ply is stiffer across, as a cloth may be
 */
public record Lamina(
        double e1Pa,
        double e2Pa,
        double g12Pa,
        double nu12,
        double alpha1PerK,
        double alpha2PerK,
        boolean stifferAcross) {
    /**
     * Refuses what no material can be.
     *
     * @throws IllegalArgumentException naming the rule of {@link LaminaRules} that is broken
     */
    public Lamina {
        LaminaRules.keep(LaminaRules.ofLamina(e1Pa, e2Pa, g12Pa, nu12, alpha1PerK, alpha2PerK, stifferAcross));
    }

    /** A ply no stiffer across than along. */
    public Lamina(double e1Pa, double e2Pa, double g12Pa, double nu12, double alpha1PerK, double alpha2PerK) {
        this(e1Pa, e2Pa, g12Pa, nu12, alpha1PerK, alpha2PerK, false);
    }

    /**
     * A material alike in all directions: metal, foam, acrylic, resin.
     *
     * @param ePa modulus, Pa; positive
     * @param nu Poisson's ratio, above -1 and at most 0.5
     * @param alphaPerK expansion, 1/K
     */
    public static Lamina isotropic(double ePa, double nu, double alphaPerK) {
        if (!(nu > -1 && nu <= 0.5)) {
            throw new IllegalArgumentException("Poisson's ratio " + nu + ": above -1 and at most 0.5 is possible");
        }
        return new Lamina(ePa, ePa, ePa / (2 * (1 + nu)), nu, alphaPerK, alphaPerK);
    }

    /** Poisson's ratio across to along: nu12 E2/E1. */
    public double nu21() {
        return nu12 * e2Pa / e1Pa;
    }

    /** Reduced stiffness Q11 [jones1999] eq. 2.61, Pa. */
    public double q11Pa() {
        return e1Pa / (1 - nu12 * nu21());
    }

    /** Reduced stiffness Q12, Pa. */
    public double q12Pa() {
        return nu12 * e2Pa / (1 - nu12 * nu21());
    }

    /** Reduced stiffness Q22, Pa. */
    public double q22Pa() {
        return e2Pa / (1 - nu12 * nu21());
    }

    /** Reduced stiffness Q66, Pa. */
    public double q66Pa() {
        return g12Pa;
    }

    /** The stiffness seen from axes that are turned. */
    public TurnedStiffness turned(double angleDeg) {
        return TurnedStiffness.of(this, angleDeg);
    }

    /** What does not change when axes turn, and what a stack of evenly spread directions has. */
    public StiffnessInvariants invariants() {
        return StiffnessInvariants.of(this);
    }
}
