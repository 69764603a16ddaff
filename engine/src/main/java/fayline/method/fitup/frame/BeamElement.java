package fayline.method.fitup.frame;

/**
 * The stiffness of one straight beam after Euler and Bernoulli, 12 by 12 in space [przemieniecki1968]: EA/L, GJ/L, 12EI/L³,
 * 6EI/L², 4EI/L, 2EI/L. Own axes: x from i to j, z the reference made square to x, y = z × x; Iy bends in x-z.
 */
final class BeamElement {
    private static final int ENDS = 12;

    private final double[][] own = new double[ENDS][ENDS];
    private final double[][] axes;
    private final BeamSection section;
    private final Beam beam;

    BeamElement(Frame frame, Beam beam) {
        this.beam = beam;
        this.section = beam.section();
        FramePoint arm = frame.nodes().get(beam.j()).from(frame.nodes().get(beam.i()));
        Axis x = Axis.of(arm);
        Axis z = beam.zref().squareTo(x);
        Axis y = z.cross(x);
        this.axes = new double[][] {{x.x(), x.y(), x.z()}, {y.x(), y.y(), y.z()}, {z.x(), z.y(), z.z()}};
        fill(arm.lengthMm());
    }

    private void fill(double length) {
        spring(0, section.eMpa() * section.areaMm2() / length);
        spring(3, section.gMpa() * section.jMm4() / length);
        bend(1, 5, section.eMpa() * section.izMm4(), length, 1);
        bend(2, 4, section.eMpa() * section.iyMm4(), length, -1);
    }

    private void spring(int k, double stiffness) {
        put(k, k, stiffness);
        put(k + 6, k + 6, stiffness);
        put(k, k + 6, -stiffness);
    }

    private void bend(int shift, int turn, double ei, double length, int sign) {
        double k = ei / (length * length * length);
        put(shift, shift, 12 * k);
        put(shift + 6, shift + 6, 12 * k);
        put(shift, shift + 6, -12 * k);
        put(shift, turn, sign * 6 * k * length);
        put(shift, turn + 6, sign * 6 * k * length);
        put(turn, shift + 6, -sign * 6 * k * length);
        put(shift + 6, turn + 6, -sign * 6 * k * length);
        put(turn, turn, 4 * k * length * length);
        put(turn + 6, turn + 6, 4 * k * length * length);
        put(turn, turn + 6, 2 * k * length * length);
    }

    private void put(int i, int j, double value) {
        own[i][j] = value;
        own[j][i] = value;
    }

    /** The node of an end freedom, 0 to 11. */
    int node(int end) {
        return end < 6 ? beam.i() : beam.j();
    }

    /** One element of the stiffness along the axes of the frame, Tᵀ k T. */
    double stiffness(int row, int col) {
        double sum = 0;
        for (int a = 0; a < 3; a++) {
            for (int b = 0; b < 3; b++) {
                sum += axes[a][row % 3] * own[row / 3 * 3 + a][col / 3 * 3 + b] * axes[b][col % 3];
            }
        }
        return sum;
    }

    /** Forces and moments that the nodes put on the beam's ends, in the beam's own axes. */
    private double[] endForces(NodalField motion) {
        double[] u = new double[ENDS];
        for (int k = 0; k < ENDS; k++) {
            for (int a = 0; a < 3; a++) {
                u[k] += axes[k % 3][a] * motion.get(node(k) * 6 + k % 6 / 3 * 3 + a);
            }
        }
        double[] f = new double[ENDS];
        for (int i = 0; i < ENDS; i++) {
            for (int j = 0; j < ENDS; j++) {
                f[i] += own[i][j] * u[j];
            }
        }
        return f;
    }

    /**
     * The largest bending strain at either end, where the depth that it needs is known.
     *
     * @param motion how the nodes moved from the shape without stress
     * @param plane whether only bending in x-y counts
     */
    double bendingStrain(NodalField motion, boolean plane) {
        double[] f = endForces(motion);
        double cy = section.fibreYMm().orElse(0) / (section.eMpa() * section.izMm4());
        double cz =
                plane || section.iyMm4() == 0 ? 0 : section.fibreZMm().orElse(0) / (section.eMpa() * section.iyMm4());
        return Math.max(Math.abs(f[5]) * cy + Math.abs(f[4]) * cz, Math.abs(f[11]) * cy + Math.abs(f[10]) * cz);
    }
}
