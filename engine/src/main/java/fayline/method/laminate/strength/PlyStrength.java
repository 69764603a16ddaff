package fayline.method.laminate.strength;

/**
 * What one ply bears in its own axes; all positive.
 *
 * @param xtPa pulled along the fibres, Pa
 * @param xcPa pressed along the fibres, Pa
 * @param ytPa pulled across, Pa
 * @param ycPa pressed across, Pa
 * @param sPa in-plane shear, Pa
 * @param stPa shear across the fibres through the thickness, Pa; Hashin's matrix compression alone asks for it
 */
public record PlyStrength(double xtPa, double xcPa, double ytPa, double ycPa, double sPa, double stPa) {
    /**
     * Refuses what no strength can be.
     *
     * @throws IllegalArgumentException naming the strength that is not above nothing
     */
    public PlyStrength {
        keep("XT", xtPa);
        keep("XC", xcPa);
        keep("YT", ytPa);
        keep("YC", ycPa);
        keep("S", sPa);
        keep("ST", stPa);
    }

    /** Strengths of which shear across is not known: half of what the ply bears pressed across. */
    public static PlyStrength of(double xtPa, double xcPa, double ytPa, double ycPa, double sPa) {
        return new PlyStrength(xtPa, xcPa, ytPa, ycPa, sPa, ycPa / 2);
    }

    /** All strengths times a factor, as for a knock-down; above 0. */
    public PlyStrength times(double factor) {
        return new PlyStrength(xtPa * factor, xcPa * factor, ytPa * factor, ycPa * factor, sPa * factor, stPa * factor);
    }

    private static void keep(String name, double pa) {
        if (!(pa > 0) || !Double.isFinite(pa)) {
            throw new IllegalArgumentException(name + ": found " + pa / 1e6 + " MPa, expected a strength above 0");
        }
    }
}
