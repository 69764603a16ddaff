package fayline.method.sandwich;

/**
 * A rectangular sandwich panel whose edges may turn, under even pressure.
 *
 * @param aM length along 1; positive
 * @param bM width along 2; positive
 * @param face1Pa Young's modulus of the faces along 1; positive
 * @param face2Pa Young's modulus of the faces along 2; positive
 * @param facePoisson Poisson's ratio of the faces for a pull along 1
 * @param faceShearPa shear modulus of the faces in their plane; positive
 * @param faceM thickness of each face; positive, at most a fifth of the core
 * @param coreM thickness of the core; positive
 * @param core1Pa shear modulus of the core along 1; positive
 * @param core2Pa shear modulus of the core along 2; positive
 * @param pressurePa pressure
 */
public record SandwichPanel(
        double aM,
        double bM,
        double face1Pa,
        double face2Pa,
        double facePoisson,
        double faceShearPa,
        double faceM,
        double coreM,
        double core1Pa,
        double core2Pa,
        double pressurePa) {
    private static final double THIN_FACE = 0.2;

    /**
     * Refuses what is no sandwich of thin faces.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public SandwichPanel {
        if (!(aM > 0 && bM > 0 && face1Pa > 0 && face2Pa > 0 && faceShearPa > 0)
                || !(faceM > 0 && coreM > 0 && core1Pa > 0 && core2Pa > 0)
                || !Double.isFinite(aM + bM + pressurePa)) {
            throw new IllegalArgumentException("sides, thicknesses and moduli of a panel must be positive");
        }
        if (!(Math.abs(facePoisson) < Math.sqrt(face1Pa / face2Pa))) {
            throw new IllegalArgumentException(
                    "Poisson's ratio must be smaller than the square root of E1/E2, found " + facePoisson);
        }
        if (faceM > THIN_FACE * coreM) {
            throw new IllegalArgumentException(
                    "thin faces are at most a fifth of their core thick, found " + faceM + " m on " + coreM + " m");
        }
    }

    /** Distance of the middles of the faces, in metres. */
    double apartM() {
        return coreM + faceM;
    }
}
