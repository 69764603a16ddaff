package fayline.method.fitup.frame.spring;

/**
 * Where pulling a part in should stop and the part be corrected instead; both limits are common practice, no source.
 *
 * @param handN most force of one clamp; positive
 * @param bendingStrain most bending strain, as a fraction; positive
 */
public record ClampLimits(double handN, double bendingStrain) {
    /** 150 N and 0.2 %. */
    public static final ClampLimits USUAL = new ClampLimits(150, 0.002);

    /** Checks the signs. */
    public ClampLimits {
        if (!(handN > 0) || !(bendingStrain > 0)) {
            throw new IllegalArgumentException("limits are above zero, found " + handN + " N, " + bendingStrain);
        }
    }
}
