package fayline.flow.planner.serial;

import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Finds people for a step at a given start. */
final class Crews {
    /** Crews tried per start; interruptible work must be walked through for each. */
    private static final int MOST_TRIED = 60;
    /** A first stretch shorter than this is not worth fetching the tools for. */
    private static final int WORTH_MIN = 15;

    /** Who, and when their hands work. */
    record Crew(List<Integer> people, List<int[]> stretches) {
        int handsEnd() {
            return stretches.get(stretches.size() - 1)[1];
        }
    }

    private final Board board;

    Crews(Board board) {
        this.board = board;
    }

    /**
     * People in the order in which they are asked: who is not wanted elsewhere first, then few skills, so that those stay free;
     * then who has least to do.
     */
    List<Person> order() {
        List<Person> order = new ArrayList<>(board.people);
        order.sort(Comparator.<Person>comparingInt(p -> p.wanted)
                .thenComparingInt(p -> p.worker.skills().size())
                .thenComparingInt(p -> p.load)
                .thenComparingInt(p -> p.index));
        return order;
    }

    /** A crew of that size which starts at t and works so long, if there is one. */
    Optional<Crew> find(Task task, int size, int minutes, int t, List<Person> order, Practised practised) {
        boolean stops = task.step.interruptible();
        int least = stops ? Math.min(minutes, WORTH_MIN) : Math.max(1, minutes);
        List<Person> wanted = new ArrayList<>();
        for (int w : task.asked.with()) {
            if (w == Net.UNKNOWN
                    || task.asked.without().contains(w)
                    || board.people.get(w).freeUntil(t, stops) - t < least) {
                return Optional.empty();
            }
            wanted.add(board.people.get(w));
        }
        List<Person> able = new ArrayList<>();
        for (Person p : order) {
            boolean maybe = !wanted.contains(p) && !task.asked.without().contains(p.index);
            if (maybe && p.freeUntil(t, stops) - t >= least) {
                able.add(p);
            }
        }
        if (wanted.size() > size || wanted.size() + able.size() < size) {
            return Optional.empty();
        }
        return new Search(task, size, minutes, t, practised.among(able, size), practised).choose(0, wanted);
    }

    private final class Search {
        private final Task task;
        private final int size;
        private final int minutes;
        private final int t;
        private final List<Person> able;
        private final Practised practised;
        private int tried;

        Search(Task task, int size, int minutes, int t, List<Person> able, Practised practised) {
            this.practised = practised;
            this.task = task;
            this.size = size;
            this.minutes = minutes;
            this.t = t;
            this.able = able;
        }

        Optional<Crew> choose(int next, List<Person> chosen) {
            if (!canStillHaveSkills(chosen)) {
                return Optional.empty();
            }
            if (chosen.size() == size) {
                tried++;
                return complete(chosen);
            }
            for (int i = next; i <= able.size() - (size - chosen.size()) && tried < MOST_TRIED; i++) {
                chosen.add(able.get(i));
                Optional<Crew> crew = choose(i + 1, chosen);
                if (crew.isPresent()) {
                    return crew;
                }
                chosen.remove(chosen.size() - 1);
            }
            return Optional.empty();
        }

        private boolean canStillHaveSkills(List<Person> chosen) {
            int open = size - chosen.size();
            for (Map.Entry<String, Integer> need : task.step.skills().entrySet()) {
                int have = 0;
                for (Person p : chosen) {
                    if (p.worker.skills().contains(need.getKey())) {
                        have++;
                    }
                }
                if (have + open < need.getValue()) {
                    return false;
                }
            }
            return true;
        }

        private Optional<Crew> complete(List<Person> chosen) {
            if (!practised.fits(chosen)) {
                return Optional.empty();
            }
            List<int[]> stretches =
                    task.step.interruptible() ? stretches(chosen) : List.of(new int[] {t, t + Math.max(1, minutes)});
            if (stretches.isEmpty()) {
                return Optional.empty();
            }
            if (task.step.accompanied() && size == 1) {
                for (int[] s : stretches) {
                    if (!board.isAccompanied(chosen.get(0).index, s[0], s[1])) {
                        return Optional.empty();
                    }
                }
            }
            return Optional.of(
                    new Crew(chosen.stream().map(p -> p.index).sorted().toList(), stretches));
        }

        /** Work that stops over breaks and nights, but for no other work. Empty where other work is in the way. */
        private List<int[]> stretches(List<Person> crew) {
            List<int[]> stretches = new ArrayList<>();
            int at = t;
            int left = Math.max(1, minutes);
            while (left > 0) {
                int until = TimeLine.FOREVER;
                for (Person p : crew) {
                    until = Math.min(until, p.freeUntil(at, true));
                }
                if (until <= at) {
                    return List.of();
                }
                int end = Math.min(until, at + left);
                stretches.add(new int[] {at, end});
                left -= end - at;
                at = end;
                if (left > 0) {
                    at = together(crew, at);
                    if (at >= TimeLine.FOREVER) {
                        return List.of();
                    }
                }
            }
            return stretches;
        }

        private static int together(List<Person> crew, int from) {
            int at = from;
            boolean moved = true;
            while (moved && at < TimeLine.FOREVER) {
                moved = false;
                for (Person p : crew) {
                    int next = p.nextWorking(at);
                    if (next > at) {
                        at = next;
                        moved = true;
                    }
                }
            }
            return at;
        }
    }
}
