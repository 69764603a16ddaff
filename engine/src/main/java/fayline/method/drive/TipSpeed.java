package fayline.method.drive;

/** Speed of a propeller's tips against that of sound: u = pi D n, helical sqrt(u^2 + V^2), a = sqrt(1.4 R T) [usstd1976]. */
public final class TipSpeed {
    private static final double HEAT_RATIO = 1.4;
    private static final double GAS_J_PER_KG_K = 8.31432 / 0.0289644;

    private TipSpeed() {}

    /** Speed of the tips standing still, in metres a second. */
    public static double standingMPerS(double diameterM, double turnsPerS) {
        if (!(diameterM > 0 && turnsPerS >= 0)) {
            throw new IllegalArgumentException("a propeller has a diameter above nought and a speed of nought or more");
        }
        return Math.PI * diameterM * turnsPerS;
    }

    /** Speed of the tips in flight, in metres a second. */
    public static double helicalMPerS(double diameterM, double turnsPerS, double airspeedMPerS) {
        return Math.hypot(standingMPerS(diameterM, turnsPerS), airspeedMPerS);
    }

    /**
     * Speed of sound in air, in metres a second.
     *
     * @param airK absolute temperature; above nought
     */
    public static double soundMPerS(double airK) {
        if (!(airK > 0)) {
            throw new IllegalArgumentException("a temperature lies above absolute nought, found " + airK + " K");
        }
        return Math.sqrt(HEAT_RATIO * GAS_J_PER_KG_K * airK);
    }
}
