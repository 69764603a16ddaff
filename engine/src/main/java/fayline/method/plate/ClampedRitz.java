package fayline.method.plate;

import fayline.basis.numeric.ProfileFactor;
import fayline.basis.numeric.ProfileMatrix;
import java.util.BitSet;

/**
 * A rectangular plate clamped all round, by the least energy over products of polynomials that keep the edges still and level
 * (Ritz's method, [timoshenko1959] art. 44). The polynomials are twice integrated Legendre polynomials: their second derivatives
 * are orthogonal, so that many terms can be taken without loss.
 */
final class ClampedRitz {
    /** Even polynomials in each direction. */
    private static final int TERMS = 14;

    private final PlateStiffness d;
    private final double halfA;
    private final double halfB;
    private final ProfileFactor stiffness;

    ClampedRitz(PlateStiffness d, double aM, double bM) {
        this.d = d;
        this.halfA = aM / 2;
        this.halfB = bM / 2;
        this.stiffness = stiffness().factor(new BitSet());
    }

    BentPlate underPressure(double pressurePa) {
        double[] load = new double[TERMS * TERMS];
        double only = legendre(2)[0] * 2;
        load[0] = pressurePa * only * only * halfA * halfB;
        return bent(load);
    }

    BentPlate underCentralLoad(double forceN) {
        double[] load = new double[TERMS * TERMS];
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                load[i * TERMS + j] = forceN * at(i, 0, 0) * at(j, 0, 0);
            }
        }
        return bent(load);
    }

    private BentPlate bent(double[] load) {
        double[] c = stiffness.solve(load);
        double k1 = -sum(c, 2, 0, 0, 0) / (halfA * halfA);
        double k2 = -sum(c, 0, 2, 0, 0) / (halfB * halfB);
        double edge1 = -sum(c, 2, 0, 1, 0) / (halfA * halfA);
        double edge2 = -sum(c, 0, 2, 0, 1) / (halfB * halfB);
        return new BentPlate(
                sum(c, 0, 0, 0, 0),
                d.d11Nm() * k1 + d.d12Nm() * k2,
                d.d12Nm() * k1 + d.d22Nm() * k2,
                d.d11Nm() * edge1,
                d.d22Nm() * edge2);
    }

    private static double sum(double[] c, int order1, int order2, double x, double y) {
        double sum = 0;
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                sum += c[i * TERMS + j] * at(i, order1, x) * at(j, order2, y);
            }
        }
        return sum;
    }

    private ProfileMatrix stiffness() {
        ProfileMatrix.Builder k = ProfileMatrix.builder(TERMS * TERMS);
        double[][] still = products(0, 0);
        double[][] bent = products(2, 2);
        double[][] mixed = products(0, 2);
        double f1 = d.d11Nm() * halfB / Math.pow(halfA, 3);
        double f2 = d.d22Nm() * halfA / Math.pow(halfB, 3);
        double f12 = d.mixedNm() / (halfA * halfB);
        for (int i = 0; i < TERMS; i++) {
            for (int j = 0; j < TERMS; j++) {
                for (int p = 0; p <= i; p++) {
                    for (int q = 0; q < TERMS && p * TERMS + q <= i * TERMS + j; q++) {
                        k.add(
                                i * TERMS + j,
                                p * TERMS + q,
                                f1 * bent[i][p] * still[j][q]
                                        + f2 * still[i][p] * bent[j][q]
                                        + f12 * (mixed[i][p] * mixed[q][j] + mixed[p][i] * mixed[j][q]));
                    }
                }
            }
        }
        return k.build();
    }

    /** Integrals from -1 to 1 of one polynomial's derivative times another's. */
    private static double[][] products(int orderLeft, int orderRight) {
        double[][] all = new double[TERMS][TERMS];
        for (int i = 0; i < TERMS; i++) {
            double[] left = coefficients(i, orderLeft);
            for (int j = 0; j < TERMS; j++) {
                double[] right = coefficients(j, orderRight);
                for (int n = 0; n < Math.min(left.length, right.length); n++) {
                    all[i][j] += left[n] * right[n] * 2 / (2.0 * n + 1);
                }
            }
        }
        return all;
    }

    private static double[] coefficients(int term, int order) {
        int n = 2 * term + 2;
        if (order == 0) {
            return legendre(n);
        }
        double[] c = new double[n + 1];
        c[n] = 1;
        return c;
    }

    /** The n-th Legendre polynomial integrated twice from -1, as a sum of Legendre polynomials. */
    private static double[] legendre(int n) {
        double[] c = new double[n + 3];
        c[n + 2] = 1.0 / ((2.0 * n + 1) * (2 * n + 3));
        c[n] = -1.0 / ((2.0 * n + 1) * (2 * n + 3)) - 1.0 / ((2.0 * n + 1) * (2 * n - 1));
        c[n - 2] = 1.0 / ((2.0 * n + 1) * (2 * n - 1));
        return c;
    }

    private static double at(int term, int order, double x) {
        double[] c = coefficients(term, order);
        double before = 1;
        double now = x;
        double sum = c[0];
        for (int n = 1; n < c.length; n++) {
            sum += c[n] * now;
            double next = ((2 * n + 1) * x * now - n * before) / (n + 1);
            before = now;
            now = next;
        }
        return sum;
    }
}
