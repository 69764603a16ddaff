package fayline.solver;

import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.serial.TimeLine;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/** How many people are in the shop when. */
final class Headcount {
    private final List<Worker> people;
    private final TimeLine time;

    Headcount(Work work, TimeLine time) {
        people = work.people();
        this.time = time;
    }

    int most(String skill) {
        return (int) people.stream().filter(p -> has(p, skill)).count();
    }

    private static boolean has(Worker p, String skill) {
        return skill.isEmpty() || p.skills().contains(skill);
    }

    /** Stretches of starts, both ends possible, at which so many are in from the start on for so many minutes. */
    List<int[]> starts(int crew, int minutes, int from, int to) {
        List<int[]> all = new ArrayList<>();
        // A person may start at any minute of a presence but its last ones.
        List<List<int[]>> each = new ArrayList<>();
        TreeSet<Integer> cuts = new TreeSet<>(List.of(from, to + 1));
        for (Worker p : people) {
            List<int[]> own = new ArrayList<>();
            for (int[] s : merged(p.present())) {
                if (s[1] - minutes >= s[0]) {
                    own.add(new int[] {s[0], s[1] - minutes});
                    cuts.add(s[0]);
                    cuts.add(s[1] - minutes + 1);
                }
            }
            each.add(own);
        }
        Integer before = null;
        for (int cut : cuts) {
            if (before != null && before >= from && before <= to) {
                int at = before;
                long able = each.stream()
                        .filter(own -> own.stream().anyMatch(s -> s[0] <= at && at <= s[1]))
                        .count();
                if (able >= crew) {
                    all.add(new int[] {at, Math.min(cut - 1, to)});
                }
            }
            before = cut;
        }
        return all;
    }

    /** Minutes at which interruptible hands may end: after somebody's presence begins, up to its end. */
    List<int[]> workEnds(int from, int to) {
        List<int[]> all = new ArrayList<>();
        for (Worker p : people) {
            for (int[] s : merged(p.present())) {
                if (s[1] > from && s[0] < to) {
                    all.add(new int[] {Math.max(from, s[0] + 1), Math.min(to, s[1])});
                }
            }
        }
        return all;
    }

    /** Stretches with the number of people of a skill, or of all, who are away. */
    List<int[]> absences(int from, int to, String skill) {
        TreeSet<Integer> cuts = new TreeSet<>(List.of(from, to));
        List<List<int[]>> present = new ArrayList<>();
        for (Worker p : people) {
            if (has(p, skill)) {
                List<int[]> in = merged(p.present());
                present.add(in);
                for (int[] s : in) {
                    cuts.add(Math.max(from, Math.min(to, s[0])));
                    cuts.add(Math.max(from, Math.min(to, s[1])));
                }
            }
        }
        List<int[]> away = new ArrayList<>();
        Integer before = null;
        for (int cut : cuts) {
            if (before != null) {
                int at = before;
                long in = present.stream()
                        .filter(own -> own.stream().anyMatch(s -> s[0] <= at && at < s[1]))
                        .count();
                if (in < present.size()) {
                    away.add(new int[] {at, cut, (int) (present.size() - in)});
                }
            }
            before = cut;
        }
        return away;
    }

    private List<int[]> merged(List<Stretch> stretches) {
        List<int[]> merged = new ArrayList<>();
        for (Stretch s : stretches) {
            int[] now = {time.ceil(s.from()), time.floor(s.to())};
            int[] before = merged.isEmpty() ? now : merged.get(merged.size() - 1);
            if (!merged.isEmpty() && now[0] <= before[1]) {
                before[1] = Math.max(before[1], now[1]);
            } else {
                merged.add(now);
            }
        }
        return merged;
    }
}
