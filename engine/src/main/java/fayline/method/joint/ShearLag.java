package fayline.method.joint;

/**
 * Shear of a bond whose adherends stretch and do not bend ([volkersen1938], derived anew): lambda^2 = G/t (1/S1 + 1/S2) with
 * S = E t; the stress at the end where adherend 1 is loaded is P G / (t lambda) (coth(lambda L) / S1 + 1 / (S2 sinh(lambda L))).
 * A single lap also bends, which this leaves out: its peak is then 12 to 51 percent too low.
 *
 * @param lambdaPerM how fast the stress dies away from an end
 * @param meanPa mean shear stress
 * @param end1Pa shear stress where adherend 1 is loaded
 * @param end2Pa shear stress where adherend 2 is loaded
 */
public record ShearLag(double lambdaPerM, double meanPa, double end1Pa, double end2Pa) {
    /**
     * One bond line.
     *
     * @param loadNPerM load per width that this bond carries
     * @param overlapM overlap; positive
     * @param stretch1NPerM modulus times thickness of adherend 1
     * @param stretch2NPerM the same of adherend 2
     * @param bond the adhesive
     */
    static ShearLag of(double loadNPerM, double overlapM, double stretch1NPerM, double stretch2NPerM, Adhesive bond) {
        double stiff = bond.shearPa() / bond.thicknessM();
        double lambda = Math.sqrt(stiff * (1 / stretch1NPerM + 1 / stretch2NPerM));
        double reach = lambda * overlapM;
        double coth = 1 / Math.tanh(reach);
        // 1/sinh without overflow for long bonds.
        double csch = 2 * Math.exp(-reach) / -Math.expm1(-2 * reach);
        double scale = loadNPerM * stiff / lambda;
        return new ShearLag(
                lambda,
                loadNPerM / overlapM,
                scale * (coth / stretch1NPerM + csch / stretch2NPerM),
                scale * (coth / stretch2NPerM + csch / stretch1NPerM));
    }

    /** The larger of the stresses at the ends. */
    public double peakPa() {
        return Math.max(Math.abs(end1Pa), Math.abs(end2Pa));
    }
}
