package fayline.flow.result;

import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.result.quantity.Drawn;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.step.StepResult;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.TemporalAdjusters;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a week draws from the stores.
 *
 * @param monday the week's first day
 * @param needs what its steps draw, one entry for each thing
 * @param cost what that costs, as far as prices are known
 * @param personMinutes hands-on time at the least crew
 * @param steps the steps that begin in it and have not begun yet, in the order of their starts
 */
public record WeekNeeds(LocalDate monday, List<Need> needs, double cost, int personMinutes, List<String> steps) {
    /** Copies the lists. */
    public WeekNeeds {
        needs = List.copyOf(needs);
        steps = List.copyOf(steps);
    }

    /**
     * The weeks of a plan, in order; weeks without a step are left out.
     *
     * @param result what the steps take
     * @param plan when they begin
     * @param zone the zone in which days are counted
     */
    public static List<WeekNeeds> of(ProjectResult result, Plan plan, ZoneId zone) {
        Map<String, Plan.PlannedStep> planned = new TreeMap<>();
        plan.steps().forEach(p -> planned.put(p.step(), p));
        Map<LocalDate, List<StepResult>> weeks = new TreeMap<>();
        result.steps().stream()
                .filter(s -> s.work().state() == WorkStep.State.TODO && planned.containsKey(s.id()))
                .sorted((a, b) -> start(planned, a).compareTo(start(planned, b)))
                .forEach(s -> weeks.computeIfAbsent(
                                start(planned, s)
                                        .atZone(zone)
                                        .toLocalDate()
                                        .with(TemporalAdjusters.previousOrSame(DayOfWeek.MONDAY)),
                                k -> new ArrayList<>())
                        .add(s));
        List<WeekNeeds> out = new ArrayList<>();
        weeks.forEach((monday, steps) -> {
            List<Need> needs =
                    Drawn.sum(steps.stream().flatMap(s -> s.needs().stream()).toList());
            out.add(new WeekNeeds(
                    monday,
                    needs,
                    Drawn.cost(needs),
                    steps.stream().mapToInt(StepResult::personMinutes).sum(),
                    steps.stream().map(StepResult::id).toList()));
        });
        return out;
    }

    private static java.time.Instant start(Map<String, Plan.PlannedStep> planned, StepResult step) {
        Plan.PlannedStep p = planned.get(step.id());
        if (p == null) {
            throw new IllegalArgumentException("not planned: " + step.id());
        }
        return p.start();
    }
}
