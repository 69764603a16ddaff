package fayline.flow.planner.serial;

import fayline.flow.plan.Hold;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.Place;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkWish;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The work by index, so that the search needs no look-ups by name. */
final class Net {
    static final int UNKNOWN = -1;

    final Work work;
    final TimeLine time;
    final int now;
    final int horizon;
    final List<Task> tasks = new ArrayList<>();
    final List<Keep> keeps = new ArrayList<>();
    final List<Place> places;
    /** Hours of the people, in the order of the work. */
    final List<Hours> hours;
    /** Room of each place; {@link #UNKNOWN} where it is in none. */
    final int[] roomOf;

    final int rooms;
    final Map<String, Integer> taskOf = new HashMap<>();
    final Map<String, Integer> placeOf = new HashMap<>();
    final Map<String, Integer> personOf = new HashMap<>();

    /** One step. */
    static final class Task {
        final int index;
        final WorkStep step;
        final int earliest;
        final Asked asked;
        final boolean wet;
        final boolean dust;
        final List<Need> needs = new ArrayList<>();
        /** Tasks that wait for this one. */
        final List<Integer> next = new ArrayList<>();
        /** Indices of the holds that span it. */
        final List<Integer> keeps = new ArrayList<>();
        /** The same steps of first hands, whose crews are wanted. */
        final List<Mate> mates = new ArrayList<>();

        Task(int index, WorkStep step, int earliest, Asked asked) {
            this.index = index;
            this.step = step;
            this.earliest = Math.max(earliest, asked.from());
            this.asked = asked;
            wet = step.air().equals("wet");
            dust = step.air().equals("dust");
        }

        boolean isTodo() {
            return step.state() == WorkStep.State.TODO;
        }

        boolean hasHands() {
            return !step.hands().isEmpty();
        }
    }

    /** The same step of the first hand, and whose hands are wanted. */
    record Mate(int task, OppositeHands.Crew crew) {}

    /** A link from an earlier task. */
    record Need(int task, String moment, Span opens, boolean shuts, Span shut, int price) {
        boolean isHard() {
            return shuts && price < 0;
        }

        int momentOf(Placement earlier) {
            return switch (moment) {
                case "start" -> earlier.start();
                case "hands-end" -> earlier.handsEnd();
                default -> earlier.end();
            };
        }

        /** First minute at which the later step may start. */
        int opensAt(TimeLine time, Placement earlier) {
            int m = momentOf(earlier);
            return Math.max(m, time.over(m, opens));
        }

        /** Last minute at which the later step may start without missing the window. */
        int lastAt(TimeLine time, Placement earlier) {
            return shuts ? time.last(momentOf(earlier), shut) : TimeLine.FOREVER;
        }
    }

    /** One hold: its usable places, and what is already fixed of it. */
    static final class Keep {
        final int index;
        final Hold hold;
        final List<Integer> tasks = new ArrayList<>();
        final List<Integer> usable = new ArrayList<>();
        /** Those of them that the lead wants it to take. */
        final List<Integer> wanted = new ArrayList<>();
        /** Places it already has; then it has begun. */
        List<Integer> fixed = List.of();

        boolean begun;

        Keep(int index, Hold hold) {
            this.index = index;
            this.hold = hold;
        }
    }

    Net(Work work) {
        this.work = work;
        time = new TimeLine(work);
        now = time.ceil(work.now());
        horizon = time.floor(work.horizon());
        hours = work.people().stream().map(p -> Hours.of(p, time)).toList();
        places = work.places();
        Map<String, Integer> roomIndex = new HashMap<>();
        roomOf = new int[places.size()];
        for (int i = 0; i < roomOf.length; i++) {
            placeOf.put(places.get(i).id(), i);
            Place p = places.get(i);
            roomOf[i] =
                    p.kind() == Place.Kind.STAND ? roomIndex.computeIfAbsent(p.room(), r -> roomIndex.size()) : UNKNOWN;
        }
        rooms = roomIndex.size();
        for (int i = 0; i < work.people().size(); i++) {
            personOf.put(work.people().get(i).id(), i);
        }
        readTasks();
        readMates();
        readKeeps();
    }

    private void readTasks() {
        Map<String, Integer> expected = new HashMap<>();
        work.deliveries().forEach(d -> expected.merge(d.id(), time.ceil(d.expected()), Math::max));
        Map<String, List<WorkWish>> wishes = new HashMap<>();
        work.wishes().stream()
                .filter(w -> !w.isPast(work.now()))
                .forEach(w ->
                        wishes.computeIfAbsent(w.step(), s -> new ArrayList<>()).add(w));
        for (WorkStep step : work.steps()) {
            int earliest = Math.max(now, step.notBefore().map(time::ceil).orElse(now));
            for (String delivery : step.awaits()) {
                earliest = Math.max(earliest, expected.getOrDefault(delivery, now));
            }
            taskOf.put(step.id(), tasks.size());
            List<WorkWish> own =
                    step.state() == WorkStep.State.TODO ? wishes.getOrDefault(step.id(), List.of()) : List.of();
            tasks.add(new Task(tasks.size(), step, earliest, Asked.of(own, time, personOf)));
        }
        for (Task task : tasks) {
            for (WorkStep.Link link : task.step.after()) {
                int from = taskOf.getOrDefault(link.step(), UNKNOWN);
                // Nobody can make up for a missed window where there are no hands: there it is hard.
                int price = task.hasHands()
                        ? link.miss().map(WorkStep.Miss::personMinutes).orElse(-1)
                        : -1;
                task.needs.add(new Need(
                        from,
                        link.from(),
                        link.opens(),
                        link.shuts().isPresent(),
                        link.shuts().orElse(Span.NONE),
                        price));
                if (from != UNKNOWN) {
                    tasks.get(from).next.add(task.index);
                }
            }
        }
    }

    /** Only of steps that wait for the first hand anyway, so that its crew is known by then. */
    private void readMates() {
        for (OppositeHands.Follow same : work.hands().follows()) {
            int task = taskOf.getOrDefault(same.step(), UNKNOWN);
            int first = taskOf.getOrDefault(same.first(), UNKNOWN);
            if (task != UNKNOWN && first != UNKNOWN && tasks.get(first).next.contains(task)) {
                tasks.get(task).mates.add(new Mate(first, same.crew()));
            }
        }
    }

    private void readKeeps() {
        for (Hold hold : work.holds()) {
            Keep keep = new Keep(keeps.size(), hold);
            boolean wet = false;
            boolean dust = false;
            for (String id : hold.steps()) {
                int t = taskOf.getOrDefault(id, UNKNOWN);
                if (t != UNKNOWN && !keep.tasks.contains(t)) {
                    Task task = tasks.get(t);
                    keep.tasks.add(t);
                    task.keeps.add(keep.index);
                    keep.begun |= !task.isTodo();
                    wet |= task.isTodo() && task.wet;
                    dust |= task.isTodo() && task.dust;
                }
            }
            for (String id : hold.candidates()) {
                int p = placeOf.getOrDefault(id, UNKNOWN);
                if (p != UNKNOWN && !keep.usable.contains(p) && fits(places.get(p), hold.kind(), wet, dust)) {
                    keep.usable.add(p);
                }
            }
            keeps.add(keep);
            if (!keep.begun) {
                keep.tasks.forEach(t -> tasks.get(t).asked.wishes().forEach(w -> heed(keep, w)));
            }
        }
    }

    /** Takes what the lead wants of a place; what no hold of the step can give is found among the shortfalls. */
    private void heed(Keep keep, WorkWish wish) {
        Integer place = placeOf.getOrDefault(wish.on(), UNKNOWN);
        if (wish.kind() == WorkWish.Kind.AWAY) {
            keep.usable.remove(place);
            keep.wanted.remove(place);
        } else if (wish.kind() == WorkWish.Kind.AT
                && keep.usable.contains(place)
                && !keep.wanted.contains(place)
                && keep.wanted.size() < keep.hold.count()) {
            keep.wanted.add(place);
            keep.usable.remove(place);
            keep.usable.add(keep.wanted.size() - 1, place);
        }
    }

    private static boolean fits(Place place, Place.Kind kind, boolean wet, boolean dust) {
        if (place.kind() != kind) {
            return false;
        }
        return kind != Place.Kind.STAND || ((!wet || place.wet()) && (!dust || place.dust()));
    }

    Task task(int index) {
        return tasks.get(index);
    }

    Keep keep(int index) {
        return keeps.get(index);
    }
}
