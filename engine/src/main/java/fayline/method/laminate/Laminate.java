package fayline.method.laminate;

import fayline.basis.numeric.SymmetricInverse;
import java.util.List;

/**
 * A stack of plies by classical lamination theory: thin, flat, plies bonded, normals stay straight, small strain, linear
 * [jones1999] chapter 4, [nettles1994]. Plies are listed from z = -h/2 to z = +h/2. Its membrane and bending constants are A, B
 * and D: forces per width N = A eps + B kappa, moments M = B eps + D kappa. Left out: shear through the thickness, free edges
 * (which soften about one thickness from each edge), large deflection.
 */
public final class Laminate {
    private static final int SIX = 6;

    private final List<Ply> plies;
    private final double[] heights;
    private final TurnedStiffness[] turned;
    private final double[] abd = new double[SIX * SIX];
    private final double[] inverse = new double[SIX * SIX];
    private final double[] thermal = new double[SIX];

    private Laminate(List<Ply> plies) {
        this.plies = List.copyOf(plies);
        int n = plies.size();
        heights = new double[n + 1];
        turned = new TurnedStiffness[n];
        double h = 0;
        for (Ply p : this.plies) {
            h += p.thicknessM();
        }
        heights[0] = -h / 2;
        for (int k = 0; k < n; k++) {
            Ply p = this.plies.get(k);
            heights[k + 1] = k + 1 == n ? h / 2 : heights[k] + p.thicknessM();
            turned[k] = TurnedStiffness.of(p.lamina(), p.angleDeg());
            add(turned[k], heights[k], heights[k + 1]);
        }
        if (!SymmetricInverse.of(abd, SIX, inverse)) {
            throw new IllegalArgumentException("a stack whose stiffness cannot be inverted");
        }
    }

    /**
     * A laminate of layers.
     *
     * @param plies from z = -h/2 to z = +h/2; at least one
     * @throws IllegalArgumentException if there is none
     */
    public static Laminate of(List<Ply> plies) {
        if (plies.isEmpty()) {
            throw new IllegalArgumentException("a laminate without plies");
        }
        return new Laminate(plies);
    }

    private void add(TurnedStiffness q, double from, double to) {
        double one = to - from;
        double two = (to * to - from * from) / 2;
        double three = (to * to * to - from * from * from) / 3;
        add(0, 0, q.q11Pa(), one, two, three);
        add(0, 1, q.q12Pa(), one, two, three);
        add(0, 2, q.q16Pa(), one, two, three);
        add(1, 1, q.q22Pa(), one, two, three);
        add(1, 2, q.q26Pa(), one, two, three);
        add(2, 2, q.q66Pa(), one, two, three);
        double tx = q.q11Pa() * q.alphaXPerK() + q.q12Pa() * q.alphaYPerK() + q.q16Pa() * q.alphaXyPerK();
        double ty = q.q12Pa() * q.alphaXPerK() + q.q22Pa() * q.alphaYPerK() + q.q26Pa() * q.alphaXyPerK();
        double txy = q.q16Pa() * q.alphaXPerK() + q.q26Pa() * q.alphaYPerK() + q.q66Pa() * q.alphaXyPerK();
        thermal[0] += tx * one;
        thermal[1] += ty * one;
        thermal[2] += txy * one;
        thermal[3] += tx * two;
        thermal[4] += ty * two;
        thermal[5] += txy * two;
    }

    private void add(int i, int j, double q, double one, double two, double three) {
        put(i, j, q * one);
        put(i, j + 3, q * two);
        if (i != j) {
            put(j, i + 3, q * two);
        }
        put(i + 3, j + 3, q * three);
    }

    private void put(int i, int j, double v) {
        abd[i * SIX + j] += v;
        if (i != j) {
            abd[j * SIX + i] += v;
        }
    }

    /** The layers, from z = -h/2. */
    public List<Ply> plies() {
        return plies;
    }

    /** The whole thickness, m. */
    public double thicknessM() {
        return heights[plies.size()] - heights[0];
    }

    /** Height of a face of a ply above the middle, m; face 0 is the one towards -h/2, 1 the other. */
    public double heightM(int ply, int face) {
        return heights[ply + face];
    }

    /** Membrane stiffness A, N/m; 0, 1, 2 stand for x, y, xy. */
    public double a(int i, int j) {
        return abd[i * SIX + j];
    }

    /** Coupling stiffness B, N; 0, 1, 2 stand for x, y, xy. */
    public double b(int i, int j) {
        return abd[i * SIX + j + 3];
    }

    /** Bending stiffness D, N m; 0, 1, 2 stand for x, y, xy. */
    public double d(int i, int j) {
        return abd[(i + 3) * SIX + j + 3];
    }

    /** One term of the inverse of the whole 6 by 6: 0 to 2 forces and strains (m/N), 3 to 5 moments and curvatures (1/(N m)). */
    public double compliance(int i, int j) {
        return inverse[i * SIX + j];
    }

    /** Whether stretching does not bend it: every B below 1e-9 of what A and D would allow, as in a symmetric stack. */
    public boolean isUncoupled() {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double scale = Math.sqrt(Math.max(a(i, i), a(j, j)) * Math.max(d(i, i), d(j, j)));
                if (Math.abs(b(i, j)) > 1e-9 * scale) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Constants in plane and in bending. */
    public EngineeringConstants constants() {
        double h = thicknessM();
        double h3 = h * h * h / 12;
        return new EngineeringConstants(
                1 / (h * compliance(0, 0)),
                1 / (h * compliance(1, 1)),
                1 / (h * compliance(2, 2)),
                -compliance(0, 1) / compliance(0, 0),
                -compliance(0, 1) / compliance(1, 1),
                1 / (h3 * compliance(3, 3)),
                1 / (h3 * compliance(4, 4)),
                1 / (h3 * compliance(5, 5)),
                -compliance(3, 4) / compliance(3, 3));
    }

    /** Strain and curvature for each kelvin where nothing holds it; the first three are its expansions, 1/K. */
    public SectionStrain expansionPerK() {
        return solved(thermal[0], thermal[1], thermal[2], thermal[3], thermal[4], thermal[5]);
    }

    /** Strain and curvature under forces and moments alone. */
    public SectionStrain strain(SectionLoad load) {
        return solved(load.nxNPerM(), load.nyNPerM(), load.nxyNPerM(), load.mxN(), load.myN(), load.mxyN());
    }

    private SectionStrain solved(double a, double b, double c, double d, double e, double f) {
        return new SectionStrain(
                row(0, a, b, c, d, e, f),
                row(1, a, b, c, d, e, f),
                row(2, a, b, c, d, e, f),
                row(3, a, b, c, d, e, f),
                row(4, a, b, c, d, e, f),
                row(5, a, b, c, d, e, f));
    }

    private double row(int i, double a, double b, double c, double d, double e, double f) {
        int k = i * SIX;
        return inverse[k] * a
                + inverse[k + 1] * b
                + inverse[k + 2] * c
                + inverse[k + 3] * d
                + inverse[k + 4] * e
                + inverse[k + 5] * f;
    }

    /**
     * Stress of a ply from strain that is not its own expansion.
     *
     * @param ply counted from 0
     * @param face 0 towards -h/2, 1 towards +h/2
     * @param strain of the laminate under forces and moments
     */
    public PlyStress stress(int ply, int face, SectionStrain strain) {
        return stress(ply, heights[ply + face], strain, 0);
    }

    /**
     * Stress that a temperature change leaves in a ply where nothing holds the laminate.
     *
     * @param ply counted from 0
     * @param face 0 towards -h/2, 1 towards +h/2
     * @param free {@link #expansionPerK()} times the change
     * @param changeK temperature less stress-free temperature, K
     */
    public PlyStress residual(int ply, int face, SectionStrain free, double changeK) {
        return stress(ply, heights[ply + face], free, changeK);
    }

    private PlyStress stress(int ply, double z, SectionStrain e, double changeK) {
        TurnedStiffness q = turned[ply];
        double ex = e.epsX() + z * e.kappaXPerM() - q.alphaXPerK() * changeK;
        double ey = e.epsY() + z * e.kappaYPerM() - q.alphaYPerK() * changeK;
        double g = e.gammaXy() + z * e.kappaXyPerM() - q.alphaXyPerK() * changeK;
        double sx = q.q11Pa() * ex + q.q12Pa() * ey + q.q16Pa() * g;
        double sy = q.q12Pa() * ex + q.q22Pa() * ey + q.q26Pa() * g;
        double t = q.q16Pa() * ex + q.q26Pa() * ey + q.q66Pa() * g;
        Turn turn = Turn.by(plies.get(ply).angleDeg());
        double c = turn.cos();
        double s = turn.sin();
        return new PlyStress(
                sx * c * c + sy * s * s + 2 * t * c * s,
                sx * s * s + sy * c * c - 2 * t * c * s,
                (sy - sx) * c * s + t * (c * c - s * s));
    }

    /** Strain energy per area under a load, J/m2; never negative. */
    public double energyJPerM2(SectionLoad load) {
        SectionStrain e = strain(load);
        return (load.nxNPerM() * e.epsX()
                        + load.nyNPerM() * e.epsY()
                        + load.nxyNPerM() * e.gammaXy()
                        + load.mxN() * e.kappaXPerM()
                        + load.myN() * e.kappaYPerM()
                        + load.mxyN() * e.kappaXyPerM())
                / 2;
    }
}
