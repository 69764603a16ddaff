package fayline.flow.planner.serial;

import fayline.flow.plan.OppositeHands.Crew;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.planner.serial.BlockPlacer.Failure;
import fayline.flow.planner.serial.Net.Keep;
import fayline.flow.planner.serial.Net.Need;
import fayline.flow.planner.serial.Net.Task;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Says why a step could not be put in, naming the conflict and what would help. */
final class FailureWords {
    private final Net net;
    private final Scene scene;

    FailureWords(Net net, Scene scene) {
        this.net = net;
        this.scene = scene;
    }

    String say(Failure failure) {
        return said(failure) + new WishLacks(net).all(net.task(failure.task()));
    }

    private String said(Failure failure) {
        Task task = net.task(failure.task());
        if (failure.need().isPresent()) {
            return window(failure.need().get());
        }
        String till = net.time.words(Math.min(net.horizon, task.asked.isDated() ? task.asked.last() + 1 : net.horizon));
        return switch (failure.obstacle().orElseThrow()) {
            case PEOPLE, COMPANY ->
                hardWindow(task)
                        + String.format(
                                Locale.ROOT,
                                "Before %s there is no time when %s%s can do it%s. More hours, more hands or fewer other steps would help.",
                                till,
                                people(task),
                                skills(task.step.skills()) + practised(task),
                                task.step.accompanied() ? " with a second person in the shop" : "");
            case PLACE, HOLD -> place(task, failure.clash(), till);
            case AIR ->
                "Before " + till + " dusty and wet work leave no time for it in the room of its stand. Another room, or"
                        + " less settling time, would help.";
            case LATE -> "What it waits for is over too late for it to begin before " + till + ".";
            case WATCH ->
                "Before " + till + " nobody is in the shop at the times after it when someone must look at it ("
                        + task.step.watchMin()
                        + " min), whenever it is put. Come in once more, or begin earlier in the day.";
        };
    }

    /** The hard window that the step must meet, where it has one: then the hours alone are not the reason. */
    private String hardWindow(Task task) {
        return task.needs.stream()
                .filter(n -> n.isHard() && net.task(n.task()).isTodo())
                .findFirst()
                .map(n -> opening(n) + ". ")
                .orElse("");
    }

    private static String people(Task task) {
        return task.step.hands().stream().map(FailureWords::crew).collect(Collectors.joining(" or "));
    }

    private static String crew(CrewTime c) {
        return (c.people() == 1 ? "one person" : c.people() + " people") + " for " + c.minutes() + " min";
    }

    /** Whose hands are wanted, where it is to be done by those of the first hand. */
    private String practised(Task task) {
        Set<String> names = new TreeSet<>();
        for (Net.Mate mate : task.mates) {
            if (mate.crew() != Crew.ANY && scene.isPlaced(mate.task())) {
                scene.placed(mate.task())
                        .people()
                        .forEach(p -> names.add(net.work.people().get(p).name()));
            }
        }
        return names.isEmpty() ? "" : ", as on the first hand with " + String.join(" and ", names) + ",";
    }

    private static String skills(Map<String, Integer> skills) {
        if (skills.isEmpty()) {
            return "";
        }
        return " (with "
                + new TreeMap<>(skills)
                        .entrySet().stream()
                                .map(e -> e.getValue() + " x " + e.getKey())
                                .collect(Collectors.joining(", "))
                + ")";
    }

    private String place(Task task, int clash, String till) {
        String kinds = task.keeps.stream()
                .map(k -> net.keep(k).hold.kind().name().toLowerCase(Locale.ROOT))
                .distinct()
                .collect(Collectors.joining(" and "));
        String by = "";
        if (clash >= 0) {
            Keep keep = net.keep(clash);
            boolean open = keep.tasks.stream().anyMatch(t -> !scene.isPlaced(t));
            by = String.format(
                    Locale.ROOT,
                    "; %s is taken by %s%s",
                    scene.placesOf(clash).stream()
                            .map(p -> net.places.get(p).name())
                            .collect(Collectors.joining(", ")),
                    net.task(keep.tasks.get(0)).step.made(),
                    open ? ", whose end cannot be planned" : "");
        }
        return "Before " + till + " no " + kinds + " is free for it long enough" + by
                + ". Another place, or sooner work there, would help.";
    }

    private String window(Need need) {
        Task earlier = net.task(need.task());
        String words = opening(need);
        if (!earlier.isTodo()) {
            words += ", which was before " + net.time.words(need.lastAt(net.time, scene.placed(need.task())));
            return words + ", and cannot any more. Decide what is to be done to it, and give the window its price.";
        }
        return words
                + ", and no people, hours and places before " + net.time.words(net.horizon)
                + " allow that. More hands, longer hours that day, a slower system, or a price for the window would help.";
    }

    private String opening(Need need) {
        Task earlier = net.task(need.task());
        return "It must start at most " + span(need.shut()) + " after the "
                + switch (need.moment()) {
                    case "start" -> "start";
                    case "hands-end" -> "hands' end";
                    default -> "end";
                }
                + " of \"" + earlier.step.title() + "\" of " + earlier.step.made();
    }

    private static String span(Span span) {
        return String.format(Locale.ROOT, "%.0f min", span.minutes())
                + (span.clock().isEmpty() ? "" : " (on the clock " + span.clock() + ")");
    }
}
