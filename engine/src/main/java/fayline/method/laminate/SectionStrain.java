package fayline.method.laminate;

/**
 * Strain of a laminate's middle and its curvatures; strain at a height z is eps + z kappa, kappa_x = -d2w/dx2.
 *
 * @param epsX strain along x
 * @param epsY strain along y
 * @param gammaXy shear strain (engineering)
 * @param kappaXPerM curvature along x, 1/m
 * @param kappaYPerM curvature along y, 1/m
 * @param kappaXyPerM twist (engineering), 1/m
 */
public record SectionStrain(
        double epsX, double epsY, double gammaXy, double kappaXPerM, double kappaYPerM, double kappaXyPerM) {
    /** The sum of two. */
    public SectionStrain plus(SectionStrain o) {
        return new SectionStrain(
                epsX + o.epsX,
                epsY + o.epsY,
                gammaXy + o.gammaXy,
                kappaXPerM + o.kappaXPerM,
                kappaYPerM + o.kappaYPerM,
                kappaXyPerM + o.kappaXyPerM);
    }

    /** This so many times. */
    public SectionStrain times(double f) {
        return new SectionStrain(epsX * f, epsY * f, gammaXy * f, kappaXPerM * f, kappaYPerM * f, kappaXyPerM * f);
    }
}
