package fayline.app.cli;

import fayline.app.usecase.view.SaidByName;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.view.StandingWishes;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** A plan as lines to read on a screen: a heading for each day, a line for each step that has yet to start or end. */
final class PlanByDay {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter LATER = DateTimeFormatter.ofPattern("EEE HH:mm", Locale.ENGLISH);

    private final ShopView view;
    private final SaidByName names;
    private final Map<String, WorkStep> steps;
    private final Map<String, String> people;
    private final Map<String, String> places;

    PlanByDay(ShopView view) {
        this.view = view;
        names = new SaidByName(view);
        this.steps = view.work().steps().stream().collect(Collectors.toMap(WorkStep::id, Function.identity()));
        this.people = view.work().people().stream().collect(Collectors.toMap(Worker::id, Worker::name));
        this.places = view.work().places().stream().collect(Collectors.toMap(Place::id, Place::name));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        LocalDate day = LocalDate.MIN;
        List<Plan.PlannedStep> open = view.plan().steps().stream()
                .filter(p -> p.end().isAfter(view.now()))
                .sorted(Comparator.comparing(Plan.PlannedStep::start).thenComparing(Plan.PlannedStep::step))
                .toList();
        for (Plan.PlannedStep p : open) {
            LocalDate start = LocalDate.ofInstant(p.start(), view.zone());
            if (!start.equals(day)) {
                day = start;
                lines.add((lines.isEmpty() ? "" : System.lineSeparator()) + DAY.format(day));
            }
            lines.add(line(p));
        }
        view.plan()
                .finish()
                .ifPresent(f -> lines.add(System.lineSeparator() + "All planned work ends "
                        + DAY.format(f.atZone(view.zone())) + " " + TIME.format(f.atZone(view.zone()))));
        wishes(lines);
        return lines;
    }

    /** What is decided about steps beforehand, and what of that binds nobody any more. */
    private void wishes(List<String> lines) {
        List<StandingWishes.Standing> all = StandingWishes.of(view);
        if (!all.isEmpty()) {
            lines.add(System.lineSeparator() + "Wishes");
            all.forEach(s -> lines.add(wish(s)));
        }
    }

    private String wish(StandingWishes.Standing s) {
        String by = view.definition()
                .shop()
                .people()
                .find(s.wish().by())
                .map(p -> p.name() + " wants ")
                .orElse("");
        String id = s.wish().step();
        String step = steps.containsKey(id) ? names.stepName(id) + " (" + id + ")" : id;
        return "  " + step + ": " + by + s.words()
                + (s.wish().why().isEmpty() ? "" : " (" + s.wish().why() + ")")
                + (s.counts() ? "" : "; binds nobody: " + s.passedOver())
                + (s.state() == StandingWishes.State.NOT_PLANNED ? "; not planned" : "");
    }

    private String line(Plan.PlannedStep p) {
        WorkStep step = steps.get(p.step());
        String who = p.people().stream().map(id -> people.getOrDefault(id, id)).collect(Collectors.joining(", "));
        String where =
                p.places().stream().map(id -> places.getOrDefault(id, id)).collect(Collectors.joining(", "));
        StringBuilder s = new StringBuilder(String.format(
                Locale.ROOT,
                "  %s-%s  %s (%s)",
                TIME.format(p.start().atZone(view.zone())),
                time(p.handsEnd(), p.start()),
                step == null ? p.step() : step.title(),
                p.step()));
        if (!who.isEmpty()) {
            s.append(": ").append(who);
        }
        if (!where.isEmpty()) {
            s.append("; ").append(where);
        }
        if (p.end().isAfter(p.handsEnd())) {
            s.append("; then alone until ").append(time(p.end(), p.start()));
        }
        return s.toString();
    }

    private String time(Instant at, Instant start) {
        boolean sameDay = LocalDate.ofInstant(at, view.zone()).equals(LocalDate.ofInstant(start, view.zone()));
        return (sameDay ? TIME : LATER).format(at.atZone(view.zone()));
    }
}
