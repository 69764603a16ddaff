package fayline.store.file.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the form {@code .sch} of [schwindt1998]: a line of counts, a row of successors with lags in brackets per activity, a row
 * of duration and demands per activity, a line of capacities. Activities are numbered from 0, a first and a last one of no
 * duration included; lags are from start to start, negative ones are maximum lags.
 */
final class LaggedNet {
    private static final int ROW_HEAD = Lines.ROW_HEAD;

    private final Lines lines;

    LaggedNet(Lines lines) {
        this.lines = lines;
    }

    Net read() {
        List<Integer> counts = lines.numbers("counts", "whole numbers: activities, resources, 0, 0");
        if (counts.size() < 2) {
            throw lines.wrong("counts", counts.size() + " numbers", "activities, resources, 0, 0");
        }
        int all = lines.within(counts.get(0), 1, Net.MOST, "activities") + 2;
        int resources = lines.within(counts.get(1), 0, Net.MOST, "resources");
        counts.subList(2, counts.size()).forEach(c -> lines.within(c, 0, 0, "other resources"));
        List<Lag> lags = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            lags.addAll(lags(i, all));
        }
        List<Activity> activities = new ArrayList<>();
        for (int i = 0; i < all; i++) {
            activities.add(activity(i, resources));
        }
        List<Integer> capacities = lines.numbers("capacities", "whole numbers");
        if (capacities.size() != resources) {
            throw lines.wrong("capacities", capacities.size() + " numbers", resources + ", one per resource");
        }
        capacities.forEach(c -> lines.within(c, 0, Net.MOST, "capacity"));
        return new Net(activities, lags, capacities);
    }

    private List<Lag> lags(int from, int all) {
        List<Integer> row = lines.row(from, "successors", ROW_HEAD);
        int count = row.get(2);
        if (row.size() != ROW_HEAD + 2 * count) {
            throw lines.wrong(
                    "successors", (row.size() - ROW_HEAD) + " numbers", count + " successors and as many lags");
        }
        List<Lag> lags = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            int to = lines.within(row.get(ROW_HEAD + k), 0, all - 1, "successor");
            lags.add(new Lag(from, to, lines.within(row.get(ROW_HEAD + count + k), -Net.MOST, Net.MOST, "lag")));
        }
        return lags;
    }

    private Activity activity(int number, int resources) {
        List<Integer> row = lines.row(number, "durations", ROW_HEAD + resources);
        if (row.size() != ROW_HEAD + resources) {
            throw lines.wrong("demands", (row.size() - ROW_HEAD) + " numbers", resources + ", one per resource");
        }
        row.subList(2, row.size()).forEach(d -> lines.within(d, 0, Net.MOST, "duration or demand"));
        return new Activity(Integer.toString(number), row.get(2), row.subList(ROW_HEAD, row.size()));
    }
}
