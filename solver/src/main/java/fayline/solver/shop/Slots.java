package fayline.solver.shop;

import fayline.flow.plan.Work;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.serial.TimeLine;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The hours of the shop in slots of five minutes of a {@link TimeLine}: who is in, how long a crew can work through, and when
 * interruptible work would be done. Who comes within a slot counts from the next on, who goes within one to its end.
 */
final class Slots {
    static final int MIN = 5;
    /** A first stretch of interruptible work is not shorter. */
    private static final int WORTH = 3;

    final int first;
    final int last;
    final int people;
    private final BitSet[] present;
    private final BitSet[] working;
    private final int[][] presentRun;
    private final int[] heads;
    private final List<Worker> workers;
    private final Map<Need, int[]> workable = new HashMap<>();

    /** A crew: how many, and how many of them with which skill. */
    record Need(int crew, Map<String, Integer> skills) {}

    Slots(Work work, TimeLine time, int lastMin) {
        workers = work.people();
        people = workers.size();
        first = up(time.ceil(work.now()));
        last = Math.max(first, down(lastMin));
        present = new BitSet[people];
        working = new BitSet[people];
        presentRun = new int[people][];
        heads = new int[last + 2];
        for (int p = 0; p < people; p++) {
            present[p] = bits(workers.get(p).present(), time, false);
            working[p] = (BitSet) present[p].clone();
            working[p].andNot(bits(workers.get(p).breaks(), time, true));
            presentRun[p] = runs(present[p]);
            for (int t = present[p].nextSetBit(0); t >= 0 && t <= last; t = present[p].nextSetBit(t + 1)) {
                heads[t]++;
            }
        }
    }

    static int up(int minute) {
        return -Math.floorDiv(-minute, MIN);
    }

    static int down(int minute) {
        return Math.floorDiv(minute, MIN);
    }

    private BitSet bits(List<Stretch> stretches, TimeLine time, boolean wide) {
        BitSet bits = new BitSet(last + 1);
        for (Stretch s : stretches) {
            int from = wide ? down(time.floor(s.from())) : up(time.ceil(s.from()));
            int to = up(time.ceil(s.to()));
            if (to > 0 && to > from && from <= last) {
                bits.set(Math.max(0, from), Math.min(last + 1, to));
            }
        }
        return bits;
    }

    private int[] runs(BitSet bits) {
        int[] run = new int[last + 2];
        for (int t = last; t >= 0; t--) {
            run[t] = bits.get(t) ? run[t + 1] + 1 : 0;
        }
        return run;
    }

    /** How many people are in. */
    int heads(int slot) {
        return slot < 0 || slot > last ? 0 : heads[slot];
    }

    /** Whether a person is in from a slot on for so long without going. */
    boolean isPresent(int person, int slot, int slots) {
        return slot >= 0 && slot <= last && presentRun[person][slot] >= slots;
    }

    boolean isWorking(int person, int slot) {
        return working[person].get(slot);
    }

    /** Starts at which some crew is in for so many slots without a stop. */
    BitSet throughStarts(Need need, int slots, boolean accompanied) {
        BitSet starts = new BitSet(last + 1);
        for (int t = first; t + slots - 1 <= last; t++) {
            int able = 0;
            for (int p = 0; p < people; p++) {
                able += presentRun[p][t] >= slots ? 1 : 0;
            }
            if (able >= need.crew && hasSkills(need, t, slots) && (!accompanied || isAccompanied(need, t, slots))) {
                starts.set(t);
            }
        }
        return starts;
    }

    private boolean hasSkills(Need need, int t, int slots) {
        for (Map.Entry<String, Integer> s : need.skills.entrySet()) {
            int able = 0;
            for (int p = 0; p < people; p++) {
                able += presentRun[p][t] >= slots && workers.get(p).skills().contains(s.getKey()) ? 1 : 0;
            }
            if (able < s.getValue()) {
                return false;
            }
        }
        return true;
    }

    private boolean isAccompanied(Need need, int t, int slots) {
        for (int i = t; need.crew < 2 && i < t + slots; i++) {
            if (heads[i] < 2) {
                return false;
            }
        }
        return true;
    }

    /**
     * How many slots interruptible work takes from each start on, its stops included; 0 where it cannot start or not be over.
     */
    int[] elapsed(Need need, int slots) {
        int[] done = workable.computeIfAbsent(need, this::countWorkable);
        int[] elapsed = new int[last + 2];
        int end = first;
        for (int t = first; t <= last; t++) {
            boolean starts = true;
            for (int i = t; i < t + Math.min(slots, WORTH); i++) {
                starts &= i <= last && done[i + 1] > done[i];
            }
            if (starts) {
                end = Math.max(end, t);
                while (end <= last && done[end] - done[t] < slots) {
                    end++;
                }
                elapsed[t] = end <= last && done[end] - done[t] >= slots ? end - t : 0;
            }
        }
        return elapsed;
    }

    /** For each slot, how many before it such a crew can work in. */
    private int[] countWorkable(Need need) {
        int[] done = new int[last + 2];
        for (int t = 0; t <= last; t++) {
            int able = 0;
            for (int p = 0; p < people; p++) {
                able += working[p].get(t) ? 1 : 0;
            }
            boolean fits = able >= need.crew;
            for (Map.Entry<String, Integer> s : need.skills.entrySet()) {
                int skilled = 0;
                for (int p = 0; fits && p < people; p++) {
                    skilled += working[p].get(t) && workers.get(p).skills().contains(s.getKey()) ? 1 : 0;
                }
                fits &= skilled >= s.getValue();
            }
            done[t + 1] = done[t] + (fits ? 1 : 0);
        }
        return done;
    }

    /** The stretches of a set of slots as pairs, both ends in it. */
    static long[][] intervals(BitSet bits) {
        long[][] all = new long[16][];
        int n = 0;
        for (int from = bits.nextSetBit(0); from >= 0; ) {
            int to = bits.nextClearBit(from);
            if (n == all.length) {
                all = Arrays.copyOf(all, n * 2);
            }
            all[n++] = new long[] {from, to - 1};
            from = bits.nextSetBit(to);
        }
        return Arrays.copyOf(all, n);
    }
}
