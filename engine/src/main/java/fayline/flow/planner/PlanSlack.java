package fayline.flow.planner;

import fayline.flow.plan.Hold;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.Worker;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.serial.TimeLine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** By how many minutes a planned step may begin later while all else stays; see {@link PlanReasons.Reason#slipMin}. */
final class PlanSlack {
    private final TimeLine time;
    private final Map<String, WorkStep> steps;
    private final Map<String, PlannedStep> planned;
    private final Map<String, Worker> people;
    private final List<Stay> stays;
    private final int finish;
    /** By when the lead wishes a step begun. */
    private final Map<String, Integer> beforeIn = new HashMap<>();

    /** How long a hold has its places. */
    record Stay(Hold hold, List<String> places, int from, int to) {}

    PlanSlack(
            Work work,
            Plan plan,
            TimeLine time,
            Map<String, WorkStep> steps,
            Map<String, PlannedStep> planned,
            Map<String, Worker> people,
            List<Stay> stays) {
        this.time = time;
        this.steps = steps;
        this.planned = planned;
        this.people = people;
        this.stays = stays;
        work.wishes().stream()
                .filter(w -> !w.isPast(work.now()))
                .forEach(w -> w.before().ifPresent(b -> beforeIn.merge(w.step(), time.ceil(b), Math::min)));
        finish = plan.finish().map(time::floor).orElse(0);
    }

    static List<Stay> stays(Work work, TimeLine time, Map<String, PlannedStep> planned) {
        List<Stay> stays = new ArrayList<>();
        for (Hold hold : work.holds()) {
            List<PlannedStep> in = hold.steps().stream()
                    .map(planned::get)
                    .flatMap(p -> Optional.ofNullable(p).stream())
                    .toList();
            if (!in.isEmpty()) {
                int from =
                        in.stream().mapToInt(p -> time.floor(p.start())).min().orElse(0);
                int to = in.size() < hold.steps().size()
                        ? TimeLine.FOREVER
                        : in.stream().mapToInt(p -> time.floor(p.end())).max().orElse(0);
                List<String> places = in.stream()
                        .flatMap(p -> p.places().stream())
                        .filter(hold.candidates()::contains)
                        .distinct()
                        .toList();
                stays.add(new Stay(hold, places, from, to));
            }
        }
        return List.copyOf(stays);
    }

    static int moment(TimeLine time, Link link, PlannedStep before) {
        return switch (link.from()) {
            case "start" -> time.floor(before.start());
            case "hands-end" -> time.floor(before.handsEnd());
            default -> time.floor(before.end());
        };
    }

    int of(WorkStep step, PlannedStep p) {
        int handsEnd = time.floor(p.handsEnd());
        int end = time.floor(p.end());
        int slip = Math.max(0, finish - end);
        for (PlannedStep other : planned.values()) {
            WorkStep later = steps.get(other.step());
            for (Link link : later == null || later.state() != WorkStep.State.TODO ? List.<Link>of() : later.after()) {
                if (link.step().equals(step.id())) {
                    int m = moment(time, link, p);
                    slip = Math.min(slip, time.floor(other.start()) - Math.max(m, time.over(m, link.opens())));
                }
            }
            if (!other.step().equals(step.id()) && other.people().stream().anyMatch(p.people()::contains)) {
                for (Stretch s : other.stretches()) {
                    int from = time.floor(s.from());
                    slip = from >= handsEnd ? Math.min(slip, from - handsEnd) : slip;
                }
            }
        }
        slip = Math.min(slip, ownWindow(step, p));
        slip = Math.min(slip, beforeIn.getOrDefault(step.id(), TimeLine.FOREVER) - 1 - time.floor(p.start()));
        slip = Math.min(slip, presence(step, p, handsEnd));
        return Math.max(0, Math.min(slip, places(step, end)));
    }

    private int ownWindow(WorkStep step, PlannedStep p) {
        int slip = TimeLine.FOREVER;
        for (Link link : step.after()) {
            PlannedStep before = planned.get(link.step());
            if (before != null && link.shuts().isPresent() && !p.missed().contains(link.step())) {
                int last = time.last(moment(time, link, before), link.shuts().get());
                slip = Math.min(slip, last - time.floor(p.start()));
            }
        }
        return slip;
    }

    private int presence(WorkStep step, PlannedStep p, int handsEnd) {
        int slip = TimeLine.FOREVER;
        for (String person : step.interruptible() ? List.<String>of() : p.people()) {
            Worker w = people.get(person);
            for (Stretch s : w == null ? List.<Stretch>of() : w.present()) {
                int to = time.floor(s.to());
                if (time.ceil(s.from()) < handsEnd && to >= handsEnd) {
                    slip = Math.min(slip, to - handsEnd);
                }
            }
        }
        return slip;
    }

    private int places(WorkStep step, int end) {
        int slip = TimeLine.FOREVER;
        for (Stay own : stays) {
            if (own.hold.steps().contains(step.id()) && own.to == end) {
                for (Stay other : stays) {
                    if (other.from >= end && other.places.stream().anyMatch(own.places::contains)) {
                        slip = Math.min(slip, other.from - end);
                    }
                }
            }
        }
        return slip;
    }
}
