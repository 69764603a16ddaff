package fayline.flow.planner.serial;

import fayline.flow.planner.serial.BlockPlacer.Failure;
import fayline.flow.planner.serial.BlockPlacer.Outcome;
import fayline.flow.planner.serial.Blocks.Block;
import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;

/** One pass: blocks put in one after the other by a priority. */
final class Run {
    private final Net net;
    private final List<Block> blocks;
    private final double[] priority;
    private final Scene scene;
    private final BlockPlacer placer;
    private final Map<Integer, String> reasons;

    /**
     * A pass about to begin.
     *
     * @param priority of each block; higher goes first among those whose turn it may be
     * @param lacking reasons of steps that cannot be planned at all
     */
    Run(Net net, List<Block> blocks, double[] priority, double waitPerHands, Map<Integer, String> lacking) {
        this.net = net;
        this.blocks = blocks;
        this.priority = priority;
        reasons = new LinkedHashMap<>(lacking);
        Board board = new Board(net);
        scene = new Scene(net, board);
        placer = new BlockPlacer(net, board, scene, waitPerHands);
        new Happened(net, board, scene).place();
    }

    Map<Integer, String> reasons() {
        return reasons;
    }

    List<Placement> placements() {
        return net.tasks.stream()
                .filter(t -> scene.isPlaced(t.index))
                .map(t -> scene.placed(t.index))
                .toList();
    }

    /** Less is better: unplanned steps, then the finish with the price of missed windows, then how soon all is over. */
    double cost() {
        double sum = 0;
        double finish = 0;
        double price = 0;
        List<Placement> all = placements();
        for (Placement p : all) {
            finish = Math.max(finish, p.end());
            sum += p.end();
            price += p.price();
        }
        return 1e7 * reasons.size() + finish + BlockPlacer.WAIT_PER_PRICE * price + 0.2 * sum / Math.max(1, all.size());
    }

    Run go() {
        boolean[] through = new boolean[blocks.size()];
        boolean[] urgent = urgent();
        for (int i = 0; i < blocks.size(); i++) {
            int best = -1;
            for (Block b : blocks) {
                if (!through[b.index()]
                        && b.before().stream().allMatch(x -> through[x])
                        && comesFirst(b.index(), best, urgent)) {
                    best = b.index();
                }
            }
            placeBlock(blocks.get(best));
            through[best] = true;
        }
        return this;
    }

    private boolean comesFirst(int block, int best, boolean[] urgent) {
        if (best < 0 || urgent[block] != urgent[best]) {
            return best < 0 || urgent[block];
        }
        return priority[block] > priority[best];
    }

    /**
     * Blocks with a begun hold and all they wait for: their places stay taken until they are in. So with what must begin by a
     * moment that the lead has set, before others take its people and places.
     */
    private boolean[] urgent() {
        boolean[] urgent = new boolean[blocks.size()];
        Deque<Integer> open = new ArrayDeque<>();
        for (Block b : blocks) {
            if (b.tasks().stream()
                    .map(net::task)
                    .anyMatch(t -> t.asked.isDated() || t.keeps.stream().anyMatch(k -> net.keep(k).begun))) {
                open.add(b.index());
            }
        }
        while (!open.isEmpty()) {
            int b = open.pop();
            if (!urgent[b]) {
                urgent[b] = true;
                open.addAll(blocks.get(b).before());
            }
        }
        return urgent;
    }

    private void placeBlock(Block block) {
        List<Integer> tasks = new ArrayList<>(block.tasks());
        dropBehindUnplanned(tasks);
        while (!tasks.isEmpty()) {
            Outcome outcome = placer.place(tasks);
            if (outcome.failure().isEmpty()) {
                return;
            }
            Failure failure = outcome.failure().get();
            give(failure.task(), new FailureWords(net, scene).say(failure), reasons);
            tasks.removeIf(reasons::containsKey);
            dropBehindUnplanned(tasks);
        }
    }

    private void dropBehindUnplanned(List<Integer> tasks) {
        spread(net, reasons, reasons.keySet().stream().toList());
        tasks.removeIf(reasons::containsKey);
    }

    private void give(int task, String reason, Map<Integer, String> reasons) {
        reasons.put(task, reason);
        spread(net, reasons, List.of(task));
    }

    /** Takes along the other steps of holds not begun yet: without an end they would take their places from others for good. */
    static void spreadOverHolds(Net net, Map<Integer, String> reasons) {
        spread(net, reasons, List.copyOf(reasons.keySet()));
        Deque<Integer> open = new ArrayDeque<>(reasons.keySet());
        while (!open.isEmpty()) {
            Task task = net.task(open.pop());
            for (int k : task.keeps) {
                Net.Keep keep = net.keep(k);
                for (int t : keep.begun ? List.<Integer>of() : keep.tasks) {
                    if (!reasons.containsKey(t)) {
                        int before = reasons.size();
                        reasons.put(
                                t,
                                "It would take a " + keep.hold.kind().name().toLowerCase(Locale.ROOT)
                                        + " that is not given back, because \"" + task.step.title() + "\" of "
                                        + task.step.made() + " cannot be planned.");
                        spread(net, reasons, List.of(t));
                        open.addAll(reasons.keySet().stream().skip(before).toList());
                    }
                }
            }
        }
    }

    /** What cannot be planned takes along what comes after it, and what must not be begun without it. */
    static void spread(Net net, Map<Integer, String> reasons, Collection<Integer> from) {
        Deque<Integer> open = new ArrayDeque<>(from);
        while (!open.isEmpty()) {
            Task task = net.task(open.pop());
            for (int next : new TreeSet<>(task.next)) {
                if (net.task(next).isTodo() && !reasons.containsKey(next)) {
                    reasons.put(
                            next,
                            "It comes after \"" + task.step.title() + "\" of " + task.step.made()
                                    + ", which cannot be planned.");
                    open.add(next);
                }
            }
            for (Need need : task.needs) {
                if (need.isHard() && need.task() != Net.UNKNOWN) {
                    Task earlier = net.task(need.task());
                    if (earlier.isTodo() && !reasons.containsKey(earlier.index)) {
                        reasons.put(
                                earlier.index,
                                "It opens a window for \"" + task.step.title() + "\" of " + task.step.made()
                                        + ", which cannot be planned, and must not be begun without it.");
                        open.add(earlier.index);
                    }
                }
            }
        }
    }
}
