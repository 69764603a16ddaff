package fayline.method.joint;

/**
 * A single lap of two equal adherends whose pull does not lie in one line, so that they bend ([goland-reissner1944]): the
 * factor k of the moment at the overlap's end falls as the load grows. Long adherends. Peel is solved as a beam on a bed
 * with D = E t^3 / 12 in the overlap, as the paper does.
 *
 * @param k share of P t / 2 that is left as moment at the end of the overlap
 * @param momentN that moment per width
 * @param forceNPerM shear force per width there
 * @param meanPa mean shear stress
 * @param shearPa peak shear stress
 * @param peelPa peak peel stress
 * @param surfacePa largest stress on the adherend's surface: P/t + 6 M/t^2
 */
public record BendingLap(
        double k, double momentN, double forceNPerM, double meanPa, double shearPa, double peelPa, double surfacePa) {
    static BendingLap of(double loadNPerM, double overlapM, Adherend a, Adhesive bond) {
        double t = a.thicknessM();
        double c = overlapM / 2;
        double flat = 1 - a.poisson() * a.poisson();
        double u = Math.sqrt(loadNPerM * flat * 12 / (a.modulusPa() * t * t * t));
        // u2 = u1 / (2 sqrt 2); cosh / (cosh + 2 sqrt 2 sinh) without overflow.
        double k = 1 / (1 + 2 * Math.sqrt(2) * Math.tanh(u * c / (2 * Math.sqrt(2))));
        double moment = k * loadNPerM * t / 2;
        double force = moment * u;
        double beta = Math.sqrt(8 * bond.shearPa() * t / (a.modulusPa() * bond.thicknessM()));
        double shear = loadNPerM / (8 * c) * (beta * c / t * (1 + 3 * k) / Math.tanh(beta * c / t) + 3 * (1 - k));
        double mu = Math.pow(6 * bond.modulusPa() / (bond.thicknessM() * a.modulusPa() * t * t * t), 0.25);
        return new BendingLap(
                k,
                moment,
                force,
                loadNPerM / overlapM,
                shear,
                peel(moment, force, mu, overlapM),
                loadNPerM / t + 6 * moment / (t * t));
    }

    /** Peel at the end of a bed of length L that carries moment and force at both ends, the one the mirror of the other. */
    private static double peel(double moment, double force, double mu, double length) {
        double y = mu * length;
        double e = Math.exp(-y);
        double cos = e * Math.cos(y);
        double sin = e * Math.sin(y);
        // Second and third derivatives of e^-y cos y and e^-y sin y at the near end less or plus those of the far one.
        double a2 = 2 * sin;
        double b2 = -2 - 2 * cos;
        double a3 = 2 - 2 * (cos - sin);
        double b3 = 2 - 2 * (cos + sin);
        double s2 = 2 * mu * mu * moment;
        double s3 = 2 * mu * force;
        double det = a2 * b3 - b2 * a3;
        double a = (s2 * b3 - b2 * s3) / det;
        double b = (a2 * s3 - s2 * a3) / det;
        return a * (1 + cos) + b * sin;
    }
}
