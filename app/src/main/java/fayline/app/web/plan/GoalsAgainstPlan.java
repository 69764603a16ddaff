package fayline.app.web.plan;

import fayline.app.drawing.Mark;
import fayline.app.web.frame.Sight;
import fayline.app.web.frame.StateWord;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.planner.goal.PlanGoals;
import fayline.flow.project.ProjectFacts.Milestone;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The dated goals of a project, each with the day on which the plan reaches it. */
final class GoalsAgainstPlan {
    private GoalsAgainstPlan() {}

    /** The goals, the first due leading. */
    static List<WeeksView.Goal> of(Sight sight) {
        return sight.definition().facts().milestones().stream()
                .sorted(Comparator.comparing(Milestone::due))
                .map(m -> goal(sight, m))
                .toList();
    }

    private static WeeksView.Goal goal(Sight sight, Milestone m) {
        Set<String> made = PlanGoals.madeFor(sight.definition(), m.after());
        String link = sight.made(m.after()).isPresent() ? sight.madeLink(m.after()) : "/airframe";
        List<WorkStep> steps = sight.work().steps().stream()
                .filter(s -> s.project().equals(sight.view().project()) && made.contains(s.made()))
                .toList();
        List<WorkStep> left =
                steps.stream().filter(s -> s.state() != WorkStep.State.DONE).toList();
        String due = "due " + sight.time().day(m.due());
        if (steps.isEmpty()) {
            return new WeeksView.Goal(
                    m.name(), link, new StateWord("no step leads to it", Mark.TROUBLE, "trouble"), due);
        }
        if (left.isEmpty()) {
            String when = last(steps.stream().flatMap(s -> s.actual().ended().stream()))
                    .map(t -> "on " + sight.time().day(day(sight, t)) + "; ")
                    .orElse("");
            return new WeeksView.Goal(m.name(), link, new StateWord("reached", Mark.DONE, "done"), when + due);
        }
        long unplanned =
                left.stream().filter(s -> sight.planned(s.id()).isEmpty()).count();
        Optional<Instant> end =
                last(left.stream().flatMap(s -> sight.planned(s.id()).stream()).map(Plan.PlannedStep::end));
        if (unplanned > 0 || end.isEmpty()) {
            String open = unplanned == 1 ? "1 step has" : unplanned + " steps have";
            return new WeeksView.Goal(
                    m.name(),
                    link,
                    new StateWord("not planned to its end", Mark.TROUBLE, "trouble"),
                    due + "; " + open + " no place in the plan");
        }
        return planned(sight, m, link, day(sight, end.get()), due);
    }

    private static WeeksView.Goal planned(Sight sight, Milestone m, String link, LocalDate end, String due) {
        long spare = ChronoUnit.DAYS.between(end, m.due());
        String words = "planned for " + sight.time().day(end) + "; " + due;
        return spare < 0
                ? new WeeksView.Goal(
                        m.name(), link, new StateWord("late by " + days(-spare), Mark.TROUBLE, "trouble"), words)
                : new WeeksView.Goal(
                        m.name(),
                        link,
                        new StateWord(spare == 0 ? "just in time" : days(spare) + " to spare", Mark.READY, ""),
                        words);
    }

    private static String days(long n) {
        return n == 1 ? "1 day" : n + " days";
    }

    private static LocalDate day(Sight sight, Instant at) {
        return at.atZone(sight.time().zone()).toLocalDate();
    }

    private static Optional<Instant> last(Stream<Instant> moments) {
        return moments.max(Comparator.naturalOrder());
    }
}
