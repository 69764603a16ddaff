package fayline.app.web.wish;

import fayline.app.usecase.view.WhatIf;
import fayline.app.usecase.view.WhyNot;
import fayline.app.web.frame.Frame.Choice;
import fayline.app.web.frame.Sight;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes what the page of one step shows. */
final class WishStepViews {
    /** How far apart two steps may be whose people are swapped. */
    private static final Duration NEAR = Duration.ofDays(14);
    /** The nearest ones: a longer list is not read. */
    private static final int MOST_SWAPS = 40;

    private final Sight sight;
    private final WorkStep step;
    private final Optional<PlannedStep> planned;

    WishStepViews(Sight sight, WorkStep step) {
        this.sight = sight;
        this.step = step;
        planned = sight.planned(step.id());
    }

    WishStepView view(WhyNot whyNot, Optional<WhatIf> whatIf, List<String> refused) {
        List<WishRow> wishes = new WishRows(sight, whyNot).of(w -> w.step().equals(step.id()), whatIf);
        String action = Sight.wishLink(step.id());
        List<String> people = planned.map(PlannedStep::people).orElse(List.of());
        List<String> chosen = choosable().stream()
                .filter(planned.map(PlannedStep::places).orElse(List.of())::contains)
                .toList();
        return new WishStepView(
                sight.stepName(step.id()),
                action,
                Sight.cardLink(step.id()),
                planned.map(this::now).orElse(""),
                trouble(whyNot),
                wishes,
                whatIf.isPresent() || wishes.isEmpty() ? "" : action + "&costs=yes",
                step.state() == WorkStep.State.TODO,
                !step.hands().isEmpty(),
                people.stream().map(this::person).toList(),
                sight.work().people().stream()
                        .map(p -> p.id())
                        .filter(p -> !people.contains(p))
                        .map(this::person)
                        .toList(),
                chosen.stream().map(this::place).toList(),
                choosable().stream()
                        .filter(p -> !chosen.contains(p))
                        .map(this::place)
                        .toList(),
                planned.map(p -> sight.time().at(p.start())).orElse(""),
                planned.map(p -> halfDay(p.start())).orElse(""),
                planned.map(p -> sight.time().field(p.start())).orElse(""),
                swaps(),
                refused);
    }

    private String now(PlannedStep p) {
        String who = p.people().isEmpty() ? "" : ", " + sight.personNames(p.people());
        String where = p.places().isEmpty() ? "" : ", at " + sight.placeNames(p.places());
        return sight.time().range(p.start(), p.handsEnd()) + who + where;
    }

    private List<String> trouble(WhyNot whyNot) {
        List<String> all = new ArrayList<>();
        sight.plan().unplanned().stream()
                .filter(u -> u.step().equals(step.id()))
                .map(Plan.Unplanned::reason)
                .map(sight::named)
                .forEach(all::add);
        if (!all.isEmpty()) {
            whyNot.of(sight.view()).stream()
                    .filter(c -> c.step().equals(step.id()))
                    .map(c -> sight.named(c.sentence()))
                    .forEach(all::add);
        }
        return all;
    }

    private Choice person(String id) {
        return new Choice(id, sight.personName(id), false);
    }

    private Choice place(String id) {
        return new Choice(id, sight.placeName(id), false);
    }

    /** Places of holds that leave a choice and have not begun. */
    private Set<String> choosable() {
        Set<String> places = new LinkedHashSet<>();
        for (Hold h : sight.work().holds()) {
            boolean begun = h.steps().stream()
                    .flatMap(s -> sight.work(s).stream())
                    .anyMatch(s -> s.state() != WorkStep.State.TODO);
            if (h.steps().contains(step.id()) && h.candidates().size() > h.count() && !begun) {
                places.addAll(h.candidates());
            }
        }
        return places;
    }

    private String halfDay(Instant at) {
        boolean morning = at.atZone(sight.time().zone()).getHour() < 12;
        return sight.time().day(at.atZone(sight.time().zone()).toLocalDate()) + (morning ? ", morning" : ", afternoon");
    }

    /** Steps not begun, near it, with as many people but not the same. */
    List<Choice> swaps() {
        if (planned.isEmpty() || planned.get().people().isEmpty()) {
            return List.of();
        }
        PlannedStep own = planned.get();
        Set<String> mine = new HashSet<>(own.people());
        return sight.plan().steps().stream()
                .filter(p -> sight.work(p.step())
                        .filter(s -> s.state() == WorkStep.State.TODO)
                        .isPresent())
                .filter(p -> p.people().size() == mine.size() && !mine.equals(new HashSet<>(p.people())))
                .filter(p -> Duration.between(own.start(), p.start()).abs().compareTo(NEAR) <= 0)
                .sorted(Comparator.comparing((PlannedStep p) ->
                                Duration.between(own.start(), p.start()).abs())
                        .thenComparing(PlannedStep::step))
                .limit(MOST_SWAPS)
                .map(p -> new Choice(
                        p.step(),
                        sight.personNames(p.people()) + ": " + sight.stepName(p.step()) + ", "
                                + sight.time().at(p.start()),
                        false))
                .toList();
    }
}
