package fayline.basis.numeric.optimum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The point nearest to a wanted one that holds all rows: starts at the wanted point and takes in one broken row after the other,
 * letting go of those that no longer push (the dual active set method [goldfarb1983] with equal curvature in all directions).
 */
final class Nearest {
    private static final double BROKEN = 1e-12;
    private static final double DEPENDENT = 1e-9;
    private static final double FORGIVEN = 1e-8;
    private static final int MOST_STEPS = 10_000;

    private final double[] target;
    private final LinearRows rows;
    private final List<Held> held = new ArrayList<>();
    private final boolean[] forgiven;
    private double[] u;
    private double[][] q = {};
    private double[][] r = {};

    private Nearest(double[] target, LinearRows rows) {
        this.target = target.clone();
        this.rows = rows;
        u = target.clone();
        forgiven = new boolean[rows.count()];
    }

    private static final class Held {
        final int row;
        final double[] normal;
        final double limit;
        double push;

        Held(LinearRows rows, int row, boolean atHigh) {
            this.row = row;
            double[] a = rows.coefficients(row);
            double size = Small.norm(a) * (atHigh ? -1 : 1);
            for (int j = 0; j < a.length; j++) {
                a[j] /= size;
            }
            normal = a;
            limit = (atHigh ? rows.high(row) : rows.low(row)) / size;
        }
    }

    /** The nearest point, or empty where no point holds the rows. */
    static Optional<double[]> point(double[] target, LinearRows rows) {
        return new Nearest(target, rows).search();
    }

    private Optional<double[]> search() {
        for (int k = 0; k < MOST_STEPS; k++) {
            Optional<Held> next = mostBroken();
            if (next.isEmpty()) {
                return Optional.of(u);
            }
            if (!takeIn(next.get())) {
                return Optional.empty();
            }
        }
        throw new ArithmeticException("no nearest point after " + MOST_STEPS + " steps");
    }

    private Optional<Held> mostBroken() {
        double worst = 0;
        int row = -1;
        boolean high = false;
        for (int i = 0; i < rows.count(); i++) {
            double v = rows.value(i, u);
            double under = rows.low(i) - v;
            double over = v - rows.high(i);
            double most = Math.max(under, over);
            if (most > worst && most > BROKEN * Math.max(1, rows.size(i, u)) && !forgiven[i]) {
                worst = most;
                row = i;
                high = over > under;
            }
        }
        return row < 0 ? Optional.empty() : Optional.of(new Held(rows, row, high));
    }

    private boolean takeIn(Held p) {
        if (!Double.isFinite(p.limit)) {
            return false;
        }
        while (true) {
            double[] along = shares(p.normal);
            double[] z = p.normal.clone();
            for (int j = 0; j < held.size(); j++) {
                z = Small.plus(z, -along[j], held.get(j).normal);
            }
            double free = Small.dot(z, z);
            double full = free > DEPENDENT * DEPENDENT ? (p.limit - Small.dot(p.normal, u)) / free : Double.NaN;
            int out = -1;
            double step = Double.isNaN(full) ? Double.POSITIVE_INFINITY : full;
            for (int j = 0; j < held.size(); j++) {
                if (along[j] > DEPENDENT && held.get(j).push / along[j] < step) {
                    step = held.get(j).push / along[j];
                    out = j;
                }
            }
            if (Double.isInfinite(step)) {
                forgiven[p.row] = p.limit - Small.dot(p.normal, u) < FORGIVEN;
                return forgiven[p.row];
            }
            for (int j = 0; j < held.size(); j++) {
                held.get(j).push -= step * along[j];
            }
            p.push += step;
            if (!Double.isNaN(full)) {
                u = Small.plus(u, step, z);
            }
            if (out < 0) {
                held.add(p);
                factor();
                settle();
                return true;
            }
            held.remove(out);
            factor();
        }
    }

    /** Orthogonal factors of the held normals, each column cleaned twice. */
    private void factor() {
        int k = held.size();
        q = new double[k][];
        r = new double[k][k];
        for (int j = 0; j < k; j++) {
            double[] v = held.get(j).normal.clone();
            for (int pass = 0; pass < 2; pass++) {
                for (int i = 0; i < j; i++) {
                    double s = Small.dot(q[i], v);
                    r[i][j] += s;
                    v = Small.plus(v, -s, q[i]);
                }
            }
            r[j][j] = Small.norm(v);
            for (int i = 0; i < v.length; i++) {
                v[i] /= r[j][j];
            }
            q[j] = v;
        }
    }

    private double[] shares(double[] normal) {
        int k = held.size();
        double[] s = new double[k];
        for (int i = k - 1; i >= 0; i--) {
            double v = Small.dot(q[i], normal);
            for (int j = i + 1; j < k; j++) {
                v -= r[i][j] * s[j];
            }
            s[i] = v / r[i][i];
        }
        return s;
    }

    /** Puts the point exactly where the held rows meet, nearest to the target. */
    private void settle() {
        int k = held.size();
        double[] y = new double[k];
        double[] at = target.clone();
        for (int i = 0; i < k; i++) {
            double v = held.get(i).limit - Small.dot(held.get(i).normal, target);
            for (int j = 0; j < i; j++) {
                v -= r[j][i] * y[j];
            }
            y[i] = v / r[i][i];
            at = Small.plus(at, y[i], q[i]);
        }
        u = at;
    }
}
