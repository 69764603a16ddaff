package fayline.method.plate;

/**
 * A plate alike in all directions, without dimensions.
 *
 * @param deflection w D / (q b^4), b the shorter side
 * @param momentShort moment along the shorter side at the centre over q b^2
 * @param momentEdge moment at the middle of the longer edges over q b^2; negative where they are clamped, else 0
 */
public record Coefficients(double deflection, double momentShort, double momentEdge) {
    /**
     * The coefficients of a shape.
     *
     * @param longerOverShorter a/b; at least 1
     * @param poisson Poisson's ratio; above -1, below 0.5
     * @param edges supported or clamped
     * @throws IllegalArgumentException outside these
     */
    public static Coefficients of(double longerOverShorter, double poisson, Edges edges) {
        if (!(longerOverShorter >= 1) || edges == Edges.BETWEEN) {
            throw new IllegalArgumentException("coefficients are for a/b of at least 1 with supported or clamped edges,"
                    + " found " + longerOverShorter + ", " + edges.words());
        }
        PlateStiffness unit = PlateStiffness.isotropic(modulusOfUnit(poisson), poisson, 1);
        BentPlate b = edges == Edges.CLAMPED
                ? new ClampedRitz(unit, longerOverShorter, 1).underPressure(1)
                : NavierSeries.bent(unit, longerOverShorter, 1, 1);
        return new Coefficients(b.centreM(), b.moment2N(), b.edgeMoment2N());
    }

    /**
     * Deflection under a load W at the centre of a clamped plate, as y E t^3 / (W b^2).
     *
     * @param longerOverShorter a/b; at least 1
     * @param poisson Poisson's ratio; above -1, below 0.5
     * @throws IllegalArgumentException outside these
     */
    public static double centralLoad(double longerOverShorter, double poisson) {
        if (!(longerOverShorter >= 1)) {
            throw new IllegalArgumentException("a/b is at least 1, found " + longerOverShorter);
        }
        double modulus = modulusOfUnit(poisson);
        PlateStiffness unit = PlateStiffness.isotropic(modulus, poisson, 1);
        return new ClampedRitz(unit, longerOverShorter, 1).underCentralLoad(1).centreM() * modulus;
    }

    /** The modulus at which a sheet of thickness 1 has D = 1. */
    private static double modulusOfUnit(double poisson) {
        return 12 * (1 - poisson * poisson);
    }
}
