package fayline.method.fitup.frame.ply;

/**
 * One ply of a beam.
 *
 * @param thicknessMm as laid; positive
 * @param angleRad fibre direction against the beam
 * @param alongMpa modulus along the fibres; 0 for a core, which keeps its place and carries nothing
 * @param acrossMpa modulus across them; 0 for a core
 * @param shearMpa shear modulus in the plane; 0 for a core
 * @param poisson contraction across when pulled along
 */
public record PlyLayer(
        double thicknessMm, double angleRad, double alongMpa, double acrossMpa, double shearMpa, double poisson) {
    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException if a thickness is not above zero, a modulus below, or the energy of a strain would be
     */
    public PlyLayer {
        boolean core = alongMpa == 0 && acrossMpa == 0 && shearMpa == 0;
        boolean ply = alongMpa > 0 && acrossMpa > 0 && shearMpa > 0 && poisson * poisson < alongMpa / acrossMpa;
        if (!(thicknessMm > 0) || !(core || ply)) {
            throw new IllegalArgumentException("a ply of " + thicknessMm + " mm with moduli " + alongMpa + ", "
                    + acrossMpa + ", " + shearMpa + " MPa and a contraction of " + poisson);
        }
    }

    /** A core: it keeps the plies apart. */
    public static PlyLayer core(double thicknessMm) {
        return new PlyLayer(thicknessMm, 0, 0, 0, 0, 0);
    }

    private double share() {
        return 1 - poisson * poisson * acrossMpa / (alongMpa == 0 ? 1 : alongMpa);
    }

    /** Transformed reduced stiffness along the beam. */
    double q11() {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return alongMpa / share() * c * c * c * c
                + 2 * (coupling() + 2 * shearMpa) * s * s * c * c
                + acrossMpa / share() * s * s * s * s;
    }

    /** The same across it. */
    double q22() {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return alongMpa / share() * s * s * s * s
                + 2 * (coupling() + 2 * shearMpa) * s * s * c * c
                + acrossMpa / share() * c * c * c * c;
    }

    /** The one that couples the two. */
    double q12() {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return ((alongMpa + acrossMpa) / share() - 4 * shearMpa) * s * s * c * c
                + coupling() * (s * s * s * s + c * c * c * c);
    }

    /** The one in shear. */
    double q66() {
        double c = Math.cos(angleRad);
        double s = Math.sin(angleRad);
        return ((alongMpa + acrossMpa) / share() - 2 * coupling() - 2 * shearMpa) * s * s * c * c
                + shearMpa * (s * s * s * s + c * c * c * c);
    }

    private double coupling() {
        return poisson * acrossMpa / share();
    }
}
