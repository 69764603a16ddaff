package fayline.method.fitup.frame;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * A value for every freedom of every node: motions in mm and rad, or forces in N and moments in N mm. It never changes.
 */
public final class NodalField {
    private static final int WAYS = Freedom.values().length;

    private final double[] values;

    private NodalField(double[] values) {
        this.values = values;
    }

    /** All zero. */
    public static NodalField zero(int nodes) {
        return new NodalField(new double[nodes * WAYS]);
    }

    /** From the values in order: all six of node 0, then of node 1. */
    static NodalField of(int nodes, IntToDoubleFunction value) {
        double[] v = new double[nodes * WAYS];
        Arrays.setAll(v, value);
        return new NodalField(v);
    }

    /** How many nodes. */
    public int nodes() {
        return values.length / WAYS;
    }

    /** The value of one freedom of one node. */
    public double get(NodeFreedom at) {
        return values[at.node() * WAYS + at.freedom().place()];
    }

    /** The value at a place in order. */
    double get(int place) {
        return values[place];
    }

    /** All six values of a node. */
    public NodeMotion at(int node) {
        int k = node * WAYS;
        return new NodeMotion(values[k], values[k + 1], values[k + 2], values[k + 3], values[k + 4], values[k + 5]);
    }

    /** The same with one value put in. */
    public NodalField with(NodeFreedom at, double value) {
        double[] v = values.clone();
        v[at.node() * WAYS + at.freedom().place()] = value;
        return new NodalField(v);
    }

    /** The sum. */
    public NodalField plus(NodalField other) {
        return of(nodes(), k -> values[k] + other.values[k]);
    }

    /** The difference. */
    public NodalField minus(NodalField other) {
        return of(nodes(), k -> values[k] - other.values[k]);
    }

    /** Every value times a number. */
    public NodalField scaled(double factor) {
        return of(nodes(), k -> values[k] * factor);
    }

    /** The sum of products, of motions and forces the work in N mm. */
    public double dot(NodalField other) {
        double sum = 0;
        for (int k = 0; k < values.length; k++) {
            sum += values[k] * other.values[k];
        }
        return sum;
    }

    /** The farthest shift of any node, in mm. */
    public double farthestShiftMm() {
        double most = 0;
        for (int n = 0; n < nodes(); n++) {
            most = Math.max(most, at(n).sizeMm());
        }
        return most;
    }
}
