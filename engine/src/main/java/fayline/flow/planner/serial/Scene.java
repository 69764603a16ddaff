package fayline.flow.planner.serial;

import fayline.flow.planner.serial.Net.Keep;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * What is placed so far and how the holds stand. A hold some of whose steps are not placed yet takes its places for ever, so
 * that nobody puts anything behind it before its end is known.
 */
final class Scene {
    private final Net net;
    private final Board board;
    private final @Nullable Placement[] placed;
    private final int[] starts;
    private final int[] ends;
    private final int[] left;
    private final int[] least;
    private final List<List<Integer>> places;
    private final Deque<Taken> changes = new ArrayDeque<>();

    /** How a hold stood before one more of its steps was placed. */
    private record Taken(int keep, int start, int end, List<Integer> places) {}

    Scene(Net net, Board board) {
        this.net = net;
        this.board = board;
        placed = new @Nullable Placement[net.tasks.size()];
        int n = net.keeps.size();
        starts = new int[n];
        ends = new int[n];
        left = new int[n];
        least = new int[n];
        places = new ArrayList<>();
        for (Keep keep : net.keeps) {
            starts[keep.index] = TimeLine.FOREVER;
            ends[keep.index] = -TimeLine.FOREVER;
            left[keep.index] = keep.tasks.size();
            places.add(List.of());
        }
    }

    Placement placed(int task) {
        Placement p = placed[task];
        if (p == null) {
            throw new IllegalStateException(net.task(task).step.id() + " is not placed");
        }
        return p;
    }

    boolean isPlaced(int task) {
        return placed[task] != null;
    }

    boolean isOpen(int keep) {
        return !places.get(keep).isEmpty();
    }

    /** Whether all its steps are placed, so that its places are free again after the last. */
    boolean isClosed(int keep) {
        return left[keep] == 0;
    }

    List<Integer> placesOf(int keep) {
        return places.get(keep);
    }

    int startOf(int keep) {
        return starts[keep];
    }

    int endOf(int keep) {
        return ends[keep];
    }

    /** How long a place must be free before the hold may begin there. */
    int least(int keep) {
        return least[keep];
    }

    void needAtLeast(int keep, int minutes) {
        least[keep] = minutes;
    }

    /** Begins anew for some tasks. A hold with a step that is neither placed nor among them will never be given back. */
    void forgetLeast(Set<Integer> tasks) {
        for (int task : tasks) {
            for (int k : net.task(task).keeps) {
                boolean ends = true;
                for (int t : net.keep(k).tasks) {
                    ends &= placed[t] != null || tasks.contains(t);
                }
                least[k] = ends ? 0 : TimeLine.FOREVER;
            }
        }
    }

    /** Puts a placement on the board. */
    void place(Placement p) {
        placed[p.task()] = p;
        Set<Integer> rooms = new LinkedHashSet<>();
        List<Integer> keeps = net.task(p.task()).keeps;
        Iterator<List<Integer>> chosen = p.chosen().iterator();
        for (int k : keeps) {
            List<Integer> where = chosen.next();
            where.stream().map(w -> net.roomOf[w]).filter(r -> r >= 0).forEach(rooms::add);
            take(k, where, p.start(), p.end());
        }
        board.takeHands(p, rooms);
    }

    private void take(int k, List<Integer> where, int start, int end) {
        boolean wasOpen = isOpen(k);
        int before = starts[k];
        changes.push(new Taken(k, before, ends[k], places.get(k)));
        starts[k] = Math.min(before, start);
        ends[k] = Math.max(ends[k], end);
        left[k]--;
        int to = left[k] == 0 ? ends[k] : TimeLine.FOREVER;
        for (int place : where) {
            if (wasOpen) {
                board.leavePlace(place, before, TimeLine.FOREVER, k);
            }
            board.takePlace(place, starts[k], to, k);
        }
        places.set(k, where);
    }

    /** Fixes the places of a begun hold before its running and done steps are put on the board. */
    void begin(Keep keep, List<Integer> where) {
        places.set(keep.index, where);
    }

    /** Counts a running or done step towards its holds. */
    void placeFixed(Placement p, Iterable<Integer> rooms) {
        placed[p.task()] = p;
        for (int k : net.task(p.task()).keeps) {
            starts[k] = Math.min(starts[k], p.start());
            ends[k] = Math.max(ends[k], p.end());
            left[k]--;
        }
        board.takeHands(p, rooms);
    }

    /** Puts begun holds on the board, when all their running and done steps are known. */
    void occupyBegun() {
        for (Keep keep : net.keeps) {
            int k = keep.index;
            if (keep.begun) {
                for (int place : places.get(k)) {
                    board.takePlace(place, starts[k], left[k] == 0 ? ends[k] : TimeLine.FOREVER, k);
                }
            }
        }
    }

    /** A state to come back to: how much was on the board and how often the holds had changed. */
    record Mark(int board, int changes) {}

    Mark mark() {
        return new Mark(board.mark(), changes.size());
    }

    void backTo(Mark mark, Iterable<Integer> tasks) {
        board.backTo(mark.board);
        while (changes.size() > mark.changes) {
            Taken before = changes.pop();
            starts[before.keep] = before.start;
            ends[before.keep] = before.end;
            left[before.keep]++;
            places.set(before.keep, before.places);
        }
        for (int t : tasks) {
            placed[t] = null;
        }
    }
}
