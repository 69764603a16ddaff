package fayline.flow.audit.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks a schedule against its net by the definition: starts from 0, each lag kept, no resource overdrawn. Use can only grow
 * where an activity starts, so each resource is added up at every start.
 */
public final class NetAuditor {
    private NetAuditor() {}

    /**
     * Checks.
     *
     * @param net what was to be scheduled
     * @param starts the start of each activity, in the net's order
     * @return a sentence for each breach; empty where the schedule keeps everything
     */
    public static List<String> breaches(Net net, List<Integer> starts) {
        if (starts.size() != net.activities().size()) {
            return List.of(
                    "found " + starts.size() + " starts for " + net.activities().size() + " activities");
        }
        List<String> breaches = new ArrayList<>();
        for (int i = 0; i < starts.size(); i++) {
            if (starts.get(i) < 0) {
                breaches.add(name(net, i) + " starts at " + starts.get(i) + ", before 0");
            }
        }
        for (Lag l : net.lags()) {
            long distance = (long) starts.get(l.to()) - starts.get(l.from());
            if (distance < l.least()) {
                breaches.add(name(net, l.to()) + " starts " + distance + " after the start of " + name(net, l.from())
                        + ", expected at least " + l.least());
            }
        }
        for (int at : starts.stream().distinct().sorted().toList()) {
            for (int k = 0; k < net.capacities().size(); k++) {
                long use = use(net, starts, k, at);
                if (use > net.capacities().get(k)) {
                    breaches.add("at " + at + " resource " + (k + 1) + " is used " + use + " times, there are "
                            + net.capacities().get(k));
                }
            }
        }
        return List.copyOf(breaches);
    }

    private static long use(Net net, List<Integer> starts, int resource, int at) {
        long use = 0;
        for (int i = 0; i < starts.size(); i++) {
            Activity a = net.activities().get(i);
            if (starts.get(i) <= at && at < (long) starts.get(i) + a.duration()) {
                use += a.demands().get(resource);
            }
        }
        return use;
    }

    private static String name(Net net, int activity) {
        return "activity " + net.activities().get(activity).name();
    }
}
