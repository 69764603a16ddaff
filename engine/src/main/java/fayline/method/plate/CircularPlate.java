package fayline.method.plate;

/**
 * A flat round plate under even pressure, alike in all directions: closed forms of [timoshenko1959], art. 16 and 17.
 *
 * @param radiusM radius; positive
 * @param thicknessM thickness; positive, at most a fifth of the radius
 * @param modulusPa Young's modulus; positive
 * @param poisson Poisson's ratio; above -1, below 0.5
 * @param pressurePa pressure
 */
public record CircularPlate(double radiusM, double thicknessM, double modulusPa, double poisson, double pressurePa) {
    private static final double THIN = 0.2;

    /**
     * Refuses what is no thin plate.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public CircularPlate {
        if (!(radiusM > 0 && thicknessM > 0 && modulusPa > 0) || !Double.isFinite(radiusM + modulusPa + pressurePa)) {
            throw new IllegalArgumentException("radius, thickness and modulus must be positive, found " + radiusM
                    + " m, " + thicknessM + " m, " + modulusPa + " Pa");
        }
        if (thicknessM > THIN * radiusM) {
            throw new IllegalArgumentException("a thin round plate is at most a fifth of its radius thick, found "
                    + thicknessM + " m on " + radiusM + " m");
        }
    }

    private double d() {
        return PlateStiffness.isotropic(modulusPa, poisson, thicknessM).d11Nm();
    }

    private double load() {
        return pressurePa * radiusM * radiusM;
    }

    /** Deflection of the centre with the edge clamped: q a^4 / 64 D, in metres. */
    public double clampedDeflectionM() {
        return load() * radiusM * radiusM / (64 * d());
    }

    /** Surface stress across the edge where it is clamped: 3 q a^2 / 4 t^2, in pascals. */
    public double clampedEdgeStressPa() {
        return 0.75 * load() / (thicknessM * thicknessM);
    }

    /** Moment per width at the centre with the edge clamped: q a^2 (1 + nu) / 16, in newtons. */
    public double clampedCentreMomentN() {
        return load() * (1 + poisson) / 16;
    }

    /** Deflection of the centre with an edge that may turn: (5 + nu) / (1 + nu) times the clamped one, in metres. */
    public double supportedDeflectionM() {
        return clampedDeflectionM() * (5 + poisson) / (1 + poisson);
    }

    /** Surface stress at the centre with an edge that may turn: 3 (3 + nu) q a^2 / 8 t^2, in pascals. */
    public double supportedStressPa() {
        return 0.375 * (3 + poisson) * load() / (thicknessM * thicknessM);
    }

    /** Whether a deflection is small enough for these formulas: at most half the thickness. */
    public boolean isSmall(double deflectionM) {
        return Math.abs(deflectionM) <= thicknessM / 2;
    }
}
