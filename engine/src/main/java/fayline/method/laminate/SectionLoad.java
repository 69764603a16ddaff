package fayline.method.laminate;

/**
 * What acts on a laminate: forces and moments per width, and how far its temperature lies from the one at which it is free of
 * stress.
 *
 * @param nxNPerM force along x per width, N/m
 * @param nyNPerM force along y per width, N/m
 * @param nxyNPerM shear force per width, N/m
 * @param mxN moment of the stresses along x per width, N m/m; positive where the last ply is pulled
 * @param myN moment of the stresses along y per width, N m/m
 * @param mxyN twisting moment per width, N m/m
 * @param temperatureChangeK temperature less stress-free temperature, K; negative after cooling from cure
 */
public record SectionLoad(
        double nxNPerM,
        double nyNPerM,
        double nxyNPerM,
        double mxN,
        double myN,
        double mxyN,
        double temperatureChangeK) {
    /** Nothing acts. */
    public static final SectionLoad NONE = new SectionLoad(0, 0, 0, 0, 0, 0, 0);

    /**
     * Refuses what is no number.
     *
     * @throws IllegalArgumentException if a component is not finite
     */
    public SectionLoad {
        if (!Double.isFinite(nxNPerM + nyNPerM + nxyNPerM + mxN + myN + mxyN + temperatureChangeK)) {
            throw new IllegalArgumentException("a load that is no number");
        }
    }

    /** Forces in the plane alone. */
    public static SectionLoad inPlane(double nxNPerM, double nyNPerM, double nxyNPerM) {
        return new SectionLoad(nxNPerM, nyNPerM, nxyNPerM, 0, 0, 0, 0);
    }

    /** Moments alone. */
    public static SectionLoad moments(double mxN, double myN, double mxyN) {
        return new SectionLoad(0, 0, 0, mxN, myN, mxyN, 0);
    }

    /** This load at another temperature. */
    public SectionLoad at(double changeK) {
        return new SectionLoad(nxNPerM, nyNPerM, nxyNPerM, mxN, myN, mxyN, changeK);
    }

    double component(int i) {
        return switch (i) {
            case 0 -> nxNPerM;
            case 1 -> nyNPerM;
            case 2 -> nxyNPerM;
            case 3 -> mxN;
            case 4 -> myN;
            default -> mxyN;
        };
    }

    /** Whether no force and no moment acts; a temperature change may. */
    public boolean isUnloaded() {
        for (int i = 0; i < 6; i++) {
            if (component(i) != 0) {
                return false;
            }
        }
        return true;
    }
}
