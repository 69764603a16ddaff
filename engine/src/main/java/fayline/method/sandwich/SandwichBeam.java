package fayline.method.sandwich;

/**
 * A sandwich beam on two supports.
 *
 * @param core faces and core
 * @param widthM width; positive
 * @param spanM span; positive
 * @param loading where the load stands
 * @param loadN the whole load; not negative
 * @param padM length of beam that a load in the middle is spread over by its pad; 0 for a knife edge
 * @param wrinkling coefficient k of wrinkling; 0.5 or 0.91
 */
public record SandwichBeam(
        Core core, double widthM, double spanM, BeamLoading loading, double loadN, double padM, double wrinkling) {
    /**
     * Refuses what is no beam.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public SandwichBeam {
        if (!(widthM > 0 && spanM > 0 && loadN >= 0 && padM >= 0 && padM < spanM)
                || !Double.isFinite(widthM + spanM + loadN)) {
            throw new IllegalArgumentException(
                    "a beam has positive width and span, a load that is not negative and a pad"
                            + " shorter than its span, found " + widthM + " m, " + spanM + " m, " + loadN + " N, "
                            + padM + " m");
        }
        if (!(wrinkling > 0 && wrinkling <= 1)) {
            throw new IllegalArgumentException(
                    "the coefficient of wrinkling lies above 0 and at most at 1, found " + wrinkling);
        }
    }
}
