package fayline.basis.numeric;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The triangular factors of a symmetric matrix without negative eigenvalues, L · D · Lᵀ, with one step of refinement on
 * solving. Where the matrix lets something move without resistance, it says what moves, and holds that unknown at zero. A small
 * pivot alone does not tell, since it carries the rounding of a long chain; the motion that belongs to it does: its energy is
 * below 1e-15 of what its unknowns would take one by one.
 */
public final class ProfileFactor {
    private static final double SUSPECT_PIVOT = 1e-6;
    private static final double NO_RESISTANCE = 1e-15;

    private final ProfileMatrix matrix;
    private final BitSet held;
    private final double[] lower;
    private final double[] pivots;
    private final List<double[]> free = new ArrayList<>();

    ProfileFactor(ProfileMatrix matrix, BitSet held) {
        this.matrix = matrix;
        this.held = (BitSet) held.clone();
        this.lower = matrix.copyOfValues();
        this.pivots = new double[matrix.size()];
        for (int i = 0; i < pivots.length; i++) {
            if (this.held.get(i)) {
                clear(i);
            } else {
                eliminate(i);
            }
        }
    }

    /** Whether nothing moves without resistance. */
    public boolean isRegular() {
        return free.isEmpty();
    }

    /** What moves without resistance: one column for each independent motion, the last unknown of it at one. */
    public List<double[]> freeMotions() {
        return free.stream().map(double[]::clone).toList();
    }

    /**
     * Solves for one right side.
     *
     * @param right the right side; its values at held unknowns do not count
     * @return the solution, zero at held unknowns
     */
    public double[] solve(double[] right) {
        if (right.length != pivots.length) {
            throw new IllegalArgumentException("a column of " + pivots.length + " is needed, not of " + right.length);
        }
        double[] x = once(right);
        double[] rest = matrix.times(x);
        for (int i = 0; i < rest.length; i++) {
            rest[i] = right[i] - rest[i];
        }
        double[] more = once(rest);
        for (int i = 0; i < x.length; i++) {
            x[i] += more[i];
        }
        return x;
    }

    private double[] once(double[] right) {
        double[] x = right.clone();
        for (int i = 0; i < x.length; i++) {
            int row = matrix.start(i) - matrix.first(i);
            for (int j = matrix.first(i); j < i; j++) {
                x[i] -= lower[row + j] * x[j];
            }
            if (held.get(i)) {
                x[i] = 0;
            }
        }
        for (int i = 0; i < x.length; i++) {
            x[i] = held.get(i) ? 0 : x[i] / pivots[i];
        }
        back(x, x.length - 1);
        return x;
    }

    /** Solves Lᵀ x = x in place, from an unknown downwards. */
    private void back(double[] x, int from) {
        for (int i = from; i >= 0; i--) {
            int row = matrix.start(i) - matrix.first(i);
            for (int j = matrix.first(i); j < i; j++) {
                x[j] -= lower[row + j] * x[i];
            }
        }
    }

    private void clear(int i) {
        int row = matrix.start(i) - matrix.first(i);
        for (int j = matrix.first(i); j <= i; j++) {
            lower[row + j] = 0;
        }
        pivots[i] = 1;
    }

    private void eliminate(int i) {
        int row = matrix.start(i) - matrix.first(i);
        int firstI = matrix.first(i);
        for (int j = firstI; j < i; j++) {
            int other = matrix.start(j) - matrix.first(j);
            double sum = held.get(j) ? 0 : lower[row + j];
            for (int k = Math.max(firstI, matrix.first(j)); k < j && !held.get(j); k++) {
                sum -= lower[row + k] * lower[other + k];
            }
            lower[row + j] = sum;
        }
        double diagonal = lower[row + i];
        double pivot = diagonal;
        for (int j = firstI; j < i; j++) {
            double scaled = lower[row + j] / pivots[j];
            pivot -= scaled * lower[row + j];
            lower[row + j] = scaled;
        }
        pivots[i] = pivot;
        if (!(pivot > SUSPECT_PIVOT * diagonal)) {
            double[] motion = motion(i);
            if (!(resistance(motion) > NO_RESISTANCE)) {
                free.add(motion);
                held.set(i);
                clear(i);
            }
        }
    }

    private double resistance(double[] motion) {
        double[] force = matrix.times(motion);
        double energy = 0;
        double alone = 0;
        for (int k = 0; k < motion.length; k++) {
            energy += motion[k] * force[k];
            alone += motion[k] * motion[k] * matrix.get(k, k);
        }
        return energy / alone;
    }

    private double[] motion(int last) {
        double[] x = new double[pivots.length];
        x[last] = 1;
        back(x, last);
        return x;
    }
}
