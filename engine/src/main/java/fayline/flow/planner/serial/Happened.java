package fayline.flow.planner.serial;

import fayline.flow.plan.Place;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.planner.serial.Net.Keep;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Puts running and done steps on the board as they happened, and what begun holds keep. */
final class Happened {
    private final Net net;
    private final Board board;
    private final Scene scene;

    Happened(Net net, Board board, Scene scene) {
        this.net = net;
        this.board = board;
        this.scene = scene;
    }

    void place() {
        net.keeps.stream().filter(k -> k.begun).forEach(k -> scene.begin(k, places(k)));
        for (Task task : net.tasks) {
            if (!task.isTodo()) {
                Set<Integer> rooms = new LinkedHashSet<>();
                for (String id : task.step.actual().places()) {
                    int place = net.placeOf.getOrDefault(id, Net.UNKNOWN);
                    if (place >= 0 && net.roomOf[place] >= 0) {
                        rooms.add(net.roomOf[place]);
                    }
                }
                scene.placeFixed(placement(task), rooms);
            }
        }
        scene.occupyBegun();
    }

    /** What the record names, filled up from the candidates where it names too few. */
    private List<Integer> places(Keep keep) {
        Set<Integer> places = new LinkedHashSet<>();
        for (int t : keep.tasks) {
            if (!net.task(t).isTodo()) {
                for (String id : net.task(t).step.actual().places()) {
                    int place = net.placeOf.getOrDefault(id, Net.UNKNOWN);
                    if (place >= 0
                            && net.places.get(place).kind() == keep.hold.kind()
                            && keep.hold.candidates().contains(id)
                            && places.size() < keep.hold.count()) {
                        places.add(place);
                    }
                }
            }
        }
        for (boolean free : new boolean[] {true, false}) {
            for (int place : keep.usable) {
                if (places.size() < keep.hold.count() && (!free || !isNamed(place))) {
                    places.add(place);
                }
            }
        }
        return List.copyOf(places);
    }

    private boolean isNamed(int place) {
        String id = net.places.get(place).id();
        return net.tasks.stream()
                .anyMatch(t -> t.step.state() == WorkStep.State.RUNNING
                        && t.step.actual().places().contains(id));
    }

    private Placement placement(Task task) {
        Actual actual = task.step.actual();
        boolean done = task.step.state() == WorkStep.State.DONE;
        int start = actual.started()
                .or(actual::handsEnded)
                .or(actual::ended)
                .map(net.time::floor)
                .orElse(net.now);
        List<Integer> people = actual.people().stream()
                .map(net.personOf::get)
                .filter(Objects::nonNull)
                .distinct()
                .toList();
        List<int[]> stretches = List.of();
        int handsEnd = start;
        if (actual.handsEnded().isPresent() || done) {
            handsEnd = Math.max(
                    start,
                    actual.handsEnded().or(actual::ended).map(net.time::floor).orElse(start));
            stretches = handsEnd > start ? List.of(new int[] {start, handsEnd}) : List.of();
        } else if (task.hasHands()) {
            stretches = expected(task, start, people);
            handsEnd = stretches.get(stretches.size() - 1)[1];
        } else {
            // No hands were asked for; whoever noted the start has left by now.
            handsEnd = start;
        }
        int end = net.time.knows(task.step.alone()) ? net.time.over(handsEnd, task.step.alone()) : handsEnd;
        if (actual.ended().isPresent()) {
            end = Math.max(handsEnd, net.time.floor(actual.ended().get()));
        } else if (done) {
            end = handsEnd;
        } else {
            end = Math.max(end, net.now);
        }
        List<List<Integer>> chosen = new ArrayList<>();
        task.keeps.forEach(k -> chosen.add(scene.placesOf(k)));
        return new Placement(task.index, start, handsEnd, end, people, stretches, chosen, List.of(), 0);
    }

    /** When the hands of a running step are expected to leave. */
    private List<int[]> expected(Task task, int start, List<Integer> people) {
        int crew = task.step.actual().people().size();
        CrewTime least = task.step.hands().get(0);
        CrewTime time = task.step.hands().stream()
                .filter(h -> h.people() <= crew)
                .reduce((a, b) -> b)
                .orElse(least);
        int minutes = Math.max(1, time.minutes());
        int through = start + minutes;
        if (task.step.interruptible() && !people.isEmpty()) {
            List<int[]> stretches = overHours(start, minutes, people);
            int end = stretches.isEmpty() ? through : stretches.get(stretches.size() - 1)[1];
            if (!stretches.isEmpty() && end > net.now) {
                return stretches;
            }
            // Without known hours of its people nobody can say when; through is the least it can be.
            through = end;
        }
        // Overdue, it goes on at least until now.
        return List.of(new int[] {start, Math.max(Math.max(net.now, start + 1), through)});
    }

    private List<int[]> overHours(int start, int minutes, List<Integer> people) {
        List<int[]> stretches = new ArrayList<>();
        int at = start;
        int left = minutes;
        while (left > 0) {
            int next = at;
            for (int round = 0; round < people.size() + 1; round++) {
                for (int p : people) {
                    next = Math.max(next, board.people.get(p).nextWorking(next));
                }
            }
            if (next >= TimeLine.FOREVER) {
                return List.of();
            }
            int until = TimeLine.FOREVER;
            for (int p : people) {
                until = Math.min(until, board.people.get(p).worksUntil(next));
            }
            // Hands that began before the hours did were at it all the same.
            int from = stretches.isEmpty() ? start : next;
            if (until > next) {
                int end = Math.min(until, next + left);
                stretches.add(new int[] {from, end});
                left -= end - next;
                at = end;
            } else {
                at = next + 1;
            }
        }
        return stretches;
    }

    /** Whether a place may take what a step does there. */
    static boolean allows(Place place, Task task) {
        return place.kind() != Place.Kind.STAND || ((!task.wet || place.wet()) && (!task.dust || place.dust()));
    }
}
