package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.BrokenRule;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.PlanReasons.Cause;
import fayline.flow.planner.PlanReasons.Reason;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.planner.serial.WishedSchedule;
import fayline.flow.planner.serial.WishedSchedule.Sooner;
import fayline.flow.project.shop.PlanWeights;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Properties of plans under wishes of the lead, in invented shops; the auditor is the judge. */
class WishesRandomTest {
    private static final int SHOPS = 60;
    private static final AtomicInteger NAMED = new AtomicInteger();

    private static LongStream seeds() {
        return LongStream.rangeClosed(1, SHOPS);
    }

    private static Work shop(long seed) {
        return RandomWork.of(seed, 2 + (int) (seed % 7), 84);
    }

    private static Work wished(long seed) {
        Work work = shop(seed);
        return RandomWishes.on(work, new SerialPlanner().plan(work), seed, 1 + (int) (seed % 6));
    }

    private static List<BrokenRule> broken(Work work, Plan plan) {
        return new PlanAuditor()
                .audit(work, plan).stream().filter(b -> !b.admitted()).toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_and_say_why_when_the_lead_has_wishes(long seed) {
        Work work = wished(seed);
        Plan plan = new SerialPlanner().plan(work);
        assertThat(broken(work, plan)).as("seed %d", seed).isEmpty();
        assertThat(plan.unplanned()).allSatisfy(u -> assertThat(u.reason()).hasSizeGreaterThan(20));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_when_an_older_plan_is_put_together_anew_under_wishes(long seed) {
        Work work = wished(seed);
        Plan fresh = new SerialPlanner().plan(work);
        Plan old = new SerialPlanner().plan(shop(seed));
        WishedSchedule schedule = new WishedSchedule(work, fresh);
        List<WishedSchedule.Wish> asOld = schedule.of(fresh).stream()
                .map(w -> schedule.of(old).stream()
                        .filter(o -> o.step().equals(w.step()))
                        .findFirst()
                        .orElse(w))
                .toList();
        for (Sooner sooner : Sooner.values()) {
            schedule.plan(asOld, sooner)
                    .ifPresent(
                            p -> assertThat(broken(work, p)).as("seed %d", seed).isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_find_every_wish_that_a_plan_made_without_them_does_not_keep(long seed) {
        Work work = wished(seed);
        Plan without = new SerialPlanner().plan(shop(seed));
        List<String> found = broken(work, without).stream()
                .filter(b -> b.rule().equals("WishesAreKept"))
                .flatMap(b -> b.steps().stream())
                .distinct()
                .sorted()
                .toList();
        List<String> expected = work.wishes().stream()
                .filter(w -> without.steps().stream().anyMatch(p -> p.step().equals(w.step()) && isAgainst(p, w)))
                .map(WorkWish::step)
                .distinct()
                .sorted()
                .toList();
        assertThat(found).as("seed %d", seed).isEqualTo(expected);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_break_no_rule_when_what_the_crew_was_told_is_kept_to_under_later_wishes(long seed) {
        Work work = wished(seed);
        Plan told = new SerialPlanner().plan(shop(seed));
        PlanGoal goal = new PlanGoal(PlanWeights.USUAL, List.of(), Optional.of(WishesTest.told(told)));
        List<Plan> plans = StayingPlan.of(work, new SerialPlanner().plan(work), goal, Optional.of(told));
        // The kept plan itself is among them as it was made, to be judged by whoever asked.
        plans.stream()
                .filter(p -> !p.equals(told))
                .forEach(p -> assertThat(broken(work, p)).as("seed %d", seed).isEmpty());
        assertThat(plans).anyMatch(p -> broken(work, p).isEmpty());
    }

    private static boolean isAgainst(PlannedStep p, WorkWish w) {
        return switch (w.kind()) {
            case WITH -> !p.people().contains(w.on());
            case WITHOUT -> p.people().contains(w.on());
            case AT -> !p.places().contains(w.on());
            case AWAY -> p.places().contains(w.on());
            case START ->
                w.from().filter(f -> p.start().isBefore(f)).isPresent()
                        || w.before().filter(b -> !p.start().isBefore(b)).isPresent();
        };
    }

    @Test
    void should_have_wishes_of_every_kind_and_keep_most_steps_planned_over_all_shops() {
        Map<WorkWish.Kind, Integer> kinds = new EnumMap<>(WorkWish.Kind.class);
        long steps = 0;
        long out = 0;
        for (long seed = 1; seed <= SHOPS; seed++) {
            Work work = wished(seed);
            work.wishes().forEach(w -> kinds.merge(w.kind(), 1, Integer::sum));
            steps += work.steps().size();
            out += new SerialPlanner().plan(work).unplanned().size();
        }
        assertThat(kinds).hasSize(WorkWish.Kind.values().length);
        assertThat(kinds.values()).allMatch(n -> n > 5);
        // Some wishes cannot be kept, and what waits for their steps goes with them.
        assertThat(out).isLessThan(steps / 3);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void should_name_the_wish_as_the_reason_and_move_the_step_sooner_when_that_wish_is_gone(long seed) {
        Work work = shop(seed);
        Plan plan = new SerialPlanner().plan(work);
        PlannedStep some = plan.steps().get((int) (seed * 7 % plan.steps().size()));
        Instant later = some.start().plus(Duration.ofDays(2 + seed % 9));
        Work wished = work.withWishes(List.of(new WorkWish(
                "w", some.step(), WorkWish.Kind.START, "", Optional.of(later), Optional.empty(), "p0", "")));
        Plan with = new SerialPlanner().plan(wished);
        for (Reason r : PlanReasons.of(wished, with)) {
            if (r.cause() == Cause.WISH) {
                assertThat(r.step()).isEqualTo(some.step());
                assertThat(r.on()).isEqualTo("w");
                assertThat(start(with, r.step())).isAfterOrEqualTo(later);
                assertThat(start(new SerialPlanner().plan(wished.withoutWish(r.on())), r.step()))
                        .isBefore(start(with, r.step()));
            }
        }
        NAMED.addAndGet((int) PlanReasons.of(wished, with).stream()
                .filter(r -> r.cause() == Cause.WISH)
                .count());
    }

    @AfterAll
    static void wishes_were_named_as_reasons() {
        assertThat(NAMED.get()).isGreaterThan(SHOPS / 6);
    }

    private static Instant start(Plan plan, String step) {
        return plan.steps().stream()
                .filter(p -> p.step().equals(step))
                .findFirst()
                .orElseThrow()
                .start();
    }
}
