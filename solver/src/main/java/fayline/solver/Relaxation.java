package fayline.solver;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CumulativeConstraint;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.IntervalVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.Literal;
import com.google.ortools.util.Domain;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.serial.TimeLine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The work with most rules left out, as a model whose least finish no plan can beat. Times are minutes of a time line. */
final class Relaxation {
    private final Work work;
    private final Plan plan;
    private final TimeLine time;
    private final Headcount heads;
    private final int now;
    private final int last;
    private final CpModel model = new CpModel();
    private final Map<String, WorkStep> steps = new LinkedHashMap<>();
    private final Map<String, PlannedStep> planned = new LinkedHashMap<>();
    private final Map<String, Times> todo = new LinkedHashMap<>();
    private final List<Option> options = new ArrayList<>();

    /** Moments of a step to do, and the least it can take. */
    private record Times(IntVar start, IntVar handsEnd, LinearExpr end) {}

    /** One crew size of one step, in use or not. */
    private record Option(WorkStep step, int people, IntervalVar interval) {}

    Relaxation(Work work, Plan plan) {
        this.work = work;
        this.plan = plan;
        time = new TimeLine(work);
        heads = new Headcount(work, time);
        now = time.ceil(work.now());
        last = plan.finish().map(time::ceil).orElse(now);
        work.steps().forEach(s -> steps.put(s.id(), s));
        plan.steps().forEach(p -> planned.put(p.step(), p));
    }

    Instant at(int minute) {
        return time.at(minute);
    }

    CpModel build() {
        IntVar finish = model.newIntVar(Math.min(now, last), last, "finish");
        for (PlannedStep p : plan.steps()) {
            WorkStep step = steps.get(p.step());
            if (step == null || step.state() != State.TODO) {
                model.addGreaterOrEqual(finish, Math.min(last, time.floor(p.end())));
            } else {
                Times times = times(step, p);
                todo.put(step.id(), times);
                model.addLessOrEqual(times.end, finish);
            }
        }
        todo.forEach((id, times) -> links(steps.getOrDefault(id, work.steps().get(0)), times));
        places();
        people();
        model.minimize(finish);
        return model;
    }

    private Times times(WorkStep step, PlannedStep p) {
        long least = step.hands().stream().mapToInt(CrewTime::minutes).min().orElse(0);
        IntVar start = model.newIntVarFromDomain(domain(starts(step)), step.id());
        IntVar handsEnd = step.interruptible()
                ? model.newIntVarFromDomain(domain(heads.workEnds(now, last)), step.id() + " hands end")
                : model.newIntVar(now, last, step.id() + " hands end");
        model.addHint(start, time.floor(p.start()));
        model.addHint(handsEnd, time.floor(p.handsEnd()));
        if (step.hands().isEmpty()) {
            model.addEquality(handsEnd, start);
        } else if (step.interruptible()) {
            model.addGreaterOrEqual(handsEnd, LinearExpr.affine(start, 1, least));
        } else {
            crews(step, p, start, handsEnd);
        }
        return new Times(start, handsEnd, LinearExpr.affine(handsEnd, 1, fastest(step.alone())));
    }

    /** One of the crew sizes is in use. The price of a missed window only makes hands longer: they end no sooner. */
    private void crews(WorkStep step, PlannedStep p, IntVar start, IntVar handsEnd) {
        List<Literal> chosen = new ArrayList<>();
        for (CrewTime c : step.hands()) {
            BoolVar uses = model.newBoolVar(step.id() + " with " + c.people());
            chosen.add(uses);
            model.addHint(uses, p.people().size() == c.people());
            model.addGreaterOrEqual(handsEnd, LinearExpr.affine(start, 1, c.minutes()))
                    .onlyEnforceIf(uses);
            options.add(new Option(
                    step,
                    c.people(),
                    model.newOptionalFixedSizeIntervalVar(start, c.minutes(), uses, step.id() + " by " + c.people())));
        }
        model.addExactlyOne(chosen);
    }

    /** Minutes at which some crew large enough is in for long enough, whoever they are. */
    private List<int[]> starts(WorkStep step) {
        int earliest = Math.max(now, step.notBefore().map(time::ceil).orElse(now));
        for (WorkWish w : work.wishes()) {
            boolean binds = w.step().equals(step.id()) && !w.isPast(work.now());
            earliest = binds ? Math.max(earliest, w.from().map(time::ceil).orElse(now)) : earliest;
        }
        for (Work.Awaited d : work.deliveries()) {
            earliest = step.awaits().contains(d.id()) ? Math.max(earliest, time.ceil(d.expected())) : earliest;
        }
        if (step.hands().isEmpty()) {
            return List.of(new int[] {earliest, last});
        }
        List<int[]> starts = new ArrayList<>();
        for (CrewTime c : step.hands()) {
            int minutes = step.interruptible() ? 1 : c.minutes();
            starts.addAll(heads.starts(c.people(), minutes, earliest, last));
        }
        return starts;
    }

    private static Domain domain(List<int[]> stretches) {
        long[][] intervals = new long[stretches.size()][];
        for (int i = 0; i < intervals.length; i++) {
            intervals[i] = new long[] {stretches.get(i)[0], stretches.get(i)[1]};
        }
        return Domain.fromIntervals(intervals);
    }

    /** A span in minutes of time if its clock ran at its fastest throughout. */
    private long fastest(Span span) {
        double rate = 1;
        for (CureClock clock : work.clocks()) {
            if (clock.id().equals(span.clock())) {
                rate = clock.rates().stream().mapToDouble(r -> r).max().orElse(1);
            }
        }
        return (long) Math.floor(span.minutes() / rate * (1 - 1e-6));
    }

    private void links(WorkStep step, Times times) {
        for (Link link : step.after()) {
            Times earlier = todo.get(link.step());
            PlannedStep happened = planned.get(link.step());
            if (earlier != null) {
                LinearExpr moment = switch (link.from()) {
                    case "start" -> LinearExpr.affine(earlier.start, 1, fastest(link.opens()));
                    case "hands-end" -> LinearExpr.affine(earlier.handsEnd, 1, fastest(link.opens()));
                    default ->
                        LinearExpr.newBuilder()
                                .add(earlier.end)
                                .add(fastest(link.opens()))
                                .build();
                };
                model.addGreaterOrEqual(times.start, moment);
            } else if (happened != null) {
                int m = time.floor(
                        switch (link.from()) {
                            case "start" -> happened.start();
                            case "hands-end" -> happened.handsEnd();
                            default -> happened.end();
                        });
                model.addGreaterOrEqual(times.start, Math.max(m, time.over(m, link.opens())));
            }
        }
    }

    /** For each set of places that some hold may choose from: what must choose within it fits into it. */
    private void places() {
        Set<Set<String>> sets = new LinkedHashSet<>();
        work.holds().forEach(h -> sets.add(new TreeSet<>(h.candidates())));
        Map<String, IntervalVar> stays = new HashMap<>();
        for (Hold hold : work.holds()) {
            boolean whole = hold.steps().stream().allMatch(planned::containsKey);
            // Running stays may overlap each other, and what is not wholly planned has no end to reckon with.
            boolean fresh = hold.steps().stream().allMatch(todo::containsKey);
            if (whole && fresh && !hold.steps().isEmpty()) {
                stays.put(hold.id(), stay(hold));
            }
        }
        for (Set<String> set : sets) {
            CumulativeConstraint within = model.addCumulative(set.size());
            for (Hold hold : work.holds()) {
                IntervalVar stay = stays.get(hold.id());
                if (stay != null && set.containsAll(hold.candidates())) {
                    within.addDemand(stay, hold.count());
                }
            }
        }
    }

    private IntervalVar stay(Hold hold) {
        IntVar from = model.newIntVar(now, last, hold.id() + " from");
        IntVar to = model.newIntVar(now, last + 1L, hold.id() + " to");
        IntVar size = model.newIntVar(0, last + 1L - now, hold.id() + " size");
        int first = last;
        int end = now;
        for (String id : new HashSet<>(hold.steps())) {
            Times times = todo.get(id);
            PlannedStep p = planned.get(id);
            if (times != null && p != null) {
                model.addLessOrEqual(from, times.start);
                model.addGreaterOrEqual(to, times.end);
                first = Math.min(first, time.floor(p.start()));
                end = Math.max(end, time.floor(p.end()));
            }
        }
        model.addHint(from, first);
        model.addHint(to, end);
        return model.newIntervalVar(from, size, to, hold.id());
    }

    private void people() {
        cumulative(options.stream().map(Option::people).toList(), heads.absences(now, last, ""), heads.most(""));
        Set<String> skills = new TreeSet<>();
        work.steps().forEach(s -> skills.addAll(s.skills().keySet()));
        for (String skill : skills) {
            cumulative(
                    options.stream()
                            .map(o -> o.step.skills().getOrDefault(skill, 0))
                            .toList(),
                    heads.absences(now, last, skill),
                    heads.most(skill));
        }
    }

    private void cumulative(List<Integer> demands, List<int[]> absences, int most) {
        CumulativeConstraint crew = model.addCumulative(most);
        for (int i = 0; i < demands.size(); i++) {
            if (demands.get(i) > 0) {
                crew.addDemand(options.get(i).interval, demands.get(i));
            }
        }
        for (int[] a : absences) {
            crew.addDemand(model.newFixedInterval(a[0], (long) a[1] - a[0], "away"), a[2]);
        }
    }
}
