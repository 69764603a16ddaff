package fayline.method.fitup.frame;

import fayline.method.fitup.frame.bond.BondSpring;
import java.util.List;

/**
 * Strain energy by integrating curvature, stretch and twist of the cubic shapes over each beam: shares nothing with the
 * stiffness matrices.
 */
public final class StrainEnergy {
    private static final double[] GAUSS = {0.5 - Math.sqrt(1.0 / 12), 0.5 + Math.sqrt(1.0 / 12)};

    private StrainEnergy() {}

    /** Energy of a frame, N mm, for motions from the shape without stress. */
    public static double of(Frame frame, NodalField u) {
        double sum = 0;
        for (Beam b : frame.beams()) {
            sum += of(frame, b, u);
        }
        return sum;
    }

    /** Energy of bond springs. */
    public static double of(List<BondSpring> bonds, NodalField u) {
        double sum = 0;
        for (BondSpring b : bonds) {
            for (Freedom f : Freedom.values()) {
                double d = u.get(new NodeFreedom(b.partNode(), f)) - u.get(new NodeFreedom(b.structureNode(), f));
                sum += b.stiffness(f) * d * d / 2;
            }
        }
        return sum;
    }

    private static double of(Frame frame, Beam b, NodalField u) {
        FramePoint arm = frame.nodes().get(b.j()).from(frame.nodes().get(b.i()));
        double l = arm.lengthMm();
        double[] x = {arm.xMm() / l, arm.yMm() / l, arm.zMm() / l};
        double[] z = less(new double[] {b.zref().x(), b.zref().y(), b.zref().z()}, x);
        double[] y = {z[1] * x[2] - z[2] * x[1], z[2] * x[0] - z[0] * x[2], z[0] * x[1] - z[1] * x[0]};
        NodeMotion i = u.at(b.i());
        NodeMotion j = u.at(b.j());
        BeamSection s = b.section();
        double stretch = (shift(j, x) - shift(i, x)) / l;
        double twist = (turn(j, x) - turn(i, x)) / l;
        double energy = (s.eMpa() * s.areaMm2() * stretch * stretch + s.gMpa() * s.jMm4() * twist * twist) * l / 2;
        for (double xi : GAUSS) {
            // Slope of the deflection along y is the turn about z; along z it is minus the turn about y.
            double ky = curvature(xi, l, shift(i, y), turn(i, z), shift(j, y), turn(j, z));
            double kz = curvature(xi, l, shift(i, z), -turn(i, y), shift(j, z), -turn(j, y));
            energy += s.eMpa() * (s.izMm4() * ky * ky + s.iyMm4() * kz * kz) * l / 4;
        }
        return energy;
    }

    private static double curvature(double xi, double l, double v1, double s1, double v2, double s2) {
        return ((-6 + 12 * xi) * v1 + (-4 + 6 * xi) * l * s1 + (6 - 12 * xi) * v2 + (-2 + 6 * xi) * l * s2) / (l * l);
    }

    private static double[] less(double[] v, double[] x) {
        double d = v[0] * x[0] + v[1] * x[1] + v[2] * x[2];
        double[] w = {v[0] - d * x[0], v[1] - d * x[1], v[2] - d * x[2]};
        double n = Math.sqrt(w[0] * w[0] + w[1] * w[1] + w[2] * w[2]);
        return new double[] {w[0] / n, w[1] / n, w[2] / n};
    }

    private static double shift(NodeMotion m, double[] a) {
        return m.ux() * a[0] + m.uy() * a[1] + m.uz() * a[2];
    }

    private static double turn(NodeMotion m, double[] a) {
        return m.rx() * a[0] + m.ry() * a[1] + m.rz() * a[2];
    }
}
