package fayline.method.asmade;

/**
 * The same cloth with more or less resin: modulus by the rule of mixtures [jones1999] 3.2, thickness by the volume of the
 * cloth. More resin makes a laminate thicker and less stiff for its weight, but not less stiff in plane: its fibres are the
 * same. Left out: strength, voids, and that dry cloth carries no load across.
 */
public final class StiffnessChangeCalculator {
    private StiffnessChangeCalculator() {}

    /**
     * Reckons.
     *
     * @param planned as planned
     * @param made as made, of the same fibre and resin
     * @param fibrePa modulus of the fibre, Pa; positive
     * @param resinPa modulus of the resin, Pa; positive
     */
    public static StiffnessChange calculate(Content planned, Content made, double fibrePa, double resinPa) {
        Content.positive("modulus of the fibre", fibrePa, "Pa");
        Content.positive("modulus of the resin", resinPa, "Pa");
        double modulus = mixed(made.fibreVolume(), fibrePa, resinPa) / mixed(planned.fibreVolume(), fibrePa, resinPa);
        double thickness = planned.fibreVolume() / made.fibreVolume();
        return new StiffnessChange(
                modulus, thickness, modulus * thickness, modulus * thickness * thickness * thickness);
    }

    private static double mixed(double v, double fibre, double resin) {
        return v * fibre + (1 - v) * resin;
    }
}
