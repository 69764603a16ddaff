package fayline.flow.planner.serial;

import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import fayline.flow.planner.serial.StartSearch.Ask;
import fayline.flow.planner.serial.StartSearch.Found;
import fayline.flow.planner.serial.StartSearch.Obstacle;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts one block on the board: every step at its earliest start, and what opened a window later where it shuts too early. */
final class BlockPlacer {
    private static final int MOST_ROUNDS = 400;
    private static final int PUSHES_BEFORE_MORE_HANDS = 3;
    private static final int DAY_MIN = 24 * 60;
    private static final int LEAST_SHIFT_MIN = 12 * 60;

    /** A person-minute of redone work is worth this many minutes of waiting: common practice, no source. */
    static final double WAIT_PER_PRICE = 6;

    /** Minutes of waiting that one person-minute of a larger crew is worth: a shop has other work too. */
    private final double waitPerHands;

    /** A whole block placed, or what was in the way of which step. */
    record Outcome(List<Placement> placements, Optional<Failure> failure, double cost, boolean softPushed, Way way) {}

    /** What was in the way of a step; {@code need} for a window. */
    record Failure(int task, Optional<Obstacle> obstacle, Optional<Need> need, int clash) {}

    /** How one attempt goes about it. */
    record Way(boolean quickest, boolean mayMiss) {}

    private static final double DRAWN_OUT = 0.1;

    private final Net net;
    private final Scene scene;
    private final StartSearch search;
    private final int[] notBefore;
    private final int[] longest;
    private final int[] pushes;
    private boolean softPushed;
    private Optional<Failure> lastPush = Optional.empty();

    BlockPlacer(Net net, Board board, Scene scene, double waitPerHands) {
        this.net = net;
        this.scene = scene;
        this.waitPerHands = waitPerHands;
        search = new StartSearch(net, board, scene);
        int n = net.tasks.size();
        notBefore = new int[n];
        longest = new int[n];
        pushes = new int[n];
    }

    /** Places the tasks for good if that is possible; else leaves the board as it was. */
    Outcome place(List<Integer> tasks) {
        Outcome best = attempt(tasks, new Way(false, false), new int[0]);
        if (hasCrewChoice(tasks)) {
            best = better(best, attempt(tasks, new Way(true, false), new int[0]));
        }
        if (best.failure().isPresent() || best.softPushed()) {
            best = better(best, attempt(tasks, new Way(false, true), new int[0]));
            best = better(best, attempt(tasks, new Way(true, true), new int[0]));
        }
        if (best.failure().isEmpty()) {
            best = shorterHolds(tasks, best);
            best.placements().forEach(scene::place);
        }
        return best;
    }

    private boolean hasCrewChoice(List<Integer> tasks) {
        return tasks.stream().anyMatch(t -> net.task(t).step.hands().size() > 1);
    }

    private static Outcome better(Outcome a, Outcome b) {
        if (a.failure().isPresent() != b.failure().isPresent()) {
            return a.failure().isPresent() ? b : a;
        }
        if (a.failure().isPresent()) {
            return b.way().mayMiss() ? b : a;
        }
        return b.cost() < a.cost() - 1e-9 ? b : a;
    }

    /** Begins holds later by whole days where the block ends no later for it, so that places are not taken for nothing. */
    private Outcome shorterHolds(List<Integer> tasks, Outcome best) {
        int[] starts = new int[net.tasks.size()];
        int[] handsMin = new int[net.tasks.size()];
        best.placements().forEach(p -> {
            starts[p.task()] = p.start();
            handsMin[p.task()] = p.end() - p.start();
        });
        Set<Integer> in = new HashSet<>(tasks);
        int[] later = new int[net.tasks.size()];
        boolean any = false;
        for (int i = tasks.size() - 1; i >= 0; i--) {
            Task task = net.task(tasks.get(i));
            int room = task.keeps.isEmpty() ? 0 : TimeLine.FOREVER;
            for (int next : task.next) {
                room = in.contains(next)
                        ? Math.min(room, starts[next] - starts[task.index] - handsMin[task.index])
                        : Math.min(room, 0);
            }
            if (room >= LEAST_SHIFT_MIN && room < TimeLine.FOREVER) {
                int shift = room / DAY_MIN * DAY_MIN;
                starts[task.index] += shift;
                later[task.index] = shift > 0 ? starts[task.index] : 0;
                any |= shift > 0;
            }
        }
        if (!any) {
            return best;
        }
        Outcome shifted = attempt(tasks, best.way(), later);
        return shifted.failure().isEmpty() && shifted.cost() <= best.cost() ? shifted : best;
    }

    private Outcome attempt(List<Integer> tasks, Way way, int[] laterStarts) {
        for (int t : tasks) {
            notBefore[t] = laterStarts.length > 0 ? laterStarts[t] : 0;
            longest[t] = Integer.MAX_VALUE;
            pushes[t] = 0;
        }
        softPushed = false;
        lastPush = Optional.empty();
        Set<Integer> in = new HashSet<>(tasks);
        scene.forgetLeast(in);
        Scene.Mark mark = scene.mark();
        Optional<Failure> failure = Optional.empty();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<Placement> placements = new ArrayList<>();
            boolean again = false;
            failure = Optional.empty();
            for (int t : tasks) {
                Step step = step(net.task(t), way, in);
                again = step.again;
                failure = step.failure.map(this::atRoot);
                if (again || failure.isPresent()) {
                    break;
                }
                Placement p = step.placement.orElseThrow();
                scene.place(p);
                placements.add(p);
            }
            scene.backTo(mark, tasks);
            if (!again) {
                return new Outcome(List.copyOf(placements), failure, cost(placements), softPushed, way);
            }
            failure = lastPush;
        }
        return new Outcome(List.of(), failure, Double.MAX_VALUE, softPushed, way);
    }

    /** What a window pushed beyond the known hours fails for the window, not for want of people at the far end. */
    private Failure atRoot(Failure failure) {
        return lastPush.filter(p -> p.need().isPresent()
                        && (p.task() == failure.task() || p.need().orElseThrow().task() == failure.task()))
                .orElse(failure);
    }

    private record Step(Optional<Placement> placement, boolean again, Optional<Failure> failure) {}

    private Step step(Task task, Way way, Set<Integer> in) {
        int from = Math.max(task.earliest, notBefore[task.index]);
        boolean hurried = false;
        for (Need need : task.needs) {
            from = Math.max(from, need.opensAt(net.time, scene.placed(need.task())));
            hurried |= need.isHard();
        }
        Ask ask = new Ask(task, from, longest[task.index], way.quickest, !hurried);
        Found found = search.find(ask);
        if (found.obstacle() == Obstacle.HOLD && found.placement().isEmpty()) {
            boolean learns = !net.keep(found.keep()).begun && found.minutes() > scene.least(found.keep());
            if (learns) {
                scene.needAtLeast(found.keep(), found.minutes());
                lastPush = failure(task, Obstacle.PLACE);
                return new Step(Optional.empty(), true, Optional.empty());
            }
        }
        if (found.placement().isEmpty()) {
            return new Step(Optional.empty(), false, failure(task, found.obstacle()));
        }
        Placement p = found.placement().get();
        for (Need need : task.needs) {
            boolean movable = in.contains(need.task());
            boolean mustKeep = need.isHard() || (need.shuts() && movable && !way.mayMiss);
            if (mustKeep && p.start() > need.lastAt(net.time, scene.placed(need.task()))) {
                lastPush = Optional.of(new Failure(task.index, Optional.empty(), Optional.of(need), -1));
                if (!movable) {
                    return new Step(Optional.empty(), false, lastPush);
                }
                push(task, need, p);
                return new Step(Optional.empty(), true, Optional.empty());
            }
        }
        return new Step(Optional.of(p), false, Optional.empty());
    }

    private Optional<Failure> failure(Task task, Obstacle obstacle) {
        return Optional.of(new Failure(task.index, Optional.of(obstacle), Optional.empty(), search.clashWith()));
    }

    /** Moves what opened the window later, or gives it or its follower more hands where moving alone does not help. */
    private void push(Task late, Need need, Placement latePlacement) {
        softPushed |= !need.isHard();
        Placement earlier = scene.placed(need.task());
        int n = ++pushes[need.task()];
        boolean more = (need.moment().equals("start") || n > PUSHES_BEFORE_MORE_HANDS)
                && fasten(need.task(), earlier.handsEnd() - earlier.start());
        if (!more && n > 2 * PUSHES_BEFORE_MORE_HANDS) {
            more = fasten(late.index, latePlacement.handsEnd() - latePlacement.start());
        }
        if (!more || n > PUSHES_BEFORE_MORE_HANDS) {
            int wanted = net.time.back(latePlacement.start(), need.shut());
            int by = Math.max(5, wanted - need.momentOf(earlier));
            notBefore[need.task()] = Math.max(notBefore[need.task()], earlier.start() + by);
        }
    }

    /** Allows only crews that are faster than a time, if there are such. */
    private boolean fasten(int t, int minutes) {
        int least = net.task(t).step.hands().stream()
                .mapToInt(h -> h.minutes())
                .min()
                .orElse(Integer.MAX_VALUE);
        if (least < Math.min(minutes, longest[t])) {
            longest[t] = Math.min(minutes, longest[t]) - 1;
            return true;
        }
        return false;
    }

    private double cost(List<Placement> placements) {
        int end = placements.stream().mapToInt(Placement::end).max().orElse(0);
        double starts = 0;
        double hands = 0;
        int price = 0;
        for (Placement p : placements) {
            starts += p.start();
            price += p.price();
            for (int[] s : p.stretches()) {
                hands += (double) (s[1] - s[0]) * p.people().size();
            }
        }
        double spread = placements.isEmpty() ? 0 : end - starts / placements.size();
        // A block that is drawn out keeps its mould, its stand and its windows waiting.
        return end + DRAWN_OUT * spread + WAIT_PER_PRICE * price + waitPerHands * hands;
    }
}
