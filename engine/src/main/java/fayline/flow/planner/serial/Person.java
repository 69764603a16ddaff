package fayline.flow.planner.serial;

import fayline.flow.plan.Worker;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** One person's hours, and what already takes them. */
final class Person {
    final int index;
    final Worker worker;
    final Lane busy = new Lane();
    /** Minutes of work given so far: work goes to who has least. */
    int load;
    /** How many steps the lead wants the person for. */
    int wanted;

    private final Hours present;
    private final Hours working;

    Person(int index, Worker worker, TimeLine time) {
        this.index = index;
        this.worker = worker;
        List<int[]> in = merged(worker.present(), time);
        present = new Hours(in);
        working = new Hours(without(in, merged(worker.breaks(), time)));
    }

    /** Present hours, or those of them that are no break. */
    private Hours hours(boolean interruptible) {
        return interruptible ? working : present;
    }

    /** Till when the person is free from t on; t itself if not at all. */
    int freeUntil(int t, boolean interruptible) {
        int end = hours(interruptible).endAt(t);
        if (end <= t || busy.clearFrom(t) != t) {
            return t;
        }
        return Math.min(end, busy.nextFrom(t));
    }

    boolean isBusyAt(int t) {
        return busy.clearFrom(t) != t;
    }

    /** The start of the first free time after t that t does not lie in. */
    int nextFree(int t, boolean interruptible) {
        Hours hours = hours(interruptible);
        int s = Math.max(t + 1, freeUntil(t, interruptible));
        while (s < TimeLine.FOREVER) {
            int in = hours.nextIn(s);
            int clear = in >= TimeLine.FOREVER ? in : busy.clearFrom(in);
            if (clear == in) {
                return in;
            }
            s = clear;
        }
        return TimeLine.FOREVER;
    }

    /** Till when the person works without break from t on, other steps aside; t if not at all. */
    int worksUntil(int t) {
        return Math.max(t, working.endAt(t));
    }

    int nextWorking(int t) {
        return working.nextIn(t);
    }

    /** Till when the person is present from t on, t if not. */
    int presentUntil(int t) {
        return Math.max(t, present.endAt(t));
    }

    int nextPresent(int t) {
        return present.nextIn(t);
    }

    int longestPresence() {
        return present.longest();
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

    /** Stretches that never change, in order and apart. */
    private static final class Hours {
        private final int[] from;
        private final int[] to;

        Hours(List<int[]> stretches) {
            from = stretches.stream().mapToInt(s -> s[0]).toArray();
            to = stretches.stream().mapToInt(s -> s[1]).toArray();
        }

        /** Index of the first stretch that ends after t. */
        private int find(int t) {
            int low = 0;
            int high = to.length;
            while (low < high) {
                int mid = (low + high) >>> 1;
                if (to[mid] <= t) {
                    low = mid + 1;
                } else {
                    high = mid;
                }
            }
            return low;
        }

        /** End of the stretch that t lies in, or less than t. */
        int endAt(int t) {
            int i = find(t);
            return i < from.length && from[i] <= t ? to[i] : -TimeLine.FOREVER;
        }

        int nextIn(int t) {
            int i = find(t);
            return i < from.length ? Math.max(t, from[i]) : TimeLine.FOREVER;
        }

        int longest() {
            int longest = 0;
            for (int i = 0; i < from.length; i++) {
                longest = Math.max(longest, to[i] - from[i]);
            }
            return longest;
        }
    }
}
