package fayline.method.joint;

/**
 * A scarf: both adherends end in a taper, so that the shear is even where they are equally stiff; where they are not, the peak
 * is higher by up to the ratio of the stiffer to the softer ([hart-smith1973], from memory).
 *
 * @param meanPa mean shear stress: P sin cos / t
 * @param peakPa peak shear stress
 * @param acrossPa stress across the bond: P sin^2 / t
 * @param lengthM length of the taper
 */
public record Scarf(double meanPa, double peakPa, double acrossPa, double lengthM) {
    /**
     * A scarf.
     *
     * @param loadNPerM load per width; not negative
     * @param a one adherend
     * @param b the other, of the same thickness
     * @param slope length over height; at least 5
     * @throws IllegalArgumentException outside these
     */
    public static Scarf of(double loadNPerM, Adherend a, Adherend b, double slope) {
        if (!(slope >= 5) || Double.isInfinite(slope)) {
            throw new IllegalArgumentException("a scarf is at least 1 in 5, found 1 in " + slope);
        }
        if (Math.abs(a.thicknessM() - b.thicknessM()) > 0.01 * a.thicknessM()) {
            throw new IllegalArgumentException("the adherends of a scarf are equally thick, found " + a.thicknessM()
                    + " and " + b.thicknessM() + " m");
        }
        double angle = Math.atan(1 / slope);
        double pull = loadNPerM / a.thicknessM();
        double mean = pull * Math.sin(angle) * Math.cos(angle);
        double ratio = Math.max(a.stretchNPerM(), b.stretchNPerM()) / Math.min(a.stretchNPerM(), b.stretchNPerM());
        return new Scarf(mean, mean * ratio, pull * Math.sin(angle) * Math.sin(angle), a.thicknessM() * slope);
    }
}
