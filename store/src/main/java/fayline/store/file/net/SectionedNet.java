package fayline.store.file.net;

import fayline.flow.plan.net.Net;
import fayline.flow.plan.net.Net.Activity;
import fayline.flow.plan.net.Net.Lag;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads the form {@code .sm} of [kolisch-sprecher1996]: sections for successors, durations with demands, and capacities.
 * Activities are numbered from 1, a first and a last one of no duration included; a successor may start when the activity has
 * ended. Only one mode and only renewable resources are read.
 */
final class SectionedNet {
    private static final int ROW_HEAD = Lines.ROW_HEAD;

    private final Lines lines;

    SectionedNet(Lines lines) {
        this.lines = lines;
    }

    Net read() {
        int jobs = lines.within(lines.first(colon(lines.after("jobs")), "jobs"), 1, Net.MOST, "jobs");
        int renewable = lines.first(colon(lines.after("- renewable")), "renewable");
        lines.within(renewable, 0, Net.MOST, "renewable");
        lines.within(lines.first(colon(lines.after("- nonrenewable")), "nonrenewable"), 0, 0, "nonrenewable");
        lines.within(lines.first(colon(lines.after("- doubly")), "doubly constrained"), 0, 0, "doubly constrained");
        List<List<Integer>> successors = successors(jobs);
        List<Activity> activities = activities(jobs, renewable);
        lines.after("RESOURCEAVAILABILITIES");
        lines.next("the names of the resources");
        List<Integer> capacities = lines.numbers("capacities", "whole numbers");
        if (capacities.size() != renewable) {
            throw lines.wrong("capacities", capacities.size() + " numbers", renewable + ", one per resource");
        }
        capacities.forEach(c -> lines.within(c, 0, Net.MOST, "capacity"));
        List<Lag> lags = new ArrayList<>();
        for (int i = 0; i < jobs; i++) {
            for (int j : successors.get(i)) {
                lags.add(new Lag(i, j - 1, activities.get(i).duration()));
            }
        }
        return new Net(activities, lags, capacities);
    }

    private String colon(String rest) {
        int at = rest.indexOf(':');
        if (at < 0) {
            throw lines.wrong("header", Lines.quoted(rest.strip()), "a colon and a number");
        }
        return rest.substring(at + 1);
    }

    private List<List<Integer>> successors(int jobs) {
        lines.after("PRECEDENCE RELATIONS");
        lines.next("the column heads");
        List<List<Integer>> all = new ArrayList<>();
        for (int i = 1; i <= jobs; i++) {
            List<Integer> row = lines.row(i, "successors", ROW_HEAD);
            int count = row.get(2);
            if (row.size() != ROW_HEAD + count) {
                throw lines.wrong("successors", (row.size() - ROW_HEAD) + " numbers", count + ", as the row says");
            }
            List<Integer> after = row.subList(ROW_HEAD, row.size());
            after.forEach(j -> lines.within(j, 1, jobs, "successor"));
            all.add(after);
        }
        return all;
    }

    private List<Activity> activities(int jobs, int renewable) {
        lines.after("REQUESTS/DURATIONS");
        lines.next("the column heads");
        List<Activity> all = new ArrayList<>();
        for (int i = 1; i <= jobs; i++) {
            List<Integer> row = lines.row(i, "durations", ROW_HEAD + renewable);
            if (row.size() != ROW_HEAD + renewable) {
                throw lines.wrong("demands", (row.size() - ROW_HEAD) + " numbers", renewable + ", one per resource");
            }
            row.subList(2, row.size()).forEach(d -> lines.within(d, 0, Net.MOST, "duration or demand"));
            all.add(new Activity(Integer.toString(i), row.get(2), row.subList(ROW_HEAD, row.size())));
        }
        return all;
    }
}
