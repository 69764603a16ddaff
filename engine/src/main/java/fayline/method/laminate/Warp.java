package fayline.method.laminate;

/**
 * How far a stack bends out of flat by itself as its temperature changes, along x over a length. Linear theory gives a saddle;
 * it holds only while the bow is no more than the thickness. Beyond that a thin plate snaps into a cylinder [hyer1981]: one
 * curvature stays, the other goes. The curvature of that cylinder is reckoned too, as the limit of a large plate, which cannot
 * stretch its middle as a saddle must: its energy is least with one curvature held at nought.
 *
 * @param strain strain and curvature where nothing holds it, linear
 * @param bowM bow over the length, |kappa_x| L^2/8, linear, m
 * @param linear whether the linear answer holds: bow no more than the thickness
 * @param cylinderPerM the curvature along x of a cylinder about y, 1/m; what the linear one goes to in a large thin plate
 */
public record Warp(SectionStrain strain, double bowM, boolean linear, double cylinderPerM) {
    private static final double EIGHT = 8;

    /**
     * Reckons.
     *
     * @param laminate the stack
     * @param changeK temperature less stress-free temperature, K
     * @param lengthM along x, m; positive
     * @throws IllegalArgumentException if the length is not positive
     */
    public static Warp of(Laminate laminate, double changeK, double lengthM) {
        if (!(lengthM > 0) || !Double.isFinite(lengthM)) {
            throw new IllegalArgumentException("a length of " + lengthM + " m");
        }
        SectionStrain free = laminate.expansionPerK().times(changeK);
        double kappa = Math.max(
                Math.abs(free.kappaXPerM()), Math.max(Math.abs(free.kappaYPerM()), Math.abs(free.kappaXyPerM()) / 2));
        double bow = Math.abs(free.kappaXPerM()) * lengthM * lengthM / EIGHT;
        boolean linear = kappa * lengthM * lengthM / EIGHT <= laminate.thicknessM();
        return new Warp(free, bow, linear, cylinder(laminate, free));
    }

    /** Holds kappa_y and kappa_xy at nought by moments My and Mxy, the free curvatures given. */
    private static double cylinder(Laminate l, SectionStrain free) {
        double d22 = l.compliance(4, 4);
        double d26 = l.compliance(4, 5);
        double d66 = l.compliance(5, 5);
        double det = d22 * d66 - d26 * d26;
        double my = (-free.kappaYPerM() * d66 + free.kappaXyPerM() * d26) / det;
        double mxy = (-free.kappaXyPerM() * d22 + free.kappaYPerM() * d26) / det;
        return free.kappaXPerM() + l.compliance(3, 4) * my + l.compliance(3, 5) * mxy;
    }
}
