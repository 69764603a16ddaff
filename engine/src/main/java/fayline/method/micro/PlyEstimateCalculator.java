package fayline.method.micro;

/**
 * Estimates a ply from fibre and resin: along by the rule of mixtures, across and in shear by Halpin-Tsai with xi 2 and 1
 * [halpin-tsai1969], expansion by Schapery for fibres alike in all directions [schapery1968]; inverse rules as lower limits
 * [jones1999] 3.2. Along within some 5 percent; across and in shear within some 20 (common practice, no source). Left out:
 * voids, waviness, fibres that expand otherwise across than along.
 */
public final class PlyEstimateCalculator {
    private static final double ACROSS = 2;
    private static final double SHEAR = 1;

    private PlyEstimateCalculator() {}

    /** Estimates. */
    public static PlyEstimate calculate(FibreAndResin q) {
        double v = q.fibreFraction();
        double m = 1 - v;
        double e1 = q.fibreE1Pa() * v + q.resinEPa() * m;
        double nu12 = q.fibreNu12() * v + q.resinNu() * m;
        double alpha1 = (q.fibreE1Pa() * q.fibreAlphaPerK() * v + q.resinEPa() * q.resinAlphaPerK() * m) / e1;
        double alpha2 = (1 + q.fibreNu12()) * q.fibreAlphaPerK() * v
                + (1 + q.resinNu()) * q.resinAlphaPerK() * m
                - alpha1 * nu12;
        return new PlyEstimate(
                e1,
                nu12,
                1 / (v / q.fibreE2Pa() + m / q.resinEPa()),
                1 / (v / q.fibreG12Pa() + m / q.resinGPa()),
                halpinTsai(q.fibreE2Pa(), q.resinEPa(), v, ACROSS),
                halpinTsai(q.fibreG12Pa(), q.resinGPa(), v, SHEAR),
                alpha1,
                alpha2);
    }

    private static double halpinTsai(double fibre, double resin, double v, double xi) {
        double eta = (fibre / resin - 1) / (fibre / resin + xi);
        return resin * (1 + xi * eta * v) / (1 - eta * v);
    }
}
