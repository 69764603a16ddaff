package fayline.solver.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The shortest makespan of a tiny net without maximum lags by placing its activities in every order, each as early as it goes. Some
 * order gives a shortest schedule [kolisch1996]; written apart from the search, slowly and plainly.
 */
final class EveryOrder {
    private final Net net;
    private int shortest = Integer.MAX_VALUE;

    private EveryOrder(Net net) {
        this.net = net;
    }

    static int shortest(Net net) {
        EveryOrder every = new EveryOrder(net);
        every.go(new ArrayList<>(Collections.nCopies(net.activities().size(), -1)), 0);
        return every.shortest;
    }

    private void go(List<Integer> starts, int placed) {
        if (placed == starts.size()) {
            shortest = Math.min(shortest, net.makespan(starts));
            return;
        }
        for (int i = 0; i < starts.size(); i++) {
            if (starts.get(i) < 0 && ready(i, starts)) {
                starts.set(i, earliest(i, starts));
                go(starts, placed + 1);
                starts.set(i, -1);
            }
        }
    }

    private boolean ready(int i, List<Integer> starts) {
        return net.lags().stream().noneMatch(l -> l.to() == i && starts.get(l.from()) < 0);
    }

    private int earliest(int i, List<Integer> starts) {
        int at = 0;
        for (Lag l : net.lags()) {
            at = l.to() == i ? Math.max(at, starts.get(l.from()) + l.least()) : at;
        }
        while (!fits(i, at, starts)) {
            at++;
        }
        return at;
    }

    private boolean fits(int i, int at, List<Integer> starts) {
        for (int t = at; t < at + net.activities().get(i).duration(); t++) {
            for (int k = 0; k < net.capacities().size(); k++) {
                int use = net.activities().get(i).demands().get(k);
                for (int j = 0; j < starts.size(); j++) {
                    Activity a = net.activities().get(j);
                    boolean on = starts.get(j) >= 0 && starts.get(j) <= t && t < starts.get(j) + a.duration();
                    use += on ? a.demands().get(k) : 0;
                }
                if (use > net.capacities().get(k)) {
                    return false;
                }
            }
        }
        return true;
    }
}
