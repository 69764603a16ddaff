package fayline.app.usecase.view;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanSolver;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanGoal.Dated;
import fayline.flow.planner.goal.PlanGoals;
import fayline.flow.planner.goal.PlanScore;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.project.Definition;
import fayline.flow.result.Expanded;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.ShopWork;
import fayline.flow.whatif.Change;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Plans the shop as it is and as it might be, all by the same planner so that they can be compared, and touches neither record nor
 * plan.
 */
public final class WhatIf {
    private static final double MIN_PER_HOUR = 60;

    private final ShopRecord shop;
    private final PlanSolver planner = new SerialPlanner();
    private Optional<Base> kept = Optional.empty();
    private final Map<List<Change>, Outcome> known = new HashMap<>();

    /** Questions to a shop. */
    public WhatIf(ShopRecord shop) {
        this.shop = shop;
    }

    private record Base(long seq, Instant now, Projects projects, Outcome outcome) {}

    /**
     * How it would come out.
     *
     * @param finish the end of all; empty where nothing is planned
     * @param score every term that makes a plan better
     * @param missed windows missed
     * @param goals the day on which each dated goal is reached
     * @param broken rules that the plan breaks, known ones left out
     * @param starts when each step begins
     * @param done when the hands leave each step
     * @param handsHours person-hours of hands on all that is planned
     */
    public record Outcome(
            Optional<Instant> finish,
            PlanScore score,
            int missed,
            List<Goal> goals,
            int broken,
            Map<String, Instant> starts,
            Map<String, Instant> done,
            double handsHours) {
        /** Copies the collections. */
        public Outcome {
            goals = List.copyOf(goals);
            starts = Map.copyOf(starts);
            done = Map.copyOf(done);
        }

        /** How many steps begin at another time than in another outcome. */
        public long moved(Outcome other) {
            return starts.entrySet().stream()
                    .filter(e -> !e.getValue().equals(other.starts.get(e.getKey())))
                    .count();
        }
    }

    /**
     * A dated goal.
     *
     * @param name what is reached
     * @param due the moment by which
     * @param end when it is; empty where a step of it has no place in the plan or all is done
     */
    public record Goal(String name, Instant due, Optional<Instant> end) {}

    /**
     * Asks.
     *
     * @param changes what might be otherwise, each list together; an empty list is the shop as it is
     * @return an outcome for each; empty while the shop has no project that can be read
     */
    public synchronized List<Outcome> ask(List<List<Change>> changes) {
        Instant now = shop.minute();
        long seq = shop.state().head().seq();
        if (kept.filter(b -> b.seq() == seq && b.now().equals(now)).isEmpty()) {
            known.clear();
            kept = base(seq, now);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (List<Change> c : kept.isEmpty() ? List.<List<Change>>of() : changes) {
            outcomes.add(known.computeIfAbsent(List.copyOf(c), x -> outcome(kept.orElseThrow(), x)));
        }
        return List.copyOf(outcomes);
    }

    private Optional<Base> base(long seq, Instant now) {
        Projects projects = Projects.of(shop, shop.state(), now);
        return projects.all().isEmpty()
                ? Optional.empty()
                : Optional.of(new Base(seq, now, projects, outcome(projects, List.of())));
    }

    private Outcome outcome(Base base, List<Change> changes) {
        return changes.isEmpty() ? base.outcome() : outcome(base.projects(), changes);
    }

    private Outcome outcome(Projects projects, List<Change> changes) {
        List<Definition> definitions = new ArrayList<>();
        List<ProjectResult> results = new ArrayList<>();
        for (Expanded p : projects.all()) {
            Definition changed = p.whole();
            for (Change c : changes) {
                changed = c.in(changed);
            }
            Expanded expanded = changes.isEmpty() ? p : ProjectCalculator.expand(changed, p.state());
            definitions.add(expanded.definition());
            results.add(ProjectCalculator.calculate(expanded, projects.rates()));
        }
        Work work = ShopWork.combine(results);
        for (Change c : changes) {
            work = c.in(work);
        }
        PlanGoal goal = PlanGoals.of(definitions, work, shop.state().published());
        Plan plan = planner.plan(work, goal);
        Map<String, Instant> starts = new HashMap<>();
        Map<String, Instant> done = new HashMap<>();
        plan.steps().forEach(p -> {
            starts.put(p.step(), p.start());
            done.put(p.step(), p.handsEnd());
        });
        return new Outcome(
                plan.finish(),
                new PlanScorer(work.inSetsOf(plan), goal).score(plan),
                plan.steps().stream().mapToInt(p -> p.missed().size()).sum(),
                goal.dates().stream().map(d -> goal(d, plan)).toList(),
                (int) new PlanAuditor()
                        .audit(work, plan).stream().filter(b -> !b.admitted()).count(),
                starts,
                done,
                plan.steps().stream().mapToDouble(WhatIf::handsHours).sum());
    }

    private static double handsHours(PlannedStep s) {
        long min = s.stretches().isEmpty()
                ? Duration.between(s.start(), s.handsEnd()).toMinutes()
                : s.stretches().stream()
                        .mapToLong(x -> Duration.between(x.from(), x.to()).toMinutes())
                        .sum();
        return min / MIN_PER_HOUR * s.people().size();
    }

    private static Goal goal(Dated dated, Plan plan) {
        boolean open = plan.unplanned().stream().anyMatch(u -> dated.steps().contains(u.step()));
        Optional<Instant> end = plan.steps().stream()
                .filter(p -> dated.steps().contains(p.step()))
                .map(PlannedStep::end)
                .max(Comparator.naturalOrder());
        return new Goal(dated.name(), dated.due(), open ? Optional.empty() : end);
    }
}
