package fayline.flow.forecast;

import fayline.basis.numeric.RandomStream;
import fayline.flow.forecast.PlanForecast.End;
import fayline.flow.forecast.PlanForecast.Holding;
import fayline.flow.forecast.Spreads.Between;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.Work.Awaited;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkWish;
import fayline.flow.plan.Worker;
import fayline.flow.planner.PlanReasons;
import fayline.flow.planner.PlanSolver;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

/**
 * Plans the work many times over. In each trial every kind of work has its own rate and every step its own time, drawn from
 * lognormal distributions about the plan's, and deliveries come on a day between the bounds given. Which steps hold the end is
 * counted over the trials (the criticality index of Van Slyke 1963 [vanslyke1963]). Work that may not be interrupted is never
 * drawn longer than the longest time that its crew is in at a stretch: in the shop somebody would stay. Of the lead's wishes all
 * count but the moment by which a step is to begin: what is late in a trial is late.
 */
public final class TrialPlans {
    private static final int ROUND_MIN = 5;

    private final Work work;
    private final Spreads spreads;
    private final List<Target> targets;
    private final PlanSolver planner;
    private final long seed;
    private final int longest;

    /**
     * Trials of a work.
     *
     * @param work the work
     * @param spreads how far times and deliveries may be off
     * @param targets whose ends are asked
     * @param planner a quick planner
     * @param seed of the draws: with equal work, equal trials
     */
    public TrialPlans(Work work, Spreads spreads, List<Target> targets, PlanSolver planner, long seed) {
        this.work = work;
        this.spreads = spreads;
        this.targets = List.copyOf(targets);
        this.planner = planner;
        this.seed = seed;
        longest = work.people().stream()
                .flatMap(p -> p.present().stream())
                .mapToInt(TrialPlans::minutes)
                .max()
                .orElse(0);
    }

    private static int minutes(Worker.Stretch s) {
        return (int) Duration.between(s.from(), s.to()).toMinutes();
    }

    /**
     * Makes the trials, each of which depends on the seed and its own number alone.
     *
     * @param trials how many; positive
     * @param stop asked before each; once true, what was tried so far is the answer
     */
    public PlanForecast run(int trials, BooleanSupplier stop) {
        Map<Target, List<Instant>> ends = new LinkedHashMap<>();
        targets.forEach(t -> ends.put(t, new ArrayList<>()));
        Map<String, Integer> held = new TreeMap<>();
        int made = 0;
        while (made < trials && !stop.getAsBoolean()) {
            Work drawn = draw(new RandomStream(seed, made));
            Plan plan = planner.plan(drawn);
            Set<String> unplanned = new HashSet<>();
            plan.unplanned().forEach(u -> unplanned.add(u.step()));
            for (Target t : targets) {
                end(plan, t, unplanned)
                        .ifPresent(e -> ends.getOrDefault(t, new ArrayList<>()).add(e));
            }
            Set<String> all = new HashSet<>();
            drawn.steps().forEach(s -> all.add(s.id()));
            PlanReasons.chain(drawn, plan, all).forEach(r -> held.merge(r.step(), 1, Integer::sum));
            made++;
        }
        int n = made;
        List<End> sorted = ends.entrySet().stream()
                .map(e -> new End(
                        e.getKey(),
                        e.getValue().stream().sorted().toList(),
                        n - e.getValue().size()))
                .toList();
        List<Holding> holding = held.entrySet().stream()
                .map(e -> new Holding(e.getKey(), e.getValue() / (double) n))
                .sorted(Comparator.comparing(Holding::share).reversed().thenComparing(Holding::step))
                .toList();
        return new PlanForecast(n, sorted, holding);
    }

    private Optional<Instant> end(Plan plan, Target target, Set<String> unplanned) {
        Map<String, WorkStep> own = new HashMap<>();
        for (WorkStep s : work.steps()) {
            if (target.made().contains(s.project() + "/" + s.made())) {
                own.put(s.id(), s);
            }
        }
        if (own.keySet().stream().anyMatch(unplanned::contains)) {
            return Optional.empty();
        }
        return plan.steps().stream()
                .filter(p -> own.containsKey(p.step()))
                .map(PlannedStep::end)
                .max(Comparator.naturalOrder());
    }

    private Work draw(RandomStream chance) {
        Map<String, Double> kinds = new HashMap<>();
        List<WorkStep> steps = new ArrayList<>();
        for (WorkStep s : work.steps()) {
            if (s.state() != WorkStep.State.TODO || s.hands().isEmpty()) {
                steps.add(s);
                continue;
            }
            double ofKind = kinds.computeIfAbsent(
                    s.kind(), k -> spreads.kinds().getOrDefault(k, spreads.otherKinds()) * chance.nextNormal());
            steps.add(with(s, Math.exp(ofKind + spreads.scatter() * chance.nextNormal())));
        }
        List<Awaited> deliveries = new ArrayList<>();
        for (Awaited d : work.deliveries()) {
            Between b = spreads.deliveries().get(d.id());
            double u = chance.nextUnit();
            deliveries.add(b == null ? d : new Awaited(d.id(), d.what(), between(b, u)));
        }
        return work.withDeliveries(deliveries)
                .withSteps(steps, work.holds())
                .withWishes(work.wishes().stream().map(WorkWish::openEnded).toList());
    }

    private Instant between(Between b, double u) {
        long minutes = Math.round(Duration.between(b.from(), b.to()).toMinutes() * u);
        Instant at = b.from().plus(Duration.ofMinutes(minutes));
        return at.isBefore(work.now()) ? work.now() : at;
    }

    private WorkStep with(WorkStep s, double factor) {
        List<CrewTime> hands = s.hands().stream()
                .map(h -> {
                    int drawn = (int) Math.ceil(h.minutes() * factor / ROUND_MIN) * ROUND_MIN;
                    int most = s.interruptible() ? drawn : Math.max(h.minutes(), longest);
                    return new CrewTime(h.people(), Math.max(ROUND_MIN, Math.min(drawn, most)));
                })
                .toList();
        return s.withHands(hands);
    }
}
