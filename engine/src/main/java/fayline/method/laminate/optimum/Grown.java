package fayline.method.laminate.optimum;

import fayline.basis.numeric.SymmetricInverse;
import fayline.method.laminate.TurnedStiffness;

/**
 * Stiffness of a symmetric stack as it grows from the middle outwards, and what it can at most become. A stiffness such as
 * Ex h = 1/a11 is the least energy of all strains with eps_x = 1; any one such strain bounds it from above, also after plies
 * are added, whose energy under that strain is known. The strain taken is the one that is least now.
 */
final class Grown {
    private static final int N = 3;

    private final double[][] stretch;
    private final double[][] bend;
    private final double[] half;
    private final double[][] choices;
    private final double[] thickness;
    private final double thickest;
    private final double[] inverse = new double[N * N];
    private final double[] strain = new double[N];

    Grown(TurnedStiffness[] choices, double[] thicknessM, int deepest) {
        this.choices = new double[choices.length][];
        this.thickness = thicknessM.clone();
        double most = 0;
        for (int c = 0; c < choices.length; c++) {
            TurnedStiffness q = choices[c];
            this.choices[c] = new double[] {
                q.q11Pa(), q.q12Pa(), q.q16Pa(), q.q12Pa(), q.q22Pa(), q.q26Pa(), q.q16Pa(), q.q26Pa(), q.q66Pa()
            };
            most = Math.max(most, thicknessM[c]);
        }
        thickest = most;
        stretch = new double[deepest + 1][N * N];
        bend = new double[deepest + 1][N * N];
        half = new double[deepest + 1];
    }

    /** Begins with nothing, or with one ply in the middle. */
    void begin(int middle) {
        double t = middle < 0 ? 0 : thickness[middle];
        half[0] = t / 2;
        for (int i = 0; i < N * N; i++) {
            double q = middle < 0 ? 0 : choices[middle][i];
            stretch[0][i] = q * t;
            bend[0][i] = q * t * t * t / 12;
        }
    }

    /** Puts a ply on both sides of what there is at a depth. */
    void add(int depth, int choice) {
        double z = half[depth];
        double out = z + thickness[choice];
        half[depth + 1] = out;
        double one = 2 * thickness[choice];
        double three = 2 * (out * out * out - z * z * z) / 3;
        double[] q = choices[choice];
        for (int i = 0; i < N * N; i++) {
            stretch[depth + 1][i] = stretch[depth][i] + q[i] * one;
            bend[depth + 1][i] = bend[depth][i] + q[i] * three;
        }
    }

    /** The most that a stiffness in plane can be after so many more plies on each side; with none, what it is. */
    double mostStretch(int depth, int term, int more) {
        double now = leastStrain(stretch[depth], term);
        double best = 0;
        for (int c = 0; c < choices.length && more > 0; c++) {
            best = Math.max(best, 2 * thickness[c] * energy(choices[c]));
        }
        return now + more * best;
    }

    /** The same in bending. */
    double mostBend(int depth, int term, int more) {
        double now = leastStrain(bend[depth], term);
        double best = 0;
        for (int c = 0; c < choices.length && more > 0; c++) {
            best = Math.max(best, energy(choices[c]));
        }
        double z = half[depth];
        double out = z + more * thickest;
        return now + best * 2 * (out * out * out - z * z * z) / 3;
    }

    /** Finds the strain of least energy whose term is 1, and its energy. */
    private double leastStrain(double[] m, int term) {
        if (!SymmetricInverse.of(m, N, inverse)) {
            for (int i = 0; i < N; i++) {
                strain[i] = i == term ? 1 : 0;
            }
            return energy(m);
        }
        double own = inverse[term * N + term];
        for (int i = 0; i < N; i++) {
            strain[i] = inverse[i * N + term] / own;
        }
        return 1 / own;
    }

    private double energy(double[] m) {
        double e = 0;
        for (int i = 0; i < N; i++) {
            for (int j = 0; j < N; j++) {
                e += strain[i] * m[i * N + j] * strain[j];
            }
        }
        return e;
    }
}
