package fayline.solver.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Who hands a resource on to whom in a schedule: each unit goes from activity to activity in a chain [policella2004]. The chains'
 * order, kept, keeps the resources, while times may still slide.
 */
final class Chains {
    private final Compact net;
    private final int[] at;
    private final boolean[] free;
    private final Set<Long> pairs = new HashSet<>();
    private final List<int[]> all = new ArrayList<>();

    private Chains(Compact net, int[] at, boolean[] free) {
        this.net = net;
        this.at = at;
        this.free = free;
    }

    /**
     * The pairs, first before second, of a schedule.
     *
     * @param free activities that are left out of the chains
     */
    static List<int[]> of(Compact net, int[] at, boolean[] free) {
        Chains chains = new Chains(net, at, free);
        Integer[] order = new Integer[net.n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingInt((Integer i) -> at[i]).thenComparingInt(i -> i));
        for (int k = 0; k < net.m; k++) {
            chains.chain(k, order);
        }
        return chains.all;
    }

    private void chain(int k, Integer[] order) {
        int[] last = new int[net.capacity[k]];
        Arrays.fill(last, -1);
        for (int i : order) {
            if (!free[i] && net.duration[i] > 0 && net.demand[i][k] > 0) {
                hand(i, net.demand[i][k], last);
            }
        }
    }

    /** Units whose last user comes before anyhow first, then the ones freed last, then those not used yet. */
    private void hand(int i, int demand, int[] last) {
        List<Integer> units = new ArrayList<>();
        for (int u = 0; u < last.length; u++) {
            if (last[u] < 0 || at[last[u]] + net.duration[last[u]] <= at[i]) {
                units.add(u);
            }
        }
        units.sort(Comparator.comparingInt((Integer u) -> worth(last[u], i))
                .thenComparingInt(u -> last[u] < 0 ? 0 : -(at[last[u]] + net.duration[last[u]]))
                .thenComparingInt(u -> u));
        for (int u : units.subList(0, demand)) {
            if (last[u] >= 0 && !comesBefore(last[u], i) && pairs.add((long) last[u] * net.n + i)) {
                all.add(new int[] {last[u], i});
            }
            last[u] = i;
        }
    }

    private int worth(int last, int i) {
        if (last < 0) {
            return 2;
        }
        return comesBefore(last, i) || pairs.contains((long) last * net.n + i) ? 0 : 1;
    }

    private boolean comesBefore(int i, int j) {
        return net.distance[i][j] != Compact.NONE && net.distance[i][j] >= net.duration[i];
    }
}
