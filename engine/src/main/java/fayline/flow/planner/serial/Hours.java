package fayline.flow.planner.serial;

import fayline.flow.plan.Worker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * One person's hours by the minute. They are the same for every plan of a work, so they are worked out once.
 *
 * @param present when the person is in the shop
 * @param working the same without breaks
 */
record Hours(Stretches present, Stretches working) {
    static Hours of(Worker worker, TimeLine time) {
        List<int[]> in = merged(worker.present(), time);
        return new Hours(new Stretches(in), new Stretches(without(in, merged(worker.breaks(), time))));
    }

    private static List<int[]> merged(List<Worker.Stretch> stretches, TimeLine time) {
        List<int[]> sorted = new ArrayList<>();
        for (Worker.Stretch s : stretches) {
            sorted.add(new int[] {time.ceil(s.from()), time.floor(s.to())});
        }
        sorted.sort(Comparator.comparingInt(s -> s[0]));
        List<int[]> merged = new ArrayList<>();
        for (int[] s : sorted) {
            if (!merged.isEmpty() && s[0] <= merged.get(merged.size() - 1)[1]) {
                int[] before = merged.get(merged.size() - 1);
                before[1] = Math.max(before[1], s[1]);
            } else if (s[1] > s[0]) {
                merged.add(s);
            }
        }
        return merged;
    }

    private static List<int[]> without(List<int[]> whole, List<int[]> holes) {
        List<int[]> left = new ArrayList<>();
        for (int[] w : whole) {
            int from = w[0];
            for (int[] h : holes) {
                if (h[1] > from && h[0] < w[1]) {
                    if (h[0] > from) {
                        left.add(new int[] {from, h[0]});
                    }
                    from = h[1];
                }
            }
            if (from < w[1]) {
                left.add(new int[] {from, w[1]});
            }
        }
        return left;
    }
}
