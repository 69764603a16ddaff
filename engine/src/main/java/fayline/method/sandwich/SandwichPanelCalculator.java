package fayline.method.sandwich;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.finding.Severity;
import fayline.basis.units.Amount;
import java.util.List;

/**
 * A sandwich panel on edges that may turn, under even pressure: Navier's double series for the deflection and the two turns of
 * the section, with thin faces, D = Q tf d^2 / 2 and S = G d^2 / c ([zenkert1995]; [allen1969], chapter 5). Small deflections.
 */
public final class SandwichPanelCalculator {
    private static final int LAST_TERM = 301;
    /** Share of the whole thickness up to which deflections count as small. */
    private static final double SMALL = 0.5;

    private SandwichPanelCalculator() {}

    /** Answers the question. */
    public static SandwichPanelResult calculate(SandwichPanel p) {
        Stiffness k = Stiffness.of(p);
        double[] sums = new double[7];
        for (int m = 1; m <= LAST_TERM; m += 2) {
            for (int n = 1; n <= LAST_TERM; n += 2) {
                add(sums, p, k, m, n);
            }
        }
        double d = p.apartM();
        double perFace = p.faceM() * d;
        return new SandwichPanelResult(
                k.d11,
                k.s1,
                sums[0],
                sums[1],
                sums[2] / perFace,
                sums[3] / perFace,
                Math.abs(sums[4]) / perFace,
                Math.abs(sums[5]) / d,
                Math.abs(sums[6]) / d,
                findings(p, sums[1]));
    }

    private static void add(double[] sums, SandwichPanel p, Stiffness k, int m, int n) {
        double x = m * Math.PI / p.aM();
        double y = n * Math.PI / p.bM();
        double load = 16 * p.pressurePa() / (Math.PI * Math.PI * m * n);
        // The two turns follow from the deflection w: (D + S) turn = - S grad w, two equations.
        double a11 = k.d11 * x * x + k.d66 * y * y + k.s1;
        double a22 = k.d66 * x * x + k.d22 * y * y + k.s2;
        double a12 = (k.d12 + k.d66) * x * y;
        double det = a11 * a22 - a12 * a12;
        double turn1 = (-k.s1 * x * a22 + k.s2 * y * a12) / det;
        double turn2 = (-k.s2 * y * a11 + k.s1 * x * a12) / det;
        double w = load / (k.s1 * x * (x + turn1) + k.s2 * y * (y + turn2));
        double bent =
                load / (k.d11 * Math.pow(x, 4) + 2 * (k.d12 + 2 * k.d66) * x * x * y * y + k.d22 * Math.pow(y, 4));
        double sign = (m + n) / 2 % 2 == 1 ? 1 : -1;
        sums[0] += sign * bent;
        sums[1] += sign * w;
        sums[2] -= sign * w * (k.d11 * x * turn1 + k.d12 * y * turn2);
        sums[3] -= sign * w * (k.d12 * x * turn1 + k.d22 * y * turn2);
        sums[4] += w * k.d66 * (y * turn1 + x * turn2) * Math.cos(m * Math.PI / 4) * Math.cos(n * Math.PI / 4);
        sums[5] += k.s1 * w * (x + turn1) * ((n - 1) / 2 % 2 == 0 ? 1 : -1);
        sums[6] += k.s2 * w * (y + turn2) * ((m - 1) / 2 % 2 == 0 ? 1 : -1);
    }

    private static List<Finding> findings(SandwichPanel p, double w) {
        double thick = p.coreM() + 2 * p.faceM();
        if (Math.abs(w) <= SMALL * thick) {
            return List.of();
        }
        return List.of(new Finding(
                Severity.STOP,
                "panel",
                Phrase.of(
                        "The deflection of %s is more than half the panel's thickness: it then carries as a membrane too, and"
                                + " the figures must not be used.",
                        Amount.mm(Math.abs(w) * 1000, 1)),
                "roark7"));
    }

    /** Bending stiffnesses and shear stiffnesses per width. */
    private record Stiffness(double d11, double d12, double d22, double d66, double s1, double s2) {
        static Stiffness of(SandwichPanel p) {
            double d = p.apartM();
            double faces = p.faceM() * d * d / 2;
            double q = 1 - p.facePoisson() * p.facePoisson() * p.face2Pa() / p.face1Pa();
            double shear = d * d / p.coreM();
            return new Stiffness(
                    p.face1Pa() * faces / q,
                    p.facePoisson() * p.face2Pa() * faces / q,
                    p.face2Pa() * faces / q,
                    p.faceShearPa() * faces,
                    p.core1Pa() * shear,
                    p.core2Pa() * shear);
        }
    }
}
