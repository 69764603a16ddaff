package fayline.solver.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.Arrays;

/**
 * A net as arrays, with every distance between two starts that follows from lags and from pairs of activities that cannot lie
 * side by side: the transitive closure of Floyd [floyd1962], and the step "of two that exclude each other, the one that cannot
 * come second comes first" [brucker1998], by turns until nothing more follows.
 */
final class Compact {
    /** No distance follows. */
    static final int NONE = Integer.MIN_VALUE / 4;

    final int n;
    final int m;
    final int[] duration;
    final int[][] demand;
    final int[] capacity;

    /** The net's own lags: from, to, least. */
    final int[][] lags;

    /** {@code start[j] >= start[i] + distance[i][j]}, or {@link #NONE}. */
    final int[][] distance;

    /** Earliest starts. */
    final int[] head;

    /** From a start to the end of all that must follow. */
    final int[] tail;

    private final boolean possible;

    Compact(Net net) {
        n = net.activities().size();
        m = net.capacities().size();
        duration = net.activities().stream().mapToInt(Activity::duration).toArray();
        demand = net.activities().stream()
                .map(a -> a.demands().stream().mapToInt(d -> d).toArray())
                .toArray(int[][]::new);
        capacity = net.capacities().stream().mapToInt(c -> c).toArray();
        lags = net.lags().stream()
                .map(l -> new int[] {l.from(), l.to(), l.least()})
                .toArray(int[][]::new);
        distance = new int[n][n];
        head = new int[n];
        tail = new int[n];
        own(net);
        possible = demandsFit() && follow();
        ends();
    }

    private void own(Net net) {
        for (int i = 0; i < n; i++) {
            Arrays.fill(distance[i], NONE);
            distance[i][i] = 0;
        }
        for (Lag l : net.lags()) {
            distance[l.from()][l.to()] = Math.max(distance[l.from()][l.to()], l.least());
        }
    }

    private boolean demandsFit() {
        for (int i = 0; i < n; i++) {
            for (int k = 0; k < m; k++) {
                if (duration[i] > 0 && demand[i][k] > capacity[k]) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Whether two activities cannot lie side by side, for want of a resource. */
    private boolean rivals(int i, int j) {
        if (i == j || duration[i] == 0 || duration[j] == 0) {
            return false;
        }
        for (int k = 0; k < m; k++) {
            if (demand[i][k] + demand[j][k] > capacity[k]) {
                return true;
            }
        }
        return false;
    }

    /** Closes the distances; whether no activity must start after itself. */
    private boolean follow() {
        do {
            if (!close()) {
                return false;
            }
        } while (strengthen());
        return true;
    }

    private boolean close() {
        for (int k = 0; k < n; k++) {
            for (int i = 0; i < n; i++) {
                if (distance[i][k] != NONE) {
                    through(distance[i], distance[i][k], distance[k]);
                }
            }
        }
        for (int i = 0; i < n; i++) {
            if (distance[i][i] > 0) {
                return false;
            }
        }
        return true;
    }

    /** Ways over a middle activity. A circle of positive length would grow without end; a cap keeps it whole and positive. */
    private void through(int[] from, int toMiddle, int[] middle) {
        for (int j = 0; j < n; j++) {
            if (middle[j] != NONE && toMiddle + middle[j] > from[j]) {
                from[j] = Math.min(toMiddle + middle[j], -NONE / 2);
            }
        }
    }

    private boolean strengthen() {
        boolean found = false;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                if (distance[i][j] > -duration[j] && distance[i][j] < duration[i] && rivals(i, j)) {
                    distance[i][j] = duration[i];
                    found = true;
                }
            }
        }
        return found;
    }

    private void ends() {
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                if (distance[i][j] != NONE) {
                    head[j] = Math.max(head[j], distance[i][j]);
                    tail[i] = Math.max(tail[i], distance[i][j] + duration[j]);
                }
            }
        }
    }

    /** Whether the lags and demands alone do not rule out every schedule. */
    boolean possible() {
        return possible;
    }

    /** A bound: the longest path, and for each resource all work on it spread evenly. */
    int least() {
        int most = 0;
        for (int i = 0; i < n; i++) {
            most = Math.max(most, head[i] + tail[i]);
        }
        for (int k = 0; k < m; k++) {
            long work = 0;
            for (int i = 0; i < n; i++) {
                work += (long) duration[i] * demand[i][k];
            }
            if (capacity[k] > 0) {
                most = Math.max(most, (int) ((work + capacity[k] - 1) / capacity[k]));
            }
        }
        return most;
    }

    /**
     * A makespan that some shortest schedule does not exceed: in it every stretch of time without a start or an end is bridged
     * by a lag or a duration, so the largest of each activity, added up, covers it.
     */
    int most() {
        long sum = 0;
        for (int i = 0; i < n; i++) {
            long step = duration[i];
            for (int[] l : lags) {
                if (l[0] == i) {
                    step = Math.max(step, l[2]);
                }
            }
            sum += step;
        }
        return (int) Math.min(sum, -NONE / 2);
    }

    int makespan(int[] start) {
        int end = 0;
        for (int i = 0; i < n; i++) {
            end = Math.max(end, start[i] + duration[i]);
        }
        return end;
    }

    /**
     * Whether every lag is kept by starting after an end, so that activities can be placed one by one and none ever has to be
     * taken back.
     */
    boolean placeable() {
        for (int[] l : lags) {
            if (l[2] < duration[l[0]]) {
                return false;
            }
        }
        return rank().length == n;
    }

    /** A place for each activity that comes after those of its predecessors; shorter than n where lags go round in a circle. */
    int[] rank() {
        int[] wait = new int[n];
        for (int[] l : lags) {
            wait[l[1]]++;
        }
        int[] queue = new int[n];
        int in = 0;
        for (int i = 0; i < n; i++) {
            if (wait[i] == 0) {
                queue[in++] = i;
            }
        }
        for (int out = 0; out < in; out++) {
            for (int[] l : lags) {
                if (l[0] == queue[out] && --wait[l[1]] == 0) {
                    queue[in++] = l[1];
                }
            }
        }
        int[] rank = new int[in];
        for (int out = 0; out < in && in == n; out++) {
            rank[queue[out]] = out;
        }
        return rank;
    }
}
