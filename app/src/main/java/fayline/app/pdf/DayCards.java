package fayline.app.pdf;

import fayline.flow.card.Card;
import fayline.flow.card.CardMaker;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.result.ProjectResult;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;

/** Chooses the cards of a day: every step of the project on which hands work that day, ordered by person and time. */
public final class DayCards {
    private DayCards() {}

    /**
     * Makes the cards.
     *
     * @param definition the project
     * @param result what follows from it
     * @param plan the plan
     * @param zone the shop's zone
     * @param day the day
     */
    public static List<Card> of(Definition definition, ProjectResult result, Plan plan, ZoneId zone, LocalDate day) {
        return plan.steps().stream()
                .filter(s -> result.step(s.step())
                        .filter(r -> r.work().state() != WorkStep.State.DONE)
                        .isPresent())
                .filter(s -> touches(s, zone, day))
                .sorted(Comparator.comparing((Plan.PlannedStep s) -> first(s))
                        .thenComparing(Plan.PlannedStep::start)
                        .thenComparing(Plan.PlannedStep::step))
                .map(s -> CardMaker.make(definition, result, plan, s.step()))
                .toList();
    }

    private static String first(Plan.PlannedStep s) {
        return s.people().isEmpty() ? "\uffff" : s.people().get(0);
    }

    private static boolean touches(Plan.PlannedStep s, ZoneId zone, LocalDate day) {
        LocalDate from = s.start().atZone(zone).toLocalDate();
        LocalDate to = s.handsEnd().atZone(zone).toLocalDate();
        return !from.isAfter(day) && !to.isBefore(day);
    }
}
