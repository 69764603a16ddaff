package fayline.flow.planner.serial;

import fayline.flow.plan.Place;
import fayline.flow.plan.WishWords;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.planner.serial.Net.Keep;
import fayline.flow.planner.serial.Net.Task;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** Wishes of the lead that no plan could keep, whatever else the shop does; each with its cause. */
final class WishLacks {
    private static final String WITHDRAW = " Withdraw the wish, or change what is in its way.";

    private final Net net;

    WishLacks(Net net) {
        this.net = net;
    }

    /** Why the wishes of a step cannot be kept; empty where nothing speaks against them yet. */
    Optional<String> of(Task task, Scene begun) {
        for (WorkWish w : task.asked.wishes()) {
            Optional<String> lack = switch (w.kind()) {
                case WITH -> with(task, w);
                case WITHOUT -> without(task, w);
                case AT, AWAY -> place(task, w, begun);
                case START -> start(task, w);
            };
            if (lack.isPresent()) {
                return lack;
            }
        }
        return crew(task);
    }

    /** All wishes of a step in one sentence; empty where there are none. */
    String all(Task task) {
        return task.asked.wishes().isEmpty()
                ? ""
                : " What is wished counts: "
                        + task.asked.wishes().stream().map(this::clause).collect(Collectors.joining("; ")) + ".";
    }

    private String clause(WorkWish w) {
        return WishWords.clause(net.work, w);
    }

    private Optional<String> no(WorkWish w, String cause) {
        String clause = clause(w);
        return Optional.of(clause.substring(0, 1).toUpperCase(Locale.ROOT) + clause.substring(1) + ", but " + cause
                + "." + WITHDRAW);
    }

    private Optional<Worker> worker(WorkWish w) {
        return net.work.people().stream().filter(p -> p.id().equals(w.on())).findFirst();
    }

    private Optional<String> with(Task task, WorkWish w) {
        Optional<Worker> worker = worker(w);
        if (!task.hasHands()) {
            return no(w, "no hands are needed for it");
        }
        if (worker.isEmpty()) {
            return no(w, WishWords.person(net.work, w.on()) + " is not among the people who are planned");
        }
        Optional<WorkWish> against = task.asked.wishes().stream()
                .filter(x -> x.kind() == WorkWish.Kind.WITHOUT && x.on().equals(w.on()))
                .findFirst();
        if (against.isPresent()) {
            return no(w, clause(against.get()));
        }
        int from = Math.max(net.now, task.earliest);
        int to = Math.min(net.horizon, task.asked.last());
        boolean comes = worker.get().present().stream()
                .anyMatch(s -> net.time.floor(s.to()) > from && net.time.ceil(s.from()) <= to);
        return comes
                ? Optional.empty()
                : no(
                        w,
                        worker.get().name() + " is not in the shop between " + net.time.words(from) + " and "
                                + net.time.words(to + 1));
    }

    private Optional<String> without(Task task, WorkWish w) {
        for (Map.Entry<String, Integer> skill : new TreeMap<>(task.step.skills()).entrySet()) {
            long all = net.work.people().stream()
                    .filter(p -> p.skills().contains(skill.getKey()))
                    .count();
            long left = net.work.people().stream()
                    .filter(p -> p.skills().contains(skill.getKey()) && !isOut(task, p))
                    .count();
            if (all >= skill.getValue() && left < skill.getValue()) {
                return no(
                        w,
                        "it needs " + skill.getValue() + " with the skill " + skill.getKey() + ", and " + left
                                + " of the others have it");
            }
        }
        return Optional.empty();
    }

    private boolean isOut(Task task, Worker p) {
        return task.asked.without().contains(net.personOf.getOrDefault(p.id(), Net.UNKNOWN));
    }

    private Optional<String> place(Task task, WorkWish w, Scene begun) {
        Place place = net.work.places().stream()
                .filter(p -> p.id().equals(w.on()))
                .findFirst()
                .orElse(null);
        if (place == null) {
            return w.kind() == WorkWish.Kind.AWAY ? Optional.empty() : no(w, "there is no such place in the shop");
        }
        int index = net.placeOf.getOrDefault(w.on(), Net.UNKNOWN);
        List<Keep> keeps = task.keeps.stream().map(net::keep).toList();
        List<Keep> could =
                keeps.stream().filter(k -> k.hold.candidates().contains(w.on())).toList();
        boolean there = could.stream()
                .anyMatch(k -> k.begun ? begun.placesOf(k.index).contains(index) : k.wanted.contains(index));
        if (w.kind() == WorkWish.Kind.AWAY) {
            Optional<Keep> stays = could.stream()
                    .filter(k -> k.begun && begun.placesOf(k.index).contains(index))
                    .findFirst();
            Optional<Keep> few = could.stream()
                    .filter(k -> !k.begun && k.usable.size() < k.hold.count())
                    .findFirst();
            return stays.isPresent()
                    ? no(w, "it has begun there and stays there")
                    : few.isPresent() ? no(w, "no other place is left for it") : Optional.empty();
        }
        return there ? Optional.empty() : no(w, whyNotThere(keeps, could, place, begun));
    }

    private String whyNotThere(List<Keep> keeps, List<Keep> could, Place place, Scene begun) {
        if (could.isEmpty()) {
            String may = keeps.stream()
                    .flatMap(k -> k.hold.candidates().stream())
                    .distinct()
                    .map(this::placeName)
                    .collect(Collectors.joining(", "));
            return may.isEmpty() ? "it takes no place" : "it can only take " + may;
        }
        Keep keep = could.get(0);
        if (keep.begun) {
            return "it has begun at "
                    + begun.placesOf(keep.index).stream()
                            .map(p -> net.places.get(p).name())
                            .collect(Collectors.joining(", "))
                    + " and stays there";
        }
        boolean full = keep.wanted.size() == keep.hold.count();
        return full
                ? "it is wished at "
                        + keep.wanted.stream()
                                .map(p -> net.places.get(p).name())
                                .collect(Collectors.joining(", "))
                        + " too"
                : place.name() + " is not for this work, or it is wished away from there";
    }

    private String placeName(String id) {
        return net.work.places().stream()
                .filter(p -> p.id().equals(id))
                .map(Place::name)
                .findFirst()
                .orElse(id);
    }

    private Optional<String> start(Task task, WorkWish w) {
        if (task.asked.from() > net.horizon) {
            return no(w, "the hours of people are known only until " + net.time.words(net.horizon));
        }
        if (task.earliest <= task.asked.last()) {
            return Optional.empty();
        }
        return no(w, "it cannot begin before " + net.time.words(task.earliest));
    }

    /** Whether some crew of the listed sizes holds all who are wished and can have the skills beside them. */
    private Optional<String> crew(Task task) {
        List<Integer> with = task.asked.with();
        if (with.isEmpty() || !task.hasHands()) {
            return Optional.empty();
        }
        int most = task.step.hands().stream().mapToInt(CrewTime::people).max().orElse(0);
        WorkWish first = task.asked.wishes().stream()
                .filter(w -> w.kind() == WorkWish.Kind.WITH)
                .findFirst()
                .orElseThrow();
        if (with.size() > most) {
            return no(first, with.size() + " people are wished for it and its largest crew is " + most);
        }
        for (Map.Entry<String, Integer> skill : new TreeMap<>(task.step.skills()).entrySet()) {
            long have = with.stream()
                    .map(net.work.people()::get)
                    .filter(p -> p.skills().contains(skill.getKey()))
                    .count();
            if (have + most - with.size() < skill.getValue()) {
                return no(
                        first,
                        with.stream()
                                        .map(p -> net.work.people().get(p))
                                        .filter(p -> !p.skills().contains(skill.getKey()))
                                        .map(Worker::name)
                                        .collect(Collectors.joining(" and "))
                                + " has not the skill " + skill.getKey() + ", and its crew of " + most
                                + " leaves nobody else to have it");
            }
        }
        return Optional.empty();
    }
}
