package fayline.flow.planner.serial;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Place.Kind;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.planner.RandomWork;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.SmallShop;
import fayline.flow.planner.SmallShop.Step;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.goal.PlanScorer;
import fayline.flow.planner.serial.WishedSchedule.Sooner;
import fayline.flow.planner.serial.WishedSchedule.Wish;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is made of wishes keeps every rule, whatever is wished; the auditor judges. */
class WishedScheduleTest {
    private static LongStream seeds() {
        return LongStream.rangeClosed(1, 60);
    }

    private static Work work(long seed) {
        return RandomWork.of(seed, 1 + (int) (seed % 9), 70);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_lose_nothing_when_a_plan_is_wished_for_as_it_is(long seed) {
        Work work = work(seed);
        Plan plan = new SerialPlanner().plan(work);
        WishedSchedule schedule = new WishedSchedule(work, plan);
        Plan again = schedule.plan(schedule.of(plan), Sooner.BY_THE_SAME).orElseThrow();
        assertThat(new PlanAuditor().audit(work, again)).isEmpty();
        Map<String, PlannedStep> before = new HashMap<>();
        plan.steps().forEach(p -> before.put(p.step(), p));
        assertThat(again.steps())
                .hasSameSizeAs(plan.steps())
                .allSatisfy(p -> assertThat(p.end())
                        .isBeforeOrEqualTo(
                                Objects.requireNonNull(before.get(p.step())).end()));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_when_what_is_wished_cannot_be(long seed) {
        Work work = work(seed);
        Plan plan = new SerialPlanner().plan(work);
        WishedSchedule schedule = new WishedSchedule(work, plan);
        Random random = new Random(seed);
        List<String> people = work.people().stream().map(p -> p.id()).toList();
        int begins = 0;
        List<Wish> wishes = new ArrayList<>();
        for (Wish w : schedule.of(plan)) {
            // Anybody, whether able or not, and everything nearer together than can be.
            begins = Math.max(begins, w.start() * 2 / 3);
            List<String> who = w.crew() == 0 ? List.of() : List.of(people.get(random.nextInt(people.size())));
            wishes.add(new Wish(
                    w.step(), begins, w.crew(), random.nextBoolean() ? who : w.people(), List.of(), List.of()));
        }
        for (Sooner sooner : Sooner.values()) {
            Optional<Plan> made = schedule.plan(wishes, sooner);
            made.ifPresent(m -> assertThat(new PlanAuditor().audit(work, m)).isEmpty());
            made.ifPresent(m -> assertThat(
                            new PlanScorer(work, PlanGoal.USUAL).score(m).terms())
                    .hasSize(8));
        }
    }

    @Test
    void should_begin_a_stay_where_it_has_room_to_its_end_when_a_gap_before_another_looks_free() {
        Work work = new SmallShop(SmallShop.MONDAY + "08:00")
                .person("bo")
                .mould("m")
                .step(new Step("dry", 0, 0).alone(240, ""))
                .step(new Step("a", 1, 60).alone(600, "").after("dry"))
                .step(new Step("a-out", 1, 30).after("a"))
                .step(new Step("b", 1, 60).alone(600, ""))
                .step(new Step("b-out", 1, 30).after("b"))
                .hold(Kind.MOULD, List.of("m"), "a", "a-out")
                .hold(Kind.MOULD, List.of("m"), "b", "b-out")
                .work();
        WishedSchedule schedule = new WishedSchedule(work, new SerialPlanner().plan(work));
        List<Wish> wishes = List.of(
                wish("dry", 0, 0),
                wish("a", 240, 1),
                wish("a-out", 1440, 1),
                wish("b", 1470, 1),
                wish("b-out", 2880, 1));
        Plan plan = schedule.planOnce(wishes, Sooner.BY_ANYBODY).orElseThrow();
        // Between 08:00 and noon the mould is free for b, but not until its part is out on Tuesday.
        assertThat(plan.steps().stream().filter(p -> p.step().equals("b")).map(PlannedStep::start))
                .containsExactly(SmallShop.at("2026-03-03T08:30"));
        assertThat(new PlanAuditor().audit(work, plan)).isEmpty();
    }

    private static Wish wish(String step, int start, int crew) {
        return new Wish(step, start, crew, List.of(), List.of(), List.of());
    }

    @Test
    void should_lead_somewhere_when_plans_are_put_together_in_their_own_order() {
        long there = seeds().filter(seed -> {
                    Work work = work(seed);
                    Plan plan = new SerialPlanner().plan(work);
                    WishedSchedule schedule = new WishedSchedule(work, plan);
                    return schedule.planOnce(schedule.of(plan), Sooner.BY_ANYBODY)
                            .isPresent();
                })
                .count();
        // Of 60; 26 of them before, when a stay did not begin anew where it had no room to its end.
        assertThat(there).isGreaterThanOrEqualTo(59);
    }
}
