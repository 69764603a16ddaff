package fayline.method.joint;

/**
 * What is bonded, per width.
 *
 * @param modulusPa Young's modulus along the joint; positive
 * @param poisson Poisson's ratio; size below 1, for a sheet alike in all directions below 0.5
 * @param thicknessM thickness; positive
 * @param shearPa shear modulus through the thickness; positive
 * @param alphaPerK expansion along the joint, per kelvin
 */
public record Adherend(double modulusPa, double poisson, double thicknessM, double shearPa, double alphaPerK) {
    /**
     * Refuses what no material has.
     *
     * @throws IllegalArgumentException naming the rule
     */
    public Adherend {
        if (!(modulusPa > 0 && thicknessM > 0 && shearPa > 0)
                || !Double.isFinite(modulusPa + thicknessM + shearPa + alphaPerK)) {
            throw new IllegalArgumentException(
                    "modulus, thickness and shear modulus of an adherend must be positive, found " + modulusPa + " Pa, "
                            + thicknessM + " m, " + shearPa + " Pa");
        }
        if (!(Math.abs(poisson) < 1)) {
            throw new IllegalArgumentException("Poisson's ratio lies within 1, found " + poisson);
        }
    }

    /** Of a material alike in all directions. */
    public static Adherend isotropic(double modulusPa, double poisson, double thicknessM, double alphaPerK) {
        if (!(poisson > -1 && poisson < 0.5)) {
            throw new IllegalArgumentException("Poisson's ratio must lie above -1 and below 0.5, found " + poisson);
        }
        return new Adherend(modulusPa, poisson, thicknessM, modulusPa / (2 * (1 + poisson)), alphaPerK);
    }

    /** The same with half the thickness, as each bond of a double lap sees what lies in the middle. */
    Adherend halved() {
        return new Adherend(modulusPa, poisson, thicknessM / 2, shearPa, alphaPerK);
    }

    /** Modulus times thickness, in N/m. */
    public double stretchNPerM() {
        return modulusPa * thicknessM;
    }
}
