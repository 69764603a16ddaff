package fayline.flow.planner.serial;

import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.planner.serial.Crews.Crew;
import fayline.flow.planner.serial.Net.Keep;
import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Finds the earliest start of one step on a board. From a start that fails it goes on to the next moment at which what was in
 * the way may have ended: in between nothing can get better.
 */
final class StartSearch {
    private static final int RASTER_MIN = 5;
    private static final int NEAT_RASTER_MIN = 15;
    private static final int MOST_STARTS = 6000;

    /** What stood in the way. */
    enum Obstacle {
        PEOPLE,
        PLACE,
        AIR,
        WATCH,
        COMPANY,
        /** A hold cannot be made to last so long where it has begun. */
        HOLD,
        /** It must begin by a moment that is over before anything else is looked at. */
        LATE
    }

    /** How a step is to be placed. */
    record Ask(Task task, int notBefore, int longestMin, boolean quickest, boolean neat, Optional<Wanted> wanted) {
        Ask(Task task, int notBefore, int longestMin, boolean quickest, boolean neat) {
            this(task, notBefore, longestMin, quickest, neat, Optional.empty());
        }
    }

    /**
     * Who and where is wanted, by index. Before {@code othersFrom} nobody else is asked; from then on others may do it too.
     * Where no people are named, anybody may be in a crew of that size.
     */
    record Wanted(List<Integer> people, int size, List<Integer> places, int othersFrom) {}

    /** A placement, or what stood in the way. */
    record Found(Optional<Placement> placement, Obstacle obstacle, int keep, int minutes) {}

    private final Net net;
    private final Board board;
    private final Crews crews;
    private final Scene scene;

    // State of one search: the next start worth a try and what was in the way last.
    private int next;
    private Obstacle obstacle = Obstacle.PEOPLE;
    private int keepInWay = -1;
    private int keepMinutes;
    private int clashWith = -1;
    private List<Integer> preferred = List.of();
    private boolean onlyPreferred;

    StartSearch(Net net, Board board, Scene scene) {
        this.net = net;
        this.board = board;
        this.scene = scene;
        crews = new Crews(board);
    }

    /** The other hold that was in the way last, or -1. */
    int clashWith() {
        return clashWith;
    }

    Found find(Ask ask) {
        Task task = ask.task();
        Choice anybody = new Choice(options(ask), task.hasHands() ? crews.order() : List.of());
        Choice own = ask.wanted().map(w -> own(w, anybody)).orElse(anybody);
        Choice ownFirst = ask.wanted().isPresent() ? own.then(anybody) : anybody;
        int othersFrom = ask.wanted().map(Wanted::othersFrom).orElse(-TimeLine.FOREVER);
        preferred = ask.wanted().map(Wanted::places).orElse(List.of());
        clashWith = -1;
        int t = aligned(task, ask.notBefore());
        int last = Math.min(net.horizon, task.asked.last());
        if (t > last && last < net.horizon) {
            obstacle = Obstacle.LATE;
        }
        for (int i = 0; i < MOST_STARTS && t <= last; i++) {
            keepInWay = -1;
            next = TimeLine.FOREVER;
            Choice choice = t < othersFrom ? own : ownFirst;
            onlyPreferred = t < othersFrom && !preferred.isEmpty();
            Optional<Placement> placed = tryAt(task, t, choice.options(), choice.order());
            if (placed.isPresent()) {
                return new Found(neat(ask, placed.get(), choice.options(), choice.order()), obstacle, -1, 0);
            }
            if (keepInWay >= 0) {
                return new Found(Optional.empty(), Obstacle.HOLD, keepInWay, keepMinutes);
            }
            int then = Math.max(t + 1, next);
            t = aligned(task, t < othersFrom ? Math.min(then, othersFrom) : then);
        }
        return new Found(Optional.empty(), obstacle, -1, 0);
    }

    /** Crews to ask: by sizes and by people, each in the order in which they are tried. */
    private record Choice(List<CrewTime> options, List<Person> order) {
        Choice then(Choice others) {
            List<CrewTime> sizes = new ArrayList<>(options);
            others.options.stream().filter(o -> !options.contains(o)).forEach(sizes::add);
            List<Person> people = new ArrayList<>(order);
            others.order.stream().filter(p -> !order.contains(p)).forEach(people::add);
            return new Choice(sizes, people);
        }
    }

    private Choice own(Wanted wanted, Choice anybody) {
        List<CrewTime> sizes = anybody.options.stream()
                .filter(o -> o.people() == wanted.size())
                .toList();
        List<Person> people = wanted.people().stream().map(board.people::get).toList();
        return new Choice(sizes.isEmpty() ? anybody.options : sizes, people.isEmpty() ? anybody.order : people);
    }

    /** A quarter hour is easier to keep than a start at five past, where nothing hurries. */
    private Optional<Placement> neat(Ask ask, Placement p, List<CrewTime> options, List<Person> order) {
        int t = TimeLine.raster(p.start(), NEAT_RASTER_MIN);
        if (!ask.neat()
                || !ask.task().hasHands()
                || t == p.start()
                || t > ask.task().asked.last()) {
            return Optional.of(p);
        }
        Optional<Placement> later = tryAt(ask.task(), t, options, order);
        return later.filter(l -> l.price() == p.price() && l.handsEnd() - l.start() <= p.handsEnd() - p.start())
                .or(() -> Optional.of(p));
    }

    private static int aligned(Task task, int t) {
        return task.hasHands() && t < TimeLine.FOREVER ? TimeLine.raster(t, RASTER_MIN) : t;
    }

    private static List<CrewTime> options(Ask ask) {
        Comparator<CrewTime> effort = Comparator.comparingInt(c -> c.people() * c.minutes());
        Comparator<CrewTime> time = Comparator.comparingInt(CrewTime::minutes);
        List<CrewTime> options = new ArrayList<>(ask.task().step.hands());
        options.removeIf(c -> c.minutes() > ask.longestMin());
        options.sort(ask.quickest() ? time.thenComparing(effort) : effort.thenComparing(time));
        return options;
    }

    private void later(int t, Obstacle why) {
        obstacle = why;
        next = Math.min(next, t);
    }

    private Optional<Placement> tryAt(Task task, int t, List<CrewTime> options, List<Person> order) {
        if (!placesAreClear(task, t)) {
            return Optional.empty();
        }
        List<Integer> missed = new ArrayList<>();
        int price = 0;
        List<Integer> prices = new ArrayList<>();
        for (Need need : task.needs) {
            if (need.shuts() && need.price() >= 0 && t > need.lastAt(net.time, scene.placed(need.task()))) {
                missed.add(need.task());
                prices.add(need.price());
                price += need.price();
            }
        }
        if (!task.hasHands()) {
            return complete(task, t, t, List.of(), List.of(), missed, price);
        }
        boolean nobody = true;
        Practised practised = new Practised(task, scene);
        for (CrewTime option : options) {
            int minutes = option.minutes();
            for (int p : prices) {
                minutes += (p + option.people() - 1) / option.people();
            }
            Optional<Crew> crew = crews.find(task, option.people(), minutes, t, order, practised);
            if (crew.isPresent()) {
                nobody = false;
                Optional<Placement> placed = complete(
                        task,
                        t,
                        crew.get().handsEnd(),
                        crew.get().people(),
                        crew.get().stretches(),
                        missed,
                        price);
                if (placed.isPresent()) {
                    return placed;
                }
            }
        }
        for (int w : task.asked.with()) {
            if (w != Net.UNKNOWN && !order.contains(board.people.get(w))) {
                next = Math.min(next, board.people.get(w).nextFree(t, task.step.interruptible()));
            }
        }
        // Even where a crew was found and something else was in the way, another may fit once somebody more is free.
        for (Person p : order) {
            int free = p.nextFree(t, task.step.interruptible());
            next = Math.min(next, free);
        }
        if (nobody) {
            obstacle = Obstacle.PEOPLE;
            if (task.step.accompanied()) {
                next = Math.min(next, nextArrival(t));
            }
        }
        return Optional.empty();
    }

    private int nextArrival(int t) {
        int next = TimeLine.FOREVER;
        for (Person p : board.people) {
            next = Math.min(next, p.nextPresent(Math.max(t + 1, p.presentUntil(t))));
        }
        return next;
    }

    /** A cheap look at the places first: they are what is scarce. */
    private boolean placesAreClear(Task task, int t) {
        for (int k : task.keeps) {
            Keep keep = net.keep(k);
            if (scene.isOpen(k)) {
                continue;
            }
            int clear = 0;
            int soonest = TimeLine.FOREVER;
            for (int place : keep.usable) {
                int from = board.clearFor(place, t, scene.least(k), keep);
                if (from == t) {
                    clear++;
                } else {
                    soonest = Math.min(soonest, from);
                    clashWith = clashOr(clashWith, place, t, scene.least(k), keep);
                    if (keep.wanted.contains(place)) {
                        later(from, Obstacle.PLACE);
                        return false;
                    }
                }
            }
            if (clear < keep.hold.count()) {
                later(soonest, Obstacle.PLACE);
                return false;
            }
        }
        return true;
    }

    private int clashOr(int before, int place, int t, int minutes, Keep keep) {
        int clash = board.firstClash(place, t, t + Math.max(1, minutes), keep);
        return clash >= 0 ? clash : before;
    }

    private Optional<Placement> complete(
            Task task,
            int t,
            int handsEnd,
            List<Integer> people,
            List<int[]> stretches,
            List<Integer> missed,
            int price) {
        Span alone = task.step.alone();
        int end = net.time.over(handsEnd, alone);
        for (int watch : task.step.watchMin()) {
            if (!board.isManned(handsEnd + watch)) {
                int manned = board.nextManned(handsEnd + watch);
                later(manned >= TimeLine.FOREVER ? manned : t + manned - handsEnd - watch, Obstacle.WATCH);
                return Optional.empty();
            }
        }
        Set<Integer> rooms = new LinkedHashSet<>();
        List<List<Integer>> chosen = new ArrayList<>();
        List<Integer> taken = new ArrayList<>();
        for (int k : task.keeps) {
            List<Integer> places = scene.isOpen(k)
                    ? extended(task, net.keep(k), t, end, stretches)
                    : chosen(task, net.keep(k), t, end, stretches, taken);
            if (places.isEmpty() && net.keep(k).hold.count() > 0) {
                return Optional.empty();
            }
            chosen.add(places);
            taken.addAll(places);
            places.stream().map(p -> net.roomOf[p]).filter(r -> r >= 0).forEach(rooms::add);
        }
        return Optional.of(new Placement(task.index, t, handsEnd, end, people, stretches, chosen, missed, price));
    }

    /** Places of a hold that has begun, if they are free for the step as well. */
    private List<Integer> extended(Task task, Keep keep, int t, int end, List<int[]> stretches) {
        List<Integer> places = scene.placesOf(keep.index);
        int from = Math.min(scene.startOf(keep.index), t);
        int to = Math.max(scene.endOf(keep.index), end);
        for (int place : places) {
            if (!board.isFree(place, from, to, keep)) {
                clashWith = board.firstClash(place, from, to, keep);
                if (t < scene.startOf(keep.index) && board.isFree(place, scene.startOf(keep.index), to, keep)) {
                    later(scene.startOf(keep.index), Obstacle.PLACE);
                } else {
                    obstacle = Obstacle.PLACE;
                    if (keepInWay < 0 || to - from < keepMinutes) {
                        keepInWay = keep.index;
                        keepMinutes = to - from;
                    }
                }
                return List.of();
            }
            if (!airAllows(task, t, stretches, place)) {
                return List.of();
            }
        }
        return places;
    }

    private boolean airAllows(Task task, int t, List<int[]> stretches, int place) {
        int room = net.roomOf[place];
        int delay = room < 0 ? 0 : board.airDelay(task, stretches, room);
        if (delay > 0) {
            later(t + delay, Obstacle.AIR);
            // Interruptible work may fit between sooner.
            if (task.step.interruptible()) {
                later(t + NEAT_RASTER_MIN, Obstacle.AIR);
            }
        }
        return delay == 0;
    }

    private List<Integer> chosen(Task task, Keep keep, int t, int end, List<int[]> stretches, List<Integer> taken) {
        List<Integer> places = new ArrayList<>();
        int to = Math.max(end, t + scene.least(keep.index));
        List<Integer> usable = new ArrayList<>(keep.usable);
        usable.sort(Comparator.comparing((Integer p) -> !keep.wanted.contains(p))
                .thenComparing(p -> !preferred.contains(p)));
        for (int place : usable) {
            boolean asked = !onlyPreferred || preferred.contains(place) || keep.wanted.contains(place);
            if (asked && places.size() < keep.hold.count() && !taken.contains(place)) {
                int clear = board.clearFor(place, t, to - t, keep);
                if (clear > t) {
                    clashWith = clashOr(clashWith, place, t, to - t, keep);
                    later(clear, Obstacle.PLACE);
                } else if (airAllows(task, t, stretches, place)) {
                    places.add(place);
                }
            }
        }
        return places.size() == keep.hold.count() && places.containsAll(keep.wanted) ? places : List.of();
    }
}
