package fayline.flow.planner.serial;

import java.util.List;

/** Stretches that never change, in order and apart. */
final class Stretches {
    private final int[] from;
    private final int[] to;

    Stretches(List<int[]> stretches) {
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
