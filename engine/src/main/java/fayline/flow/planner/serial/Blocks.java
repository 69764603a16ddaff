package fayline.flow.planner.serial;

import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Steps that are put in as one: tied by a window, by a hold, or because one follows the other without hands. Steps between two
 * of a block belong to it too, so that blocks never wait for each other in a circle.
 */
final class Blocks {
    /** Windows wider than this do not tie: they are seldom missed. */
    private static final double WIDE_MIN = 4 * 24 * 60.0;
    /** Hands take working time, of which a calendar day has about a third. */
    private static final double CALENDAR_PER_WORKING = 2.5;

    /**
     * One block.
     *
     * @param index its place in the list
     * @param tasks its tasks, each after those it waits for
     * @param before blocks that it waits for
     */
    record Block(int index, List<Integer> tasks, Set<Integer> before) {}

    private final Net net;
    private final boolean[] alive;
    private final int[] group;
    private final double[] tail;

    private Blocks(Net net, boolean[] alive) {
        this.net = net;
        this.alive = alive;
        group = new int[net.tasks.size()];
        Arrays.setAll(group, i -> i);
        tail = tails(net);
    }

    /** Blocks of the steps still to do that can be planned. The work has no circles among these. */
    static List<Block> of(Net net, boolean[] alive) {
        Blocks blocks = new Blocks(net, alive);
        blocks.tie();
        blocks.close();
        return blocks.listed();
    }

    /** Longest way from the start of each task to the end of all that waits for it, in rough calendar minutes. */
    static double[] tails(Net net) {
        double[] tail = new double[net.tasks.size()];
        List<Integer> order = topological(net);
        for (int i = order.size() - 1; i >= 0; i--) {
            Task task = net.task(order.get(i));
            double after = 0;
            for (int next : task.next) {
                after = Math.max(after, tail[next]);
            }
            int hands =
                    task.step.hands().stream().mapToInt(h -> h.minutes()).min().orElse(0);
            tail[task.index] =
                    after + hands * CALENDAR_PER_WORKING + task.step.alone().minutes();
        }
        return tail;
    }

    /** All tasks that are in no circle nor behind one, each after those it waits for. */
    static List<Integer> topological(Net net) {
        int[] waits = new int[net.tasks.size()];
        for (Task task : net.tasks) {
            for (Need need : task.needs) {
                waits[task.index] += need.task() == Net.UNKNOWN ? 0 : 1;
            }
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < waits.length; i++) {
            if (waits[i] == 0) {
                order.add(i);
            }
        }
        for (int i = 0; i < order.size(); i++) {
            for (int next : net.task(order.get(i)).next) {
                if (--waits[next] == 0) {
                    order.add(next);
                }
            }
        }
        return order;
    }

    private boolean isIn(int task) {
        return alive[task] && net.task(task).isTodo();
    }

    private int find(int i) {
        int root = i;
        while (group[root] != root) {
            root = group[root];
        }
        group[i] = root;
        return root;
    }

    private void join(int a, int b) {
        int ra = find(a);
        int rb = find(b);
        group[Math.max(ra, rb)] = Math.min(ra, rb);
    }

    private void tie() {
        for (Task task : net.tasks) {
            if (!isIn(task.index)) {
                continue;
            }
            for (Need need : task.needs) {
                if (need.task() != Net.UNKNOWN && isIn(need.task()) && ties(task, need)) {
                    join(task.index, need.task());
                }
            }
        }
        for (Net.Keep keep : net.keeps) {
            List<Integer> in = keep.tasks.stream().filter(this::isIn).toList();
            in.forEach(t -> join(in.get(0), t));
        }
    }

    private static boolean ties(Task task, Need need) {
        // Practised hands are worth a little, but both hands in one block would stand in each other's mould.
        if (task.mates.stream().anyMatch(m -> m.task() == need.task()) && !need.isHard()) {
            return false;
        }
        if (!need.shuts()) {
            return !task.hasHands() && task.needs.size() == 1;
        }
        return need.isHard() || need.shut().minutes() - need.opens().minutes() <= WIDE_MIN;
    }

    /** Merges blocks that wait for each other in a circle (strongly connected ones), until none do. */
    private void close() {
        boolean merged = true;
        while (merged) {
            merged = false;
            Map<Integer, Set<Integer>> after = new LinkedHashMap<>();
            for (Task task : net.tasks) {
                if (isIn(task.index)) {
                    Set<Integer> next = after.computeIfAbsent(find(task.index), g -> new HashSet<>());
                    task.next.stream().filter(this::isIn).map(this::find).forEach(next::add);
                }
            }
            Map<Integer, Set<Integer>> reach = new LinkedHashMap<>();
            after.keySet().forEach(g -> reach.put(g, reached(g, after)));
            for (int a : after.keySet()) {
                for (int b : reach.getOrDefault(a, Set.of())) {
                    if (a < b && reach.getOrDefault(b, Set.of()).contains(a)) {
                        join(a, b);
                        merged = true;
                    }
                }
            }
        }
    }

    private static Set<Integer> reached(int from, Map<Integer, Set<Integer>> after) {
        Set<Integer> seen = new HashSet<>();
        Deque<Integer> open = new ArrayDeque<>(after.getOrDefault(from, Set.of()));
        while (!open.isEmpty()) {
            int g = open.pop();
            if (g != from && seen.add(g)) {
                open.addAll(after.getOrDefault(g, Set.of()));
            }
        }
        return seen;
    }

    private List<Block> listed() {
        Map<Integer, List<Integer>> members = new LinkedHashMap<>();
        for (Task task : net.tasks) {
            if (isIn(task.index)) {
                members.computeIfAbsent(find(task.index), g -> new ArrayList<>())
                        .add(task.index);
            }
        }
        Map<Integer, Integer> indexOf = new LinkedHashMap<>();
        members.keySet().forEach(g -> indexOf.put(g, indexOf.size()));
        List<Block> blocks = new ArrayList<>();
        for (Map.Entry<Integer, List<Integer>> m : members.entrySet()) {
            Set<Integer> before = new HashSet<>();
            for (int t : m.getValue()) {
                for (Need need : net.task(t).needs) {
                    if (need.task() != Net.UNKNOWN && isIn(need.task()) && find(need.task()) != find(t)) {
                        before.add(indexOf.getOrDefault(find(need.task()), -1));
                    }
                }
            }
            blocks.add(new Block(blocks.size(), ordered(m.getValue()), before));
        }
        return blocks;
    }

    /** Within a block: what a narrow window waits for first, then what has most behind it. */
    private List<Integer> ordered(List<Integer> tasks) {
        Set<Integer> open = new HashSet<>(tasks);
        List<Integer> order = new ArrayList<>();
        while (!open.isEmpty()) {
            int best = -1;
            double bestWindow = 0;
            for (int t : tasks) {
                if (!open.contains(t) || !isReady(t, open)) {
                    continue;
                }
                double window = window(t, open, tasks);
                if (best < 0 || window < bestWindow || (window == bestWindow && tail[t] > tail[best])) {
                    best = t;
                    bestWindow = window;
                }
            }
            order.add(best);
            open.remove(best);
        }
        return List.copyOf(order);
    }

    private boolean isReady(int t, Set<Integer> open) {
        return net.task(t).needs.stream().noneMatch(n -> open.contains(n.task()));
    }

    private double window(int t, Set<Integer> open, List<Integer> block) {
        double narrowest = Double.MAX_VALUE;
        for (Need need : net.task(t).needs) {
            if (need.shuts() && !open.contains(need.task()) && block.contains(need.task())) {
                narrowest = Math.min(narrowest, need.shut().minutes());
            }
        }
        return narrowest;
    }
}
