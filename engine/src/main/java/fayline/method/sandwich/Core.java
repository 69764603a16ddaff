package fayline.method.sandwich;

/**
 * Two equal faces and the core between them.
 *
 * @param faceModulusPa Young's modulus of a face along the load; positive
 * @param faceM thickness of each face; positive
 * @param coreModulusPa Young's modulus of the core through its thickness; positive
 * @param coreShearPa shear modulus of the core; positive
 * @param coreM thickness of the core; positive
 */
public record Core(double faceModulusPa, double faceM, double coreModulusPa, double coreShearPa, double coreM) {
    /**
     * Refuses what is no sandwich.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public Core {
        if (!(faceModulusPa > 0 && faceM > 0 && coreModulusPa > 0 && coreShearPa > 0 && coreM > 0)
                || !Double.isFinite(faceModulusPa + faceM + coreModulusPa + coreShearPa + coreM)) {
            throw new IllegalArgumentException("moduli and thicknesses of a sandwich must be positive, found faces "
                    + faceModulusPa + " Pa, " + faceM + " m, core " + coreModulusPa + " Pa, " + coreShearPa + " Pa, "
                    + coreM + " m");
        }
    }

    /** Distance of the middles of the faces, in metres. */
    public double apartM() {
        return coreM + faceM;
    }

    /**
     * Stress at which a face wrinkles: k (Ef Ec Gc)^(1/3), in pascals.
     *
     * @param k 0.5 for design, 0.91 by theory for a thick core [hoff-mautner1945]; say which
     */
    public double wrinklingPa(double k) {
        return k * Math.cbrt(faceModulusPa * coreModulusPa * coreShearPa);
    }

    /**
     * Stress at which a face dimples into the cells of a honeycomb: 2 Ef / (1 - nu^2) (tf / s)^2 [milhdbk-23], in pascals.
     *
     * @param facePoisson Poisson's ratio of the face; size below 1
     * @param cellM size of a cell, the width of the circle inside it; positive
     */
    public double dimplingPa(double facePoisson, double cellM) {
        if (!(cellM > 0 && Math.abs(facePoisson) < 1)) {
            throw new IllegalArgumentException(
                    "a cell has a size and Poisson's ratio lies within 1, found " + cellM + " m, " + facePoisson);
        }
        return 2 * faceModulusPa / (1 - facePoisson * facePoisson) * (faceM / cellM) * (faceM / cellM);
    }
}
