package fayline.solver.net;

import java.util.Arrays;

/**
 * Places activities one after the other, each as early as its placed predecessors and the resources let it: serial schedule
 * generation [kolisch1996]. Used on a net for schedules to the left and on its mirror for schedules to the right.
 */
final class Placing {
    private final int m;
    private final int[] duration;
    private final int[] capacity;

    /** For each activity the resources it needs and how much may be in use beside it, in pairs. */
    private final int[][] needs;

    /** For each activity its predecessors and lags, in pairs. */
    private final int[][] before;

    private int[] used;

    Placing(Compact net, int[][] before) {
        m = net.m;
        duration = net.duration;
        capacity = net.capacity;
        this.before = before;
        needs = new int[net.n][];
        for (int i = 0; i < net.n; i++) {
            int[] pairs = new int[2 * m];
            int c = 0;
            for (int k = 0; k < m && duration[i] > 0; k++) {
                if (net.demand[i][k] > 0) {
                    pairs[c++] = k;
                    pairs[c++] = net.capacity[k] - net.demand[i][k];
                }
            }
            needs[i] = Arrays.copyOf(pairs, c);
        }
        used = new int[m];
    }

    /** Writes the starts by an order in which predecessors come first; returns the makespan. */
    int place(int[] order, int[] start) {
        Arrays.fill(used, 0);
        int end = 0;
        for (int i : order) {
            int at = 0;
            int[] b = before[i];
            for (int x = 0; x < b.length; x += 2) {
                at = Math.max(at, start[b[x]] + b[x + 1]);
            }
            at = fit(i, at);
            take(i, at);
            start[i] = at;
            end = Math.max(end, at + duration[i]);
        }
        return end;
    }

    private int fit(int i, int from) {
        if (needs[i].length == 0) {
            return from;
        }
        int at = from;
        int t = from;
        room(at + duration[i]);
        while (t < at + duration[i]) {
            if (!free(i, t++)) {
                at = t;
                room(at + duration[i]);
            }
        }
        return at;
    }

    private boolean free(int i, int t) {
        int[] need = needs[i];
        for (int x = 0; x < need.length; x += 2) {
            if (used[t * m + need[x]] > need[x + 1]) {
                return false;
            }
        }
        return true;
    }

    private void room(int until) {
        if (until * m > used.length) {
            used = Arrays.copyOf(used, until * m * 2);
        }
    }

    private void take(int i, int at) {
        int[] need = needs[i];
        for (int x = 0; x < need.length; x += 2) {
            int demand = capacity[need[x]] - need[x + 1];
            for (int t = at; t < at + duration[i]; t++) {
                used[t * m + need[x]] += demand;
            }
        }
    }
}
