package fayline.method.asmade;

import fayline.basis.finding.InputProblem;
import fayline.method.laminate.LaminaRules;
import java.util.Optional;

/**
 * Fibre and resin of a laminate without voids, by balance of mass and volume [astm-d3171] method II.
 *
 * @param fibreVolume fibre of the volume, above 0, at most that of the closest packing
 * @param fibreDensityKgPerM3 density of the fibre, kg/m3; positive
 * @param resinDensityKgPerM3 density of the cured resin, kg/m3; positive
 */
public record Content(double fibreVolume, double fibreDensityKgPerM3, double resinDensityKgPerM3) {
    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public Content {
        positive("density of the fibre", fibreDensityKgPerM3, "kg/m3");
        positive("density of the resin", resinDensityKgPerM3, "kg/m3");
        Optional<InputProblem> broken = LaminaRules.ofFibreFraction("fibre fraction by volume", fibreVolume).stream()
                .findFirst();
        if (broken.isPresent()) {
            throw new IllegalArgumentException(broken.get().sentence());
        }
    }

    /**
     * From the share of fibre in the mass.
     *
     * @param fibreMass fibre of the mass, above 0 and below 1
     */
    public static Content ofFibreMass(double fibreMass, double fibreDensity, double resinDensity) {
        if (!(fibreMass > 0 && fibreMass < 1)) {
            throw new IllegalArgumentException(
                    "fibre fraction by mass: found " + fibreMass + ", expected above 0 and below 1");
        }
        double fibre = fibreMass / fibreDensity;
        return new Content(fibre / (fibre + (1 - fibreMass) / resinDensity), fibreDensity, resinDensity);
    }

    /**
     * From a weighed part whose cloth is known.
     *
     * @param partKg what the part weighs, kg
     * @param fibreKg what its cloth weighed dry, kg; positive, less than the part
     */
    public static Content ofWeighedPart(double partKg, double fibreKg, double fibreDensity, double resinDensity) {
        positive("mass of the cloth", fibreKg, "kg");
        if (!(partKg > fibreKg)) {
            throw new IllegalArgumentException("mass of the part: found " + partKg
                    + " kg, expected more than its cloth of " + fibreKg + " kg: areas or cloth are wrong");
        }
        return ofFibreMass(fibreKg / partKg, fibreDensity, resinDensity);
    }

    /**
     * From a measured thickness.
     *
     * @param thicknessM thickness of the laminate, m; positive
     * @param fibreKgPerM2 dry cloth of all plies, kg/m2; positive
     */
    public static Content ofThickness(
            double thicknessM, double fibreKgPerM2, double fibreDensity, double resinDensity) {
        positive("thickness", thicknessM, "m");
        positive("areal mass of the cloth", fibreKgPerM2, "kg/m2");
        return new Content(fibreKgPerM2 / (fibreDensity * thicknessM), fibreDensity, resinDensity);
    }

    /** Fibre of the mass. */
    public double fibreMass() {
        return fibreVolume * fibreDensityKgPerM3 / densityKgPerM3();
    }

    /** Density without voids, kg/m3. */
    public double densityKgPerM3() {
        return fibreVolume * fibreDensityKgPerM3 + (1 - fibreVolume) * resinDensityKgPerM3;
    }

    /** How thick cloth of an areal mass becomes, m. */
    public double thicknessM(double fibreKgPerM2) {
        positive("areal mass of the cloth", fibreKgPerM2, "kg/m2");
        return fibreKgPerM2 / (fibreDensityKgPerM3 * fibreVolume);
    }

    /** What cloth of an areal mass weighs with its resin, kg/m2. */
    public double arealMassKgPerM2(double fibreKgPerM2) {
        return fibreKgPerM2 / fibreMass();
    }

    static void positive(String what, double value, String unit) {
        if (!(value > 0) || !Double.isFinite(value)) {
            throw new IllegalArgumentException(what + ": found " + value + " " + unit + ", expected above 0");
        }
    }
}
