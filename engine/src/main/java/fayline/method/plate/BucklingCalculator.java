package fayline.method.plate;

/**
 * The compression at which a thin flat plate with edges that may turn buckles: the least over whole half waves m along a and n
 * along b of pi^2 [D11 (m/a)^4 + 2 (D12 + 2 D66) (m/a)^2 (n/b)^2 + D22 (n/b)^4] / [(m/a)^2 + k (n/b)^2]
 * ([timoshenko-gere1961], art. 9.2 and 9.3).
 */
public final class BucklingCalculator {
    private static final int MOST_WAVES = 60;

    private BucklingCalculator() {}

    /**
     * The critical load.
     *
     * @param d bending stiffnesses
     * @param aM length along the compression; positive
     * @param bM width; positive
     * @param across compression along b over that along a; not negative
     * @return waves and load
     * @throws IllegalArgumentException for sides that are not positive or a pull across
     */
    public static Buckling calculate(PlateStiffness d, double aM, double bM, double across) {
        if (!(aM > 0 && bM > 0 && across >= 0) || !Double.isFinite(aM + bM + across)) {
            throw new IllegalArgumentException("sides must be positive and the load across not negative, found " + aM
                    + " by " + bM + " m, " + across);
        }
        Buckling least = new Buckling(1, 1, Double.MAX_VALUE);
        for (int m = 1; m <= MOST_WAVES; m++) {
            for (int n = 1; n <= MOST_WAVES; n++) {
                double x = m / aM * (m / aM);
                double y = n / bM * (n / bM);
                double load = Math.PI
                        * Math.PI
                        * (d.d11Nm() * x * x + 2 * d.mixedNm() * x * y + d.d22Nm() * y * y)
                        / (x + across * y);
                if (load < least.loadNPerM()) {
                    least = new Buckling(m, n, load);
                }
            }
        }
        if (least.wavesA() == MOST_WAVES || least.wavesB() == MOST_WAVES) {
            throw new IllegalArgumentException(
                    "a plate so long that it buckles in more than " + MOST_WAVES + " half waves is not covered");
        }
        return least;
    }

    /**
     * How a plate buckles.
     *
     * @param wavesA half waves along a
     * @param wavesB half waves along b
     * @param loadNPerM compression along a per width at which it does
     */
    public record Buckling(int wavesA, int wavesB, double loadNPerM) {}
}
