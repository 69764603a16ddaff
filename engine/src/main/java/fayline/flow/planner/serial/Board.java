package fayline.flow.planner.serial;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/** What people, places and rooms are taken by so far. Changes since a mark can be taken back. */
final class Board {
    final List<Person> people = new ArrayList<>();
    final List<Lane> places = new ArrayList<>();
    private final List<Lane> dust = new ArrayList<>();
    private final List<Lane> wet = new ArrayList<>();
    private final Net net;
    private final int settles;
    private final Deque<Change> changes = new ArrayDeque<>();

    private record Change(Lane lane, int from, int to, int owner, boolean added, int person) {}

    Board(Net net) {
        this.net = net;
        settles = Math.max(0, net.work.dustSettlesMin());
        for (int i = 0; i < net.hours.size(); i++) {
            people.add(new Person(i, net.work.people().get(i), net.hours.get(i)));
        }
        net.tasks.stream()
                .flatMap(t -> t.asked.with().stream())
                .filter(p -> p != Net.UNKNOWN)
                .forEach(p -> people.get(p).wanted++);
        net.places.forEach(p -> places.add(new Lane()));
        for (int i = 0; i < net.rooms; i++) {
            dust.add(new Lane());
            wet.add(new Lane());
        }
    }

    int mark() {
        return changes.size();
    }

    void backTo(int mark) {
        while (changes.size() > mark) {
            Change c = changes.pop();
            if (c.added) {
                c.lane.remove(c.from, c.to, c.owner);
            } else {
                c.lane.add(c.from, c.to, c.owner);
            }
            if (c.person >= 0) {
                people.get(c.person).load -= c.to - c.from;
            }
        }
    }

    private void add(Lane lane, int from, int to, int owner, int person) {
        if (to > from) {
            lane.add(from, to, owner);
            changes.push(new Change(lane, from, to, owner, true, person));
        }
    }

    void takePlace(int place, int from, int to, int keep) {
        add(places.get(place), from, to, keep, -1);
    }

    void leavePlace(int place, int from, int to, int keep) {
        if (to > from) {
            places.get(place).remove(from, to, keep);
            changes.push(new Change(places.get(place), from, to, keep, false, -1));
        }
    }

    /** Takes the people, and the air of the rooms if it is dusty or wet. */
    void takeHands(Placement p, Iterable<Integer> rooms) {
        Net.Task task = net.task(p.task());
        for (int[] s : p.stretches()) {
            for (int person : p.people()) {
                people.get(person).load += s[1] - s[0];
                add(people.get(person).busy, s[0], s[1], p.task(), person);
            }
            if (task.dust || task.wet) {
                for (int room : rooms) {
                    add((task.dust ? dust : wet).get(room), s[0], s[1], p.task(), -1);
                }
            }
        }
    }

    /** 0 if the air of a room allows the stretches; else by how much they must begin later at least. */
    int airDelay(Net.Task task, List<int[]> stretches, int room) {
        int delay = 0;
        for (int[] s : stretches) {
            if (task.wet) {
                delay = Math.max(delay, delay(dust.get(room), s[0] - settles, s[1]));
            } else if (task.dust) {
                delay = Math.max(delay, delay(wet.get(room), s[0], s[1] + settles));
            }
        }
        return delay;
    }

    private static int delay(Lane lane, int from, int to) {
        int delay = 0;
        for (int i = lane.endingAfter(from); i < lane.size() && lane.from(i) < to; i++) {
            if (lane.to(i) > from) {
                delay = Math.max(delay, lane.to(i) - from);
            }
        }
        return delay;
    }

    /** Whether a hold may have a place for a time: nothing but itself is there, begun holds aside if it has begun too. */
    boolean isFree(int place, int from, int to, Net.Keep keep) {
        return firstClash(place, from, to, keep) < 0;
    }

    /** Owner of the first other hold in a place within a time, or -1. */
    int firstClash(int place, int from, int to, Net.Keep keep) {
        Lane lane = places.get(place);
        for (int i = lane.endingAfter(from); i < lane.size() && lane.from(i) < to; i++) {
            if (lane.to(i) > from && concerns(lane.owner(i), keep)) {
                return lane.owner(i);
            }
        }
        return -1;
    }

    private boolean concerns(int owner, Net.Keep keep) {
        return owner != keep.index && !(keep.begun && net.keep(owner).begun);
    }

    /** The first minute from t on at which a place is free of other holds. */
    int clearFrom(int place, int t, Net.Keep keep) {
        Lane lane = places.get(place);
        int s = t;
        for (int i = lane.endingAfter(t); i < lane.size() && lane.from(i) <= s; i++) {
            if (concerns(lane.owner(i), keep)) {
                s = Math.max(s, lane.to(i));
            }
        }
        return s;
    }

    /** The first minute from t on at which a place is free of other holds for so long. */
    int clearFor(int place, int t, int minutes, Net.Keep keep) {
        Lane lane = places.get(place);
        int s = clearFrom(place, t, keep);
        for (int i = lane.endingAfter(s); i < lane.size() && s < TimeLine.FOREVER; i++) {
            if (concerns(lane.owner(i), keep) && lane.to(i) > s && lane.from(i) < s + Math.max(1, minutes)) {
                s = clearFrom(place, lane.to(i), keep);
            }
        }
        return s;
    }

    /** Whether anybody is in the shop. */
    boolean isManned(int t) {
        for (Person p : people) {
            if (p.presentUntil(t) > t) {
                return true;
            }
        }
        return false;
    }

    /** When somebody is in the shop next. */
    int nextManned(int t) {
        int next = TimeLine.FOREVER;
        for (Person p : people) {
            next = Math.min(next, p.nextPresent(t));
        }
        return next;
    }

    /** Whether somebody but one person is in the shop all through a stretch. */
    boolean isAccompanied(int alone, int from, int to) {
        int t = from;
        while (t < to) {
            int until = t;
            for (Person p : people) {
                if (p.index != alone) {
                    until = Math.max(until, p.presentUntil(t));
                }
            }
            if (until == t) {
                return false;
            }
            t = until;
        }
        return true;
    }
}
