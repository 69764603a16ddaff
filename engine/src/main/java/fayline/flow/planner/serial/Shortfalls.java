package fayline.flow.planner.serial;

import fayline.flow.plan.Place;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.planner.serial.Net.Keep;
import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What no plan could do: found step by step, before anything is placed, and said in words with what would help. */
final class Shortfalls {
    private final Net net;
    private final Scene empty;
    private final StartSearch alone;
    private final Board board;
    private final WishLacks wishes;

    Shortfalls(Net net) {
        this.net = net;
        board = new Board(net);
        wishes = new WishLacks(net);
        empty = new Scene(net, board);
        alone = new StartSearch(net, board, empty);
    }

    /** Fills in a reason for every step that cannot be planned for itself; in the order of the work. */
    void find(Map<Integer, String> reasons) {
        Set<Integer> free = new HashSet<>(Blocks.topological(net));
        for (Task task : net.tasks) {
            if (task.isTodo()) {
                Optional<String> reason = free.contains(task.index) ? lack(task) : Optional.of(inCircle());
                reason.ifPresent(r -> reasons.put(task.index, r));
            }
        }
    }

    private static String inCircle() {
        return "It waits for itself: the steps it comes after come, some way round, after it. Take one of these links away.";
    }

    private Optional<String> lack(Task task) {
        for (Need need : task.needs) {
            if (need.task() == Net.UNKNOWN) {
                return Optional.of("It comes after a step that is not in the work. Correct the link.");
            }
            if (!net.time.knows(need.opens()) || !net.time.knows(need.shut())) {
                return Optional.of("One of its windows runs on a clock that is not in the work. Correct the window.");
            }
        }
        if (!net.time.knows(task.step.alone())) {
            return Optional.of("Its unattended time runs on the clock "
                    + task.step.alone().clock() + ", which is not in the work. Correct the step.");
        }
        Optional<String> open = net.work.deliveries().stream()
                .filter(d -> task.step.awaits().contains(d.id()) && d.expected().isAfter(net.work.horizon()))
                .map(d -> "It waits for " + d.what() + ", not counted on before " + net.time.words(net.horizon) + ".")
                .findFirst();
        if (open.isPresent()) {
            return open;
        }
        Optional<String> wish = wishLack(task);
        if (wish.isPresent()) {
            return wish;
        }
        Optional<String> place = task.keeps.stream()
                .map(k -> placeLack(task, net.keep(k)))
                .flatMap(Optional::stream)
                .findFirst();
        return place.or(() -> crewLack(task)).or(() -> hoursLack(task));
    }

    private Optional<String> wishLack(Task task) {
        if (task.asked.wishes().isEmpty()) {
            return Optional.empty();
        }
        Scene begun = new Scene(net, board);
        new Happened(net, new Board(net), begun).place();
        return wishes.of(task, begun);
    }

    private Optional<String> placeLack(Task task, Keep keep) {
        String kind = keep.hold.kind().name().toLowerCase(Locale.ROOT);
        if (keep.begun) {
            Scene begun = new Scene(net, board);
            new Happened(net, new Board(net), begun).place();
            for (int place : begun.placesOf(keep.index)) {
                if (!Happened.allows(net.places.get(place), task)) {
                    return Optional.of(String.format(
                            Locale.ROOT,
                            "It is %s work, and %s, where it has begun, does not allow that. Move it, or allow %s there.",
                            task.step.air(),
                            net.places.get(place).name(),
                            task.step.air()));
                }
            }
        }
        if (keep.usable.size() >= keep.hold.count()) {
            return Optional.empty();
        }
        Set<String> airs = keep.tasks.stream()
                .map(net::task)
                .filter(t -> t.isTodo() && (t.wet || t.dust))
                .map(t -> t.step.air())
                .collect(Collectors.toCollection(java.util.TreeSet::new));
        if (keep.hold.kind() == Place.Kind.STAND && !airs.isEmpty()) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "No stand among %s allows %s work. Allow it on one, or name another stand.",
                    keep.hold.candidates(),
                    String.join(" and ", airs)));
        }
        return Optional.of(String.format(
                Locale.ROOT,
                "It needs %d %s%s at once and may choose among %d. Add one, or let it do with fewer.",
                keep.hold.count(),
                kind,
                keep.hold.count() == 1 ? "" : "s",
                keep.usable.size()));
    }

    private Optional<String> crewLack(Task task) {
        if (!task.hasHands()) {
            return Optional.empty();
        }
        if (task.step.hands().stream().anyMatch(h -> h.minutes() < 1 || h.people() < 1)) {
            return Optional.of("One of its crews has no people or no time. Correct the step.");
        }
        for (Map.Entry<String, Integer> skill : new java.util.TreeMap<>(task.step.skills()).entrySet()) {
            List<String> have = net.work.people().stream()
                    .filter(p -> p.skills().contains(skill.getKey()))
                    .map(p -> p.name())
                    .toList();
            if (have.size() < skill.getValue()) {
                return Optional.of(String.format(
                        Locale.ROOT,
                        "It needs %d with the skill %s; %s. Teach somebody, or ask for fewer.",
                        skill.getValue(),
                        skill.getKey(),
                        have.isEmpty() ? "nobody has it" : "only " + String.join(" and ", have) + " has it"));
            }
        }
        int least = task.step.hands().stream().mapToInt(CrewTime::people).min().orElse(0);
        if (least > net.work.people().size()) {
            return Optional.of(String.format(
                    Locale.ROOT,
                    "It needs at least %d people at once, and the shop has %d. Ask somebody in.",
                    least,
                    net.work.people().size()));
        }
        return Optional.empty();
    }

    /** Tries the step alone in an empty shop. */
    private Optional<String> hoursLack(Task task) {
        if (!task.hasHands()) {
            return Optional.empty();
        }
        Task bare = new Task(task.index, task.step, net.now, task.asked);
        var found = alone.find(new StartSearch.Ask(bare, bare.earliest, Integer.MAX_VALUE, true, false));
        if (found.placement().isPresent()) {
            return Optional.empty();
        }
        List<String> crews = new ArrayList<>();
        task.step.hands().forEach(h -> crews.add(h.minutes() + " min with " + h.people()));
        return Optional.of(switch (found.obstacle()) {
                    case WATCH ->
                        "Nobody is ever in the shop at the times after it when someone must look at it ("
                                + task.step.watchMin() + " min). Come in then, or start it at another time.";
                    case COMPANY, PEOPLE, PLACE, AIR, HOLD, LATE ->
                        String.format(
                                Locale.ROOT,
                                "It takes %s%s, and no such crew%s is in the shop together for so long before %s (the longest presence of"
                                        + " one person is %d min). Split the step, stay longer that day, or take more hands.",
                                String.join(" or ", crews),
                                task.step.interruptible() ? "" : " without a stop",
                                task.step.accompanied() ? " and a second person" : "",
                                net.time.words(net.horizon),
                                board.people.stream()
                                        .mapToInt(Person::longestPresence)
                                        .max()
                                        .orElse(0));
                }
                + wishes.all(task));
    }
}
