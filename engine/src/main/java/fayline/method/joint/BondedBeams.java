package fayline.method.joint;

import fayline.basis.numeric.DenseMatrix;
import fayline.basis.numeric.ProfileFactor;
import fayline.basis.numeric.ProfileMatrix;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;

/**
 * Two beams that shear on a layer of adhesive that shears and peels, by finite elements of two nodes. Each station holds
 * displacement u, deflection w and turn of each beam. Energy per width: (E t (u' - alpha dT)^2 + D turn'^2 + k G t (w' -
 * turn)^2 + N w'^2) / 2 in a beam, the last for the pull in it (load-dependent bending); (ks slip^2 + kp (w1 - w2)^2) / 2 in the
 * adhesive, slip = u1 + t1/2 turn1 - u2 + t2/2 turn2 + t w'. The shear stress of a beam is a parabola over its thickness, the
 * bond's at one face and nothing at the other; its energy (1.2 Q^2/t - 0.2 Q tau + 2/15 t tau^2) / 2G couples the beam's shear
 * with the bond's. Beside a beam that is held flat the bond gains t / 3 G of compliance. Across, the stress falls from the bond's to
 * nothing as 3 s^2 - 2 s^3, which adds 13/35 t / E to the compliance in peel.
 */
final class BondedBeams {
    private static final double SHEAR = 5.0 / 6;
    private static final double NEXT_BENT = 2.0 / 15;
    private static final double NEXT_FLAT = 1.0 / 3;
    private static final double CROSS = 0.1;
    private static final double NEXT_PEEL = 13.0 / 35;
    private static final int ROUNDS = 4;
    private static final int PER_STATION = 6;

    /** Stations over the overlap. */
    private final double[] x;

    private final Beam[] beams;
    private final double bondM;
    /** From shear strain of beam 1, of beam 2 and slip to shear force of each and stress of the bond. */
    private final double[][] shearStiff;

    private final double peelStiff;
    private final Overhang[] overhangs;

    /** A beam: what it is, and whether it is held flat. */
    record Beam(Adherend of, boolean flat, boolean wide) {
        double modulus() {
            return wide ? of.modulusPa() / (1 - of.poisson() * of.poisson()) : of.modulusPa();
        }

        double stretch() {
            return modulus() * of.thicknessM();
        }

        double bending() {
            return modulus() * Math.pow(of.thicknessM(), 3) / 12;
        }

        double shear() {
            return SHEAR * of.shearPa() * of.thicknessM();
        }

        double cross() {
            return flat ? 0 : -CROSS / of.shearPa();
        }

        double nextPeel() {
            return flat ? 0 : NEXT_PEEL * of.thicknessM() / of.modulusPa();
        }

        double next() {
            return (flat ? NEXT_FLAT : NEXT_BENT) * of.thicknessM() / of.shearPa();
        }
    }

    /** A beam that goes on beyond the overlap, to a support that it can turn on. */
    record Overhang(int beam, boolean left, double lengthM, int elements) {}

    BondedBeams(Beam one, Beam two, Adhesive bond, double overlapM, int elements, List<Overhang> overhangs) {
        this.beams = new Beam[] {one, two};
        this.bondM = bond.thicknessM();
        this.shearStiff = shearStiffness(one, two, bond);
        this.peelStiff = 1 / (bond.thicknessM() / bond.modulusPa() + one.nextPeel() + two.nextPeel());
        this.overhangs = overhangs.toArray(new Overhang[0]);
        this.x = new double[elements + 1];
        for (int i = 0; i <= elements; i++) {
            x[i] = overlapM / 2 * (1 - Math.cos(Math.PI * i / elements));
        }
    }

    private static double[][] shearStiffness(Beam one, Beam two, Adhesive bond) {
        double slip = bond.thicknessM() / bond.shearPa() + one.next() + two.next();
        return DenseMatrix.of(new double[][] {
                    {1 / one.shear(), 0, one.cross()},
                    {0, 1 / two.shear(), two.cross()},
                    {one.cross(), two.cross(), slip}
                })
                .inverse()
                .orElseThrow(() -> new ArithmeticException("the shear of two beams and their bond is singular"))
                .toRows();
    }

    /** Solves for a pull per width at the overhangs' ends and a change of temperature. */
    BeamAnswer solve(double loadNPerM, double heatK) {
        Layout layout = new Layout();
        double[][] pull = new double[2][x.length - 1];
        double[] u = new double[layout.size];
        for (int round = 0; round < ROUNDS; round++) {
            ProfileMatrix.Builder k = ProfileMatrix.builder(layout.size);
            double[] right = new double[layout.size];
            overlap(k, right, pull, heatK);
            for (int o = 0; o < overhangs.length; o++) {
                beside(k, right, layout, o, loadNPerM, heatK);
            }
            for (int o = 0; o < overhangs.length; o++) {
                right[layout.end(o)] += overhangs[o].left() ? -loadNPerM : loadNPerM;
            }
            ProfileFactor f = k.build().factor(layout.held);
            u = f.solve(right);
            for (int b = 0; b < 2; b++) {
                pull[b] = pulls(u, b, heatK);
            }
        }
        return answer(u, pull, layout, loadNPerM);
    }

    /** Which unknown stands where, and which are held. */
    private final class Layout {
        private final int[] first = new int[overhangs.length];
        private final int size;
        private final BitSet held = new BitSet();

        Layout() {
            int n = x.length * PER_STATION;
            for (int o = 0; o < overhangs.length; o++) {
                first[o] = n;
                n += overhangs[o].elements() * 3;
            }
            size = n;
            hold();
        }

        /** The unknown u at the far end of an overhang. */
        int end(int o) {
            return first[o] + (overhangs[o].elements() - 1) * 3;
        }

        /** The unknown u of a node of an overhang, 0 at the overlap. */
        int node(int o, int i) {
            return i == 0 ? at(overhangs[o].left() ? 0 : x.length - 1, overhangs[o].beam()) : first[o] + (i - 1) * 3;
        }

        private void hold() {
            for (int i = 0; i < x.length; i++) {
                for (int b = 0; b < 2; b++) {
                    if (beams[b].flat()) {
                        held.set(at(i, b) + 1);
                        held.set(at(i, b) + 2);
                    }
                }
            }
            for (int o = 0; o < overhangs.length; o++) {
                if (beams[overhangs[o].beam()].flat()) {
                    for (int i = 1; i <= overhangs[o].elements(); i++) {
                        held.set(node(o, i) + 1);
                        held.set(node(o, i) + 2);
                    }
                } else {
                    held.set(end(o) + 1);
                }
            }
            int middle = x.length / 2;
            held.set(at(middle, 1));
            boolean free = overhangs.length == 0 && !beams[0].flat() && !beams[1].flat();
            if (free) {
                held.set(at(middle, 1) + 1);
                held.set(at(middle, 1) + 2);
            }
        }
    }

    private static int at(int station, int beam) {
        return station * PER_STATION + beam * 3;
    }

    private void overlap(ProfileMatrix.Builder k, double[] right, double[][] pull, double heatK) {
        for (int i = 0; i < x.length - 1; i++) {
            double h = x[i + 1] - x[i];
            for (int b = 0; b < 2; b++) {
                stretchAndBend(k, right, beams[b], at(i, b), at(i + 1, b), h, pull[b][i], heatK);
            }
            shear(k, i * PER_STATION, h);
            double[] open = new double[2 * PER_STATION];
            for (int side = 0; side < 2; side++) {
                open[side * PER_STATION + 1] = 0.5;
                open[side * PER_STATION + 4] = -0.5;
            }
            product(k, i * PER_STATION, open, open, peelStiff * h);
        }
    }

    /** Shear of both beams and of the bond between them, which goes together. */
    private void shear(ProfileMatrix.Builder k, int first, double h) {
        double[][] rows = {sheared(0, h), sheared(1, h), slip(h)};
        for (int r = 0; r < rows.length; r++) {
            for (int c = 0; c < rows.length; c++) {
                product(k, first, rows[r], rows[c], shearStiff[r][c] * h);
            }
        }
    }

    /** How the shear strain of a beam in an element follows from its unknowns: nothing where it is held flat. */
    private double[] sheared(int b, double h) {
        double[] s = new double[2 * PER_STATION];
        if (!beams[b].flat()) {
            int at = b * 3;
            s[at + 1] = -1 / h;
            s[at + 2] = -0.5;
            s[PER_STATION + at + 1] = 1 / h;
            s[PER_STATION + at + 2] = -0.5;
        }
        return s;
    }

    /** How the slip in the middle of an element follows from its unknowns. */
    private double[] slip(double h) {
        double[] s = new double[2 * PER_STATION];
        for (int side = 0; side < 2; side++) {
            int at = side * PER_STATION;
            double slope = (side == 0 ? -1 : 1) * bondM / (2 * h);
            s[at] = 0.5;
            s[at + 1] = slope;
            s[at + 2] = beams[0].of().thicknessM() / 4;
            s[at + 3] = -0.5;
            s[at + 4] = slope;
            s[at + 5] = beams[1].of().thicknessM() / 4;
        }
        return s;
    }

    /** Adds the lower triangle of a column times a row; the upper one comes with the exchanged pair. */
    private static void product(ProfileMatrix.Builder k, int first, double[] column, double[] row, double factor) {
        for (int i = 0; i < column.length; i++) {
            for (int j = 0; j <= i; j++) {
                if (column[i] != 0 && row[j] != 0 && factor != 0) {
                    k.add(first + i, first + j, factor * column[i] * row[j]);
                }
            }
        }
    }

    private static void beam(
            ProfileMatrix.Builder k, double[] right, Beam b, int from, int to, double h, double pull, double heatK) {
        stretchAndBend(k, right, b, from, to, h, pull, heatK);
        if (b.flat()) {
            return;
        }
        int[] at = {from + 1, from + 2, to + 1, to + 2};
        double[] row = {-1 / h, -0.5, 1 / h, -0.5};
        for (int i = 0; i < row.length; i++) {
            for (int j = 0; j < row.length; j++) {
                if (at[j] <= at[i]) {
                    k.add(at[i], at[j], b.shear() * h * row[i] * row[j]);
                }
            }
        }
    }

    private static void stretchAndBend(
            ProfileMatrix.Builder k, double[] right, Beam b, int from, int to, double h, double pull, double heatK) {
        double stretch = b.stretch() / h;
        double heat = b.stretch() * b.of().alphaPerK() * heatK;
        right[from] -= heat;
        right[to] += heat;
        pair(k, from, to, stretch);
        if (b.flat()) {
            return;
        }
        pair(k, from + 1, to + 1, pull / h);
        pair(k, from + 2, to + 2, b.bending() / h);
    }

    private static void pair(ProfileMatrix.Builder k, int from, int to, double stiff) {
        k.add(from, from, stiff);
        k.add(to, to, stiff);
        k.add(from, to, -stiff);
    }

    private void beside(ProfileMatrix.Builder k, double[] right, Layout layout, int o, double loadNPerM, double heatK) {
        Overhang h = overhangs[o];
        double each = h.lengthM() / h.elements();
        for (int i = 0; i < h.elements(); i++) {
            int near = layout.node(o, i);
            int far = layout.node(o, i + 1);
            beam(k, right, beams[h.beam()], h.left() ? far : near, h.left() ? near : far, each, loadNPerM, heatK);
        }
    }

    private double[] pulls(double[] u, int b, double heatK) {
        double[] n = new double[x.length - 1];
        for (int i = 0; i < n.length; i++) {
            n[i] = beams[b].stretch()
                    * ((u[at(i + 1, b)] - u[at(i, b)]) / (x[i + 1] - x[i])
                            - beams[b].of().alphaPerK() * heatK);
        }
        return n;
    }

    private BeamAnswer answer(double[] u, double[][] pull, Layout layout, double load) {
        int n = x.length - 1;
        double[] shear = new double[n];
        double[] peel = new double[n];
        double[] middle = new double[n];
        for (int i = 0; i < n; i++) {
            double h = x[i + 1] - x[i];
            middle[i] = (x[i] + x[i + 1]) / 2;
            double[][] rows = {sheared(0, h), sheared(1, h), slip(h)};
            for (int r = 0; r < rows.length; r++) {
                for (int j = 0; j < rows[r].length; j++) {
                    shear[i] -= shearStiff[2][r] * rows[r][j] * u[i * PER_STATION + j];
                }
            }
            for (int side = 0; side < 2; side++) {
                int at = (i + side) * PER_STATION;
                peel[i] += peelStiff * (u[at + 1] - u[at + 4]) / 2;
            }
        }
        List<List<Double>> moments = new ArrayList<>();
        for (int b = 0; b < 2; b++) {
            double[] m = new double[n];
            for (int i = 0; i < n; i++) {
                m[i] = beams[b].bending() * (u[at(i + 1, b) + 2] - u[at(i, b) + 2]) / (x[i + 1] - x[i]);
            }
            moments.add(list(m));
        }
        return new BeamAnswer(
                list(middle),
                list(shear),
                list(peel),
                List.of(list(pull[0]), list(pull[1])),
                moments,
                endMoment(u, layout),
                List.of(end(u, 0, 0), end(u, 1, 0), end(u, 0, n), end(u, 1, n)),
                bow(u),
                load);
    }

    private static double end(double[] u, int b, int station) {
        return u[at(station, b)];
    }

    /** How far the middle of beam 2 lies from the line through its ends. */
    private double bow(double[] u) {
        int last = x.length - 1;
        return u[at(last / 2, 1) + 1] - (u[at(0, 1) + 1] + u[at(last, 1) + 1]) / 2;
    }

    /** The moment of an overhang where the overlap begins, drawn on from its first two elements. */
    private double endMoment(double[] u, Layout layout) {
        double most = 0;
        for (int o = 0; o < overhangs.length; o++) {
            Overhang h = overhangs[o];
            double d = beams[h.beam()].bending() / (h.lengthM() / h.elements());
            double near = d * (u[layout.node(o, 1) + 2] - u[layout.node(o, 0) + 2]);
            double next = d * (u[layout.node(o, 2) + 2] - u[layout.node(o, 1) + 2]);
            most = Math.max(most, Math.abs(1.5 * near - 0.5 * next));
        }
        return most;
    }

    private static List<Double> list(double[] a) {
        return Arrays.stream(a).boxed().toList();
    }
}
