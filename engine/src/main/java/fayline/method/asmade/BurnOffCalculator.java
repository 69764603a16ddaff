package fayline.method.asmade;

/**
 * Content by burning off [astm-d3171] method I: Vf = Wf rho/rho_f, Vm = (1 - Wf) rho/rho_m, voids the rest. Voids are a small
 * difference of large numbers: 1 percent of density is 1 percent of voids. Less than -2 percent is refused, as one of the
 * densities is wrong then.
 */
public final class BurnOffCalculator {
    private static final double LEAST = -0.02;

    private BurnOffCalculator() {}

    /**
     * Reckons.
     *
     * @throws IllegalArgumentException if less than nothing is left for voids, by more than densities are known
     */
    public static BurnOffResult calculate(BurnOff b) {
        double fibre = b.fibreMass() * b.densityKgPerM3() / b.fibreDensityKgPerM3();
        double resin = (1 - b.fibreMass()) * b.densityKgPerM3() / b.resinDensityKgPerM3();
        double voids = 1 - fibre - resin;
        if (voids < LEAST) {
            throw new IllegalArgumentException("voids: found " + voids
                    + " of the volume, expected not below -0.02: a density or the fibre mass is wrong");
        }
        return new BurnOffResult(fibre, resin, voids);
    }
}
