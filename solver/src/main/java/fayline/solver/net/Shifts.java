package fayline.solver.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Makes a schedule from an order, and shortens it by shifting everything to the right and back to the left as long as that helps:
 * double justification [valls2005], also called forward-backward improvement.
 */
final class Shifts {
    private final Compact net;
    private final int[] rank;
    private final Placing left;
    private final Placing right;

    /** A schedule with its activities in the order of their starts. */
    static final class Member {
        final int[] start;
        final int[] order;
        final int end;

        private Member(int[] start, int[] order, int end) {
            this.start = start;
            this.order = order;
            this.end = end;
        }

        boolean isTwinOf(Member other) {
            return end == other.end && Arrays.equals(start, other.start);
        }
    }

    Shifts(Compact net) {
        this.net = net;
        rank = net.rank();
        left = new Placing(net, befores(false));
        right = new Placing(net, befores(true));
    }

    /** In the mirror an activity starts where it ended, so {@code s(j) >= s(i) + lag} counts from j to i and from end to end. */
    private int[][] befores(boolean mirror) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < net.n; i++) {
            lists.add(new ArrayList<>());
        }
        for (int[] l : net.lags) {
            lists.get(mirror ? l[0] : l[1]).add(mirror ? l[1] : l[0]);
            lists.get(mirror ? l[0] : l[1]).add(mirror ? l[2] + net.duration[l[1]] - net.duration[l[0]] : l[2]);
        }
        return lists.stream()
                .map(list -> list.stream().mapToInt(x -> x).toArray())
                .toArray(int[][]::new);
    }

    /** From an order in which predecessors come first. */
    Member member(int[] order) {
        int[] start = new int[net.n];
        int end = left.place(order, start);
        boolean better = true;
        while (better) {
            int[] next = new int[net.n];
            int then = left.place(byEnd(rightmost(start), false), next);
            better = then < end;
            if (then <= end) {
                start = next;
                end = then;
            }
        }
        return new Member(start, byStart(start), end);
    }

    /** From any schedule that keeps the lags. */
    Member memberFrom(int[] start) {
        return member(byStart(start));
    }

    private int[] rightmost(int[] start) {
        int[] mirror = new int[net.n];
        right.place(byEnd(start, true), mirror);
        return mirror;
    }

    /** Latest end first; ties by rank, or by rank backward for the mirror. */
    private int[] byEnd(int[] start, boolean backward) {
        long[] key = new long[net.n];
        for (int i = 0; i < net.n; i++) {
            key[i] = -(long) (start[i] + net.duration[i]) * net.n + (backward ? net.n - 1 - rank[i] : rank[i]);
        }
        return sorted(key);
    }

    private int[] byStart(int[] start) {
        long[] key = new long[net.n];
        for (int i = 0; i < net.n; i++) {
            key[i] = (long) start[i] * net.n + rank[i];
        }
        return sorted(key);
    }

    private int[] sorted(long[] key) {
        int n = net.n;
        long[] packed = new long[n];
        for (int i = 0; i < n; i++) {
            packed[i] = key[i] * n + i;
        }
        Arrays.sort(packed);
        int[] order = new int[n];
        for (int x = 0; x < n; x++) {
            order[x] = (int) Math.floorMod(packed[x], (long) n);
        }
        return order;
    }
}
