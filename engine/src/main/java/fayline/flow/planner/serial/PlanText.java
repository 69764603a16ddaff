package fayline.flow.planner.serial;

import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Plan.Unplanned;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Writes placements down as a plan. */
final class PlanText {
    private PlanText() {}

    static Plan of(Net net, List<Placement> placements, Map<Integer, String> reasons) {
        List<PlannedStep> steps = new ArrayList<>();
        for (Placement p : placements) {
            steps.add(planned(net, p));
        }
        steps.sort(Comparator.comparing(PlannedStep::start).thenComparing(s -> net.taskOf.getOrDefault(s.step(), 0)));
        List<Unplanned> unplanned = new TreeSet<>(reasons.keySet())
                .stream()
                        .map(t -> new Unplanned(net.task(t).step.id(), reasons.getOrDefault(t, "")))
                        .toList();
        Optional<Instant> finish = steps.stream().map(PlannedStep::end).max(Comparator.naturalOrder());
        return new Plan(steps, unplanned, finish);
    }

    private static PlannedStep planned(Net net, Placement p) {
        WorkStep step = net.task(p.task()).step;
        List<Stretch> stretches = p.stretches().stream()
                .map(s -> new Stretch(net.time.at(s[0]), net.time.at(s[1])))
                .toList();
        if (!net.task(p.task()).isTodo()) {
            WorkStep.Actual actual = step.actual();
            return new PlannedStep(
                    step.id(),
                    actual.started().orElse(net.time.at(p.start())),
                    actual.handsEnded().orElse(net.time.at(p.handsEnd())),
                    actual.ended().orElse(net.time.at(p.end())),
                    actual.people(),
                    actual.places(),
                    stretches,
                    List.of());
        }
        Set<Integer> places = new TreeSet<>();
        p.chosen().forEach(places::addAll);
        return new PlannedStep(
                step.id(),
                net.time.at(p.start()),
                net.time.at(p.handsEnd()),
                net.time.at(p.end()),
                p.people().stream().map(i -> net.work.people().get(i).id()).toList(),
                places.stream().map(i -> net.places.get(i).id()).toList(),
                stretches,
                p.missed().stream().map(i -> net.task(i).step.id()).distinct().toList());
    }
}
