package fayline.app.usecase.week;

import fayline.app.usecase.fit.LookAtFits;
import fayline.app.usecase.hours.LookAtHours;
import fayline.app.usecase.view.ShopView;
import fayline.app.usecase.week.WeekDraft.Fact;
import fayline.app.usecase.week.WeekDraft.Picture;
import fayline.app.usecase.week.WeekDraft.Private;
import fayline.flow.plan.Plan;
import fayline.flow.project.design.Made;
import fayline.flow.record.Slip;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.inspect.FoundFault;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.result.fit.FitResult;
import fayline.flow.result.fit.StateReadings;
import fayline.flow.result.fit.StationValue;
import fayline.flow.result.hours.BookedTime;
import fayline.flow.result.hours.HoursResult;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Drafts what is told of a week, from what the record holds of it: part by part what was done on which day, hours, masses, gaps, what
 * went wrong, what comes next. Nothing is said that the record does not hold, nothing is praised, and nothing private goes in that
 * was not asked for.
 */
public final class DraftWeek {
    private final ShopView view;
    private final LocalDate monday;
    private final Private may;
    private final HoursResult hours;
    private final List<Fact> facts = new ArrayList<>();
    private final List<Picture> pictures = new ArrayList<>();
    private int heldBack;

    private DraftWeek(ShopView view, LocalDate monday, Private may) {
        this.view = view;
        this.monday = monday;
        this.may = may;
        this.hours = LookAtHours.between(LookAtHours.of(view), Optional.of(monday), Optional.of(monday.plusDays(6)));
    }

    /**
     * Drafts.
     *
     * @param view the shop now
     * @param monday the week's first day
     * @param may what private things may go in
     */
    public static WeekDraft of(ShopView view, LocalDate monday, Private may) {
        return new DraftWeek(view, monday, may).draft();
    }

    private WeekDraft draft() {
        List<String> all = new ArrayList<>();
        List<String> told = new ArrayList<>();
        made().forEach(m -> part(m).ifPresent(p -> {
            told.add(m.name());
            all.add(p);
        }));
        all.add(0, opening(told));
        next().ifPresent(all::add);
        String project = (view.definition().facts().name() + " "
                        + view.definition().facts().serial())
                .strip();
        return new WeekDraft(
                monday,
                project + ", the week from " + monday.getDayOfMonth() + " "
                        + monday.getMonth().getDisplayName(TextStyle.FULL, Locale.ENGLISH) + " " + monday.getYear(),
                all,
                facts,
                pictures,
                heldBack);
    }

    private Stream<Made> made() {
        return Stream.concat(view.definition().parts().stream(), view.definition().joints().stream());
    }

    private boolean isIn(Instant at) {
        LocalDate day = at.atZone(view.zone()).toLocalDate();
        return !day.isBefore(monday) && day.isBefore(monday.plusDays(7));
    }

    private String opening(List<String> told) {
        if (told.isEmpty()) {
            return "Nothing was recorded in this week.";
        }
        String h = WeekWords.hours(hours.minutes());
        facts.add(new Fact(h, "hours of everybody in the week, added up", 0));
        String who = may.names()
                ? " "
                        + WeekWords.listed(hours.by(BookedTime::person).keySet().stream()
                                .map(this::person)
                                .toList()) + " were at it."
                : "";
        return (hours.minutes() > 0 ? h + " hours went into the week: " : "The week was: ") + WeekWords.listed(told)
                + "." + who;
    }

    private String person(String id) {
        return view.definition().shop().people().find(id).map(p -> p.name()).orElse(id);
    }

    private Optional<String> part(Made m) {
        List<StepResult> steps = view.result().stepsOf(m.id());
        StringBuilder s = new StringBuilder();
        s.append(done(m, steps));
        s.append(weighed(m));
        s.append(gaps(m));
        s.append(trouble(m, steps));
        s.append(notes(steps));
        if (s.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(m.name() + ". " + s.toString().strip());
    }

    private String done(Made m, List<StepResult> steps) {
        Map<LocalDate, List<String>> byDay = new LinkedHashMap<>();
        List<String> begun = new ArrayList<>();
        for (StepResult step : steps) {
            StepRecord r = view.record().step(step.id());
            if (r.finished().filter(this::isIn).isPresent()) {
                byDay.computeIfAbsent(r.finished().get().atZone(view.zone()).toLocalDate(), d -> new ArrayList<>())
                        .add(said(step));
            } else if (r.started().filter(this::isIn).isPresent()
                    && r.finished().isEmpty()) {
                begun.add(WeekWords.toDo(step));
            }
        }
        StringBuilder s = new StringBuilder();
        byDay.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(e -> s.append("On ")
                        .append(e.getKey().getDayOfWeek().getDisplayName(TextStyle.FULL, Locale.ENGLISH))
                        .append(" we ")
                        .append(WeekWords.listed(new ArrayList<>(new LinkedHashSet<>(e.getValue()))))
                        .append(". "));
        if (!begun.isEmpty()) {
            s.append(begun.size() == 1 ? "Under way: " : "Still under way: ")
                    .append(WeekWords.listed(begun))
                    .append(". ");
        }
        double minutes = hours.by(BookedTime::made).getOrDefault(m.id(), 0.0);
        if (s.length() > 0 && minutes > 0) {
            String h = WeekWords.hours(minutes);
            facts.add(new Fact(h, "hours on " + m.name() + " in the week, added up", 0));
            s.append("That took ").append(h).append(" hours. ");
        }
        if (byDay.size() > 0 && isFinished(steps)) {
            s.append("With that it is done. ");
        }
        return s.toString();
    }

    private String said(StepResult step) {
        String did = WeekWords.did(step);
        if (step.kind() == fayline.flow.project.recipe.StepKind.LAY_UP
                && step.plies().size() > 1) {
            facts.add(new Fact(String.valueOf(step.plies().size()), "plies of \"" + step.title() + "\", counted", 0));
        }
        return did;
    }

    /** Whether nothing of it was left to do when the week ended. */
    private boolean isFinished(List<StepResult> steps) {
        Instant end = monday.plusDays(7).atStartOfDay(view.zone()).toInstant();
        return steps.stream()
                .allMatch(s -> view.record()
                        .step(s.id())
                        .finished()
                        .filter(f -> f.isBefore(end))
                        .isPresent());
    }

    private String weighed(Made m) {
        return readings()
                .filter(r -> r.kind().equals("mass") && r.of().equals(m.id()) && isIn(r.at()))
                .reduce((a, b) -> b)
                .map(r -> {
                    facts.add(new Fact(r.value(), "mass of " + m.name() + " as typed", r.seq()));
                    return "It weighs " + r.value()
                            + view.result()
                                    .part(m.id())
                                    .flatMap(p -> p.target())
                                    .map(t -> {
                                        facts.add(new Fact(t.asTyped(), "what " + m.name() + " should weigh", 0));
                                        return "; the aim was " + WeekWords.aim(t.asTyped());
                                    })
                                    .orElse("")
                            + ". ";
                })
                .orElse("");
    }

    private Stream<TakenReading> readings() {
        return view.record().readings(view.project()).stream();
    }

    private String gaps(Made m) {
        StringBuilder s = new StringBuilder();
        view.definition().fits().items().stream()
                .filter(f -> f.part().equals(Optional.of(m.id())))
                .map(f -> LookAtFits.sight(view.definition(), view.record(), f, false)
                        .result())
                .forEach(fit ->
                        fit.states().stream().filter(this::isReadInWeek).forEach(state -> s.append(state(fit, state))));
        return s.toString();
    }

    private boolean isReadInWeek(StateReadings state) {
        return state.stations().stream().flatMap(v -> v.typed().stream()).anyMatch(t -> isIn(t.at()));
    }

    private String state(FitResult fit, StateReadings state) {
        List<StationValue> read =
                state.stations().stream().filter(v -> v.gap().isPresent()).toList();
        long within = read.stream().filter(v -> isWithin(fit, v)).count();
        if (read.isEmpty()) {
            return "";
        }
        facts.add(
                new Fact(String.valueOf(read.size()), "stations of " + fit.fit().name() + " with a gap, counted", 0));
        String name = "The gaps, " + state.state().name().toLowerCase(Locale.ENGLISH) + ": ";
        if (within == read.size()) {
            return name + "all " + read.size() + " stations within what is wanted. ";
        }
        facts.add(new Fact(String.valueOf(within), "stations within tolerance, counted", 0));
        StationValue worst = read.stream()
                .max(java.util.Comparator.comparingDouble(v -> off(fit, v)))
                .orElseThrow();
        String typed = worst.typed().stream()
                .filter(t -> t.kind().tellsGap())
                .reduce((a, b) -> b)
                .map(t -> {
                    facts.add(new Fact(t.typed(), "gap at " + t.station() + " as typed", t.seq()));
                    return t.typed();
                })
                .orElse("");
        facts.add(new Fact(worst.station().id(), "a station's mark", 0));
        String wanted = fit.fit().gapAt(worst.station()).asTyped();
        facts.add(new Fact(wanted, "gap wanted there", 0));
        return name + within + " of " + read.size() + " stations within what is wanted; farthest off is "
                + worst.station().id() + " with " + typed + " where " + wanted + " is wanted. ";
    }

    private static double off(FitResult fit, StationValue v) {
        double nominal = fit.fit().gapAt(v.station()).value().millimetres();
        return Math.abs(v.gap().orElseThrow().gapMm() - nominal);
    }

    private static boolean isWithin(FitResult fit, StationValue v) {
        return off(fit, v) <= fit.fit().gapToleranceAt(v.station()).value().millimetres() + 1e-9;
    }

    private String trouble(Made m, List<StepResult> steps) {
        StringBuilder s = new StringBuilder();
        for (StepResult step : steps) {
            StepRecord r = view.record().step(step.id());
            Optional<Slip> slip = r.finished().filter(this::isIn).flatMap(f -> r.slip());
            slip.ifPresent(x -> s.append("\"")
                    .append(step.title())
                    .append("\" took longer or came later than planned: ")
                    .append(x.words())
                    .append(". "));
        }
        for (Deviation d : view.record().trouble().ofMade(view.project() + "/" + m.id())) {
            if (isIn(d.at())) {
                s.append(
                        may.notes() && !d.text().isEmpty()
                                ? "Something came out other than drawn: " + quoted(d.text(), d.seq()) + " "
                                : "Something came out other than drawn. ");
                s.append(d.settled()
                        .map(x -> "It is decided: " + x.disposition().words() + ". ")
                        .orElse("What becomes of it is not decided yet. "));
            }
        }
        for (FoundFault f : view.record().inspect().faultsOf(view.project())) {
            if (f.made().equals(m.id()) && isIn(f.at())) {
                facts.add(new Fact(f.number(), "a finding's number", f.seq()));
                s.append("An inspection left finding ").append(f.number());
                s.append(may.notes() ? ": " + quoted(f.text(), f.seq()) + " " : ". ");
                s.append(f.isOpen() ? "It is open. " : "It is put right and signed off. ");
            }
        }
        return s.toString();
    }

    private String quoted(String text, long entry) {
        facts.add(new Fact(text, "words as typed", entry));
        return "\"" + WeekWords.sentence(text) + "\"";
    }

    private String notes(List<StepResult> steps) {
        StringBuilder s = new StringBuilder();
        for (StepResult step : steps) {
            for (StepRecord.Note n : view.record().step(step.id()).notes()) {
                if (isIn(n.at())) {
                    pictures(step, n);
                    if (may.notes() && !n.text().isEmpty()) {
                        s.append(may.names() ? person(n.by()) + " wrote: " : "From the notes: ")
                                .append(quoted(n.text(), n.seq()))
                                .append(' ');
                    }
                }
            }
        }
        return s.toString();
    }

    private void pictures(StepResult step, StepRecord.Note note) {
        String made = made().filter(m -> m.id().equals(step.made()))
                .map(Made::name)
                .findFirst()
                .orElse(step.made());
        for (Photo p : note.photos()) {
            if (p.people() == Photo.People.NOBODY || may.people()) {
                pictures.add(new Picture(p, made + ", " + WeekWords.toDo(step)));
            } else {
                heldBack++;
            }
        }
    }

    /** What the plan says of the week after, where that is still to come. */
    private Optional<String> next() {
        LocalDate from = monday.plusDays(7);
        if (from.plusDays(7).isBefore(view.now().atZone(view.zone()).toLocalDate())) {
            return Optional.empty();
        }
        Map<String, Set<String>> byMade = new LinkedHashMap<>();
        for (Plan.PlannedStep p : view.plan().steps()) {
            LocalDate day = p.start().atZone(view.zone()).toLocalDate();
            Optional<StepResult> step = view.result().step(p.step());
            if (step.isPresent()
                    && !day.isBefore(from)
                    && day.isBefore(from.plusDays(7))
                    && view.record().step(p.step()).finished().isEmpty()) {
                byMade.computeIfAbsent(step.get().made(), x -> new LinkedHashSet<>())
                        .add(WeekWords.toDo(step.get()));
            }
        }
        List<String> all = made().filter(m -> byMade.containsKey(m.id()))
                .map(m -> m.name() + " (" + WeekWords.listed(new ArrayList<>(byMade.getOrDefault(m.id(), Set.of())))
                        + ")")
                .toList();
        return all.isEmpty()
                ? Optional.empty()
                : Optional.of("Planned for the week after: " + WeekWords.listed(all) + ".");
    }
}
