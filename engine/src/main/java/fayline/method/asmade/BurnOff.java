package fayline.method.asmade;

/**
 * A piece whose resin was burnt or dissolved off.
 *
 * @param densityKgPerM3 density of the piece as measured, kg/m3; positive
 * @param fibreMass fibre of its mass, above 0 and below 1
 * @param fibreDensityKgPerM3 density of the fibre, kg/m3; positive
 * @param resinDensityKgPerM3 density of the cured resin, kg/m3; positive
 */
public record BurnOff(double densityKgPerM3, double fibreMass, double fibreDensityKgPerM3, double resinDensityKgPerM3) {
    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException if a density is not positive or the fibre not between 0 and 1
     */
    public BurnOff {
        Content.positive("density of the piece", densityKgPerM3, "kg/m3");
        Content.positive("density of the fibre", fibreDensityKgPerM3, "kg/m3");
        Content.positive("density of the resin", resinDensityKgPerM3, "kg/m3");
        if (!(fibreMass > 0 && fibreMass < 1)) {
            throw new IllegalArgumentException(
                    "fibre fraction by mass: found " + fibreMass + ", expected above 0 and below 1");
        }
    }

    /**
     * Fibre of the mass from two weighings.
     *
     * @param beforeKg the piece, kg
     * @param afterKg what is left of it, kg; positive, less than before
     */
    public static double fibreMassOf(double beforeKg, double afterKg) {
        Content.positive("mass left after burning", afterKg, "kg");
        if (!(beforeKg > afterKg)) {
            throw new IllegalArgumentException("mass before burning: found " + beforeKg
                    + " kg, expected more than what is left, " + afterKg + " kg");
        }
        return afterKg / beforeKg;
    }
}
