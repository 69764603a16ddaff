package fayline.solver.net;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import java.util.function.ToLongFunction;

/**
 * A net with a horizon as a model of CP-SAT: starts within head and tail, every distance that does not follow from two others,
 * one cumulative per resource.
 */
final class NetModel {
    private final Compact net;
    private final CpModel model = new CpModel();
    private final IntVar[] starts;
    private final IntervalVar[] intervals;

    /** A model of all schedules with a makespan of at most so much; the horizon leaves room for every activity. */
    NetModel(Compact net, int horizon) {
        this.net = net;
        starts = new IntVar[net.n];
        intervals = new IntervalVar[net.n];
        for (int i = 0; i < net.n; i++) {
            starts[i] = model.newIntVar(net.head[i], (long) horizon - net.tail[i], "");
            intervals[i] = model.newFixedSizeIntervalVar(starts[i], net.duration[i], "");
        }
        for (int i = 0; i < net.n; i++) {
            for (int j = 0; j < net.n; j++) {
                if (i != j && net.distance[i][j] != Compact.NONE && !follows(i, j)) {
                    apart(i, j, net.distance[i][j]);
                }
            }
        }
        for (int k = 0; k < net.m; k++) {
            resource(k);
        }
    }

    private void resource(int k) {
        CumulativeConstraint resource = model.addCumulative(net.capacity[k]);
        for (int i = 0; i < net.n; i++) {
            if (net.demand[i][k] > 0 && net.duration[i] > 0) {
                resource.addDemand(intervals[i], net.demand[i][k]);
            }
        }
    }

    /** Whether the distance follows from two others, none of which could in turn lean on this one. */
    private boolean follows(int i, int j) {
        for (int k = 0; k < net.n; k++) {
            boolean over = k != i
                    && k != j
                    && net.distance[i][k] != Compact.NONE
                    && net.distance[k][j] != Compact.NONE
                    && net.distance[i][k] + net.distance[k][j] >= net.distance[i][j];
            if (over && !together(i, k) && !together(k, j)) {
                return true;
            }
        }
        return false;
    }

    private boolean together(int i, int j) {
        return net.distance[j][i] != Compact.NONE && net.distance[i][j] + net.distance[j][i] == 0;
    }

    /** One activity starts so long after another. */
    void apart(int from, int to, int least) {
        model.addGreaterOrEqual(starts[to], LinearExpr.affine(starts[from], 1, least));
    }

    /** The makespan is to be least. */
    void shorten(int least, int horizon) {
        IntVar end = model.newIntVar(least, horizon, "");
        for (int i = 0; i < net.n; i++) {
            if (isLast(i)) {
                model.addGreaterOrEqual(end, LinearExpr.affine(starts[i], 1, net.duration[i]));
            }
        }
        model.minimize(end);
    }

    /** Whether no other activity is sure to end as late. */
    private boolean isLast(int i) {
        for (int j = 0; j < net.n; j++) {
            boolean later = i != j
                    && net.distance[i][j] != Compact.NONE
                    && net.distance[i][j] + net.duration[j] >= net.duration[i];
            boolean mutual = later
                    && net.distance[j][i] != Compact.NONE
                    && net.distance[j][i] + net.duration[i] >= net.duration[j];
            if (later && (!mutual || j < i)) {
                return false;
            }
        }
        return true;
    }

    /** A schedule to start from. */
    void hint(int[] at) {
        for (int i = 0; i < net.n; i++) {
            model.addHint(starts[i], at[i]);
        }
    }

    CpModel model() {
        return model;
    }

    int[] starts(ToLongFunction<LinearArgument> values) {
        int[] at = new int[net.n];
        for (int i = 0; i < net.n; i++) {
            at[i] = (int) values.applyAsLong(starts[i]);
        }
        return at;
    }
}
