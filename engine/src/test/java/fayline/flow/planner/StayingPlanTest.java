package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.Worker;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the crew was told stays as far as it can, and what is made of old plans keeps every rule. */
class StayingPlanTest {
    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 40);
    }

    private static PlanGoal told(Plan plan) {
        List<PublishedPlan.Step> steps = plan.steps().stream()
                .map(p -> new PublishedPlan.Step(p.step(), p.start(), p.handsEnd(), p.end(), p.people(), p.places()))
                .toList();
        return new PlanGoal(
                PlanWeights.USUAL,
                List.of(),
                Optional.of(new PublishedPlan(1, RandomWork.NOW, "p0", "hash", "hash", steps)));
    }

    private static Work away(Work work, String who, Instant to) {
        List<Worker> people = work.people().stream()
                .map(p -> !p.id().equals(who)
                        ? p
                        : new Worker(
                                p.id(),
                                p.name(),
                                p.skills(),
                                p.present().stream()
                                        .filter(s -> !s.from().isBefore(to))
                                        .toList(),
                                p.breaks().stream()
                                        .filter(s -> !s.from().isBefore(to))
                                        .toList()))
                .toList();
        return Works.withPeople(work, people);
    }

    /** Steps with the absent person, all that waits for them, and all that shares a hold with one of those. */
    private static Set<String> touched(Work work, Plan plan, String who) {
        Set<String> touched = new HashSet<>();
        plan.steps().stream().filter(p -> p.people().contains(who)).forEach(p -> touched.add(p.step()));
        boolean grows = true;
        while (grows) {
            Set<String> more = new HashSet<>();
            for (WorkStep s : work.steps()) {
                s.after().stream().filter(l -> touched.contains(l.step())).forEach(l -> more.add(s.id()));
            }
            work.holds().stream()
                    .filter(h -> h.steps().stream().anyMatch(touched::contains))
                    .forEach(h -> more.addAll(h.steps()));
            grows = touched.addAll(more);
        }
        return touched;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_leave_the_next_two_days_where_an_absence_does_not_touch_them(long seed) {
        Work work = RandomWork.of(seed, 3 + (int) (seed % 6), 84);
        Plan before = new SerialPlanner().plan(work);
        Work fewer = away(work, "p1", Instant.parse("2026-03-09T00:00:00Z"));
        PlanGoal goal = told(before);
        Plan after = StayingPlan.of(fewer, new SerialPlanner().plan(fewer), goal, Optional.empty())
                .get(0);
        assertThat(new PlanAuditor().audit(fewer, after)).isEmpty();
        PlanScorer scorer = new PlanScorer(fewer, goal);
        Set<String> touched = touched(fewer, before, "p1");
        List<PlannedStep> near = new ArrayList<>();
        for (PlannedStep p : after.steps()) {
            if (scorer.isNear(p.step()) && !touched.contains(p.step())) {
                near.add(p);
            }
        }
        assertThat(near).as("seed %d", seed).noneMatch(scorer::isMoved);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_keep_to_the_plan_that_was_told_when_nothing_has_changed(long seed) {
        Work work = RandomWork.of(seed, 3 + (int) (seed % 6), 84);
        Plan plan = new SerialPlanner().plan(work);
        Plan again = StayingPlan.of(work, plan, told(plan), Optional.empty()).get(0);
        assertThat(StayingPlan.of(work, plan, told(plan), Optional.of(plan))).contains(plan);
        assertThat(new PlanAuditor().audit(work, again)).isEmpty();
        PlanScorer scorer = new PlanScorer(work, told(plan));
        assertThat(scorer.nearMoved(again)).isZero();
        assertThat(scorer.score(again).total())
                .isLessThanOrEqualTo(scorer.score(plan).total());
    }
}
