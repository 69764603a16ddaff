package fayline.solver.net;

import fayline.solver.net.Sampling.Rule;
import fayline.solver.net.Shifts.Member;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * A population of schedules that breeds until it no longer improves: orders crossed at two points [hartmann1998], neighbours in
 * the order swapped now and then, every child shifted right and left. A child takes the place of a worse member.
 */
final class Island {
    private static final int SWAPS_IN_100 = 8;
    private static final int PATIENCE = 12;

    private final Compact net;
    private final Shifts shifts;
    private final Random random;
    private final List<Member> members = new ArrayList<>();
    private int best = Integer.MAX_VALUE;
    private int sinceBetter;

    private Island(Compact net, Shifts shifts, Random random) {
        this.net = net;
        this.shifts = shifts;
        this.random = random;
    }

    /** A new population, drawn by several rules. */
    static Island drawn(Compact net, Shifts shifts, Random random, int size) {
        Island island = new Island(net, shifts, random);
        Sampling sampling = new Sampling(net, random);
        Rule[] rules = Rule.values();
        for (int x = 0; x < size; x++) {
            // Half by the rule that does best alone, the other rules for variety.
            Rule rule = x % 2 == 0 ? Rule.LATEST_START : rules[x / 2 % rules.length];
            island.settle(shifts.member(sampling.order(rule, 1 + random.nextInt(4))));
        }
        return island;
    }

    /** The better half of each of two. */
    static Island merged(Island a, Island b) {
        Island island = new Island(a.net, a.shifts, a.random);
        a.betterHalf().forEach(island::settle);
        b.betterHalf().forEach(island::settle);
        return island;
    }

    private List<Member> betterHalf() {
        List<Member> sorted = new ArrayList<>(members);
        sorted.sort(Comparator.comparingInt(o -> o.end));
        return sorted.subList(0, (sorted.size() + 1) / 2);
    }

    private void settle(Member member) {
        members.add(member);
        best = Math.min(best, member.end);
    }

    /** A schedule from elsewhere takes the place of a member. */
    void visit(int[] start) {
        replace(shifts.memberFrom(start));
    }

    /** The best member. */
    Member best() {
        return members.stream().min(Comparator.comparingInt(o -> o.end)).orElseThrow();
    }

    /** Whether it has not improved for long. */
    boolean stale() {
        return sinceBetter > PATIENCE * members.size();
    }

    /** One child. */
    void breed() {
        sinceBetter++;
        replace(shifts.member(child(parent(), parent())));
    }

    private void replace(Member child) {
        for (Member o : members) {
            if (o.isTwinOf(child)) {
                return;
            }
        }
        int x = random.nextInt(members.size());
        int y = random.nextInt(members.size());
        int worse = members.get(x).end > members.get(y).end ? x : y;
        if (child.end <= members.get(worse).end) {
            members.set(worse, child);
        }
        if (child.end < best) {
            best = child.end;
            sinceBetter = 0;
        }
    }

    private Member parent() {
        Member a = members.get(random.nextInt(members.size()));
        Member b = members.get(random.nextInt(members.size()));
        return a.end <= b.end ? a : b;
    }

    /** The mother's order but for a stretch of a quarter to three quarters, which stands as in the father's. */
    private int[] child(Member mother, Member father) {
        int n = net.n;
        int length = n / 4 + random.nextInt(n / 2 + 1);
        int from = random.nextInt(n - length + 1);
        boolean[] in = new boolean[n];
        int[] order = new int[n];
        System.arraycopy(mother.order, 0, order, 0, from);
        for (int x = 0; x < from; x++) {
            in[order[x]] = true;
        }
        int c = fill(order, from, from + length, father.order, in);
        fill(order, c, n, mother.order, in);
        swap(order);
        return order;
    }

    private static int fill(int[] order, int from, int to, int[] source, boolean[] in) {
        int c = from;
        for (int x = 0; x < source.length && c < to; x++) {
            if (!in[source[x]]) {
                in[source[x]] = true;
                order[c++] = source[x];
            }
        }
        return c;
    }

    private void swap(int[] order) {
        for (int x = 0; x + 1 < order.length; x++) {
            int i = order[x];
            int j = order[x + 1];
            if (random.nextInt(100) < SWAPS_IN_100 && net.distance[i][j] == Compact.NONE) {
                order[x] = j;
                order[x + 1] = i;
            }
        }
    }
}
