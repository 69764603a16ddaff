package fayline.method.micro;

import fayline.method.laminate.LaminaRules;

/**
 * What a ply is made of.
 *
 * @param fibreE1Pa modulus of the fibre along, Pa; positive
 * @param fibreE2Pa modulus of the fibre across, Pa; positive
 * @param fibreG12Pa shear modulus of the fibre, Pa; positive
 * @param fibreNu12 Poisson's ratio of the fibre
 * @param fibreAlphaPerK expansion of the fibre (alike in all directions), 1/K
 * @param resinEPa modulus of the resin, Pa; positive
 * @param resinNu Poisson's ratio of the resin, above -1 and at most 0.5
 * @param resinAlphaPerK expansion of the resin, 1/K
 * @param fibreFraction of the volume, above 0, at most that of the closest packing
 */
public record FibreAndResin(
        double fibreE1Pa,
        double fibreE2Pa,
        double fibreG12Pa,
        double fibreNu12,
        double fibreAlphaPerK,
        double resinEPa,
        double resinNu,
        double resinAlphaPerK,
        double fibreFraction) {
    /**
     * Refuses what cannot be.
     *
     * @throws IllegalArgumentException naming the rule that is broken
     */
    public FibreAndResin {
        positive("Ef1", fibreE1Pa);
        positive("Ef2", fibreE2Pa);
        positive("Gf12", fibreG12Pa);
        positive("Em", resinEPa);
        if (!(resinNu > -1 && resinNu <= 0.5)) {
            throw new IllegalArgumentException("num: found " + resinNu + ", expected above -1 and at most 0.5");
        }
        if (!(Math.abs(fibreNu12) < Math.sqrt(fibreE1Pa / fibreE2Pa))) {
            throw new IllegalArgumentException("nuf: found " + fibreNu12 + ", expected |nu| < sqrt(Ef1/Ef2)");
        }
        LaminaRules.ofFibreFraction("Vf", fibreFraction).stream().findFirst().ifPresent(p -> {
            throw new IllegalArgumentException(p.sentence());
        });
    }

    /** Shear modulus of the resin, Pa. */
    public double resinGPa() {
        return resinEPa / (2 * (1 + resinNu));
    }

    private static void positive(String name, double pa) {
        if (!(pa > 0) || !Double.isFinite(pa)) {
            throw new IllegalArgumentException(name + ": found " + pa / 1e9 + " GPa, expected a modulus above 0");
        }
    }
}
