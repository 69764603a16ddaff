package fayline.flow.planner.serial;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.planner.RandomWork;
import fayline.flow.planner.SerialPlanner;
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
}
