package fayline.flow.whatif;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.OppositeHands;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.planner.SmallShop;
import fayline.flow.planner.SmallShop.Step;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A lay-up of 14 person-hours in a shop that is open from 08:00 to 16:30: hand-checkable. */
class LongWorkTest {
    private static final int LONG_MIN = 14 * 60;
    private static final int OPEN_MIN = 510;
    private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");

    private static SmallShop crew(int people) {
        SmallShop shop = new SmallShop(SmallShop.MONDAY + "08:00").mould("m");
        for (int i = 0; i < people; i++) {
            shop.person("p" + i, "laminate");
        }
        return shop;
    }

    private static Work layUp(int people) {
        return crew(people)
                .step(new Step("first coat", 1, 30).air("wet"))
                .step(new Step("lay-up", 1, LONG_MIN).air("wet").window(0, 60, 45, "first coat"))
                .step(new Step("bag", 1, 30).within(60, "end", "lay-up"))
                .hold(Place.Kind.MOULD, List.of("m"), "first coat", "lay-up", "bag")
                .work();
    }

    private static List<Change> waysOut(Work w) {
        return LongWork.waysOut(w, LongWork.in(w).get(0), new SerialPlanner());
    }

    private static Plan planned(Change c, Work w) {
        Work changed = c.in(w);
        Plan plan = new SerialPlanner().plan(changed);
        assertThat(new PlanAuditor().audit(changed, plan)).isEmpty();
        return plan;
    }

    private static PlannedStep of(Plan plan, String step) {
        return plan.steps().stream()
                .filter(s -> s.step().equals(step))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_find_the_work_that_is_too_long_for_a_day_only() {
        Work w = layUp(2);
        assertThat(LongWork.longestStretchMin(w)).isEqualTo(OPEN_MIN);
        assertThat(LongWork.in(w)).extracting("id").containsExactly("lay-up");
        Work stops = crew(1).step(new Step("sand", 1, LONG_MIN).stops()).work();
        assertThat(LongWork.in(stops)).isEmpty();
    }

    @Test
    void should_split_it_over_two_days_with_a_night_between_and_the_joining_paid() {
        Work w = layUp(1);
        Change split = waysOut(w).get(0);
        assertThat(split).isEqualTo(new StepInParts("lay-up", 2, LongWork.NIGHT_MIN, 45));
        Plan plan = planned(split, w);
        assertThat(plan.unplanned()).isEmpty();
        PlannedStep first = of(plan, "lay-up part 1");
        PlannedStep last = of(plan, "lay-up");
        assertThat(Duration.between(first.start(), first.handsEnd()).toMinutes())
                .isEqualTo(LONG_MIN / 2);
        assertThat(Duration.between(last.start(), last.handsEnd()).toMinutes()).isEqualTo(LONG_MIN / 2 + 45);
        assertThat(Duration.between(first.end(), last.start()).toMinutes()).isGreaterThanOrEqualTo(LongWork.NIGHT_MIN);
        assertThat(of(plan, "bag").start()).isAfterOrEqualTo(last.end());
    }

    @Test
    void should_keep_practised_hands_on_each_part_of_a_step_that_follows_the_first_hand() {
        Work w = crew(2).step(new Step("left", 1, 60).air("wet"))
                .step(new Step("right", 1, LONG_MIN).air("wet").after("left"))
                .work();
        Follow follow = new Follow("right", "left", OppositeHands.Crew.SAME);
        Taught taught = new Taught("right", "left", "the left half");
        Work second = w.withHands(new OppositeHands(List.of(follow), List.of(taught)));
        Change split = new StepInParts("right", 2, LongWork.NIGHT_MIN, 0);
        assertThat(split.in(second).hands())
                .isEqualTo(new OppositeHands(
                        List.of(new Follow("right part 1", "left", follow.crew()), follow),
                        List.of(new Taught("right part 1", "left", "the left half"))));
        Plan plan = planned(split, second);
        assertThat(plan.unplanned()).isEmpty();
        assertThat(of(plan, "right part 1").people()).isEqualTo(of(plan, "left").people());
        assertThat(of(plan, "right").people()).isEqualTo(of(plan, "left").people());
    }

    @Test
    void should_take_no_more_hands_than_are_needed() {
        assertThat(waysOut(layUp(4))).contains(new MoreHands("lay-up", 2)).doesNotContain(new MoreHands("lay-up", 3));
        Plan plan = planned(new MoreHands("lay-up", 2), layUp(4));
        assertThat(of(plan, "lay-up").people()).hasSize(2);
        assertThat(waysOut(layUp(1))).noneMatch(MoreHands.class::isInstance);
    }

    @Test
    void should_leave_help_out_where_the_recipe_has_a_crew_that_is_enough() {
        Work w = crew(2).step(
                        new Step("lay-up", 1, LONG_MIN).or(2, LONG_MIN / 2).air("wet"))
                .work();
        assertThat(waysOut(w)).noneMatch(MoreHands.class::isInstance).hasSize(2);
    }

    @Test
    void should_move_it_to_the_soonest_day_that_may_be_long_enough() {
        Work w = layUp(1);
        assertThat(waysOut(w)).contains(new LongerDay(MONDAY, LocalTime.of(23, 59)));
        Plan plan = planned(new LongerDay(MONDAY, LocalTime.of(23, 59)), w);
        PlannedStep layUp = of(plan, "lay-up");
        assertThat(Duration.between(layUp.start(), layUp.handsEnd()).toMinutes())
                .isEqualTo(LONG_MIN);
        assertThat(layUp.start().toString()).startsWith("2026-03-02T08:30");
    }

    @Test
    void should_offer_nothing_where_nobody_comes() {
        Work w = new SmallShop(SmallShop.MONDAY + "08:00")
                .step(new Step("lay-up", 1, LONG_MIN))
                .work();
        assertThat(waysOut(w)).isEmpty();
    }

    @Test
    void should_leave_the_work_alone_where_the_step_is_not_in_it() {
        Work w = layUp(2);
        assertThat(new StepInParts("other", 2, 0, 0).in(w)).isEqualTo(w);
        assertThat(new MoreHands("other", 3).in(w)).isEqualTo(w);
        assertThat(new LongerDay(MONDAY.minusDays(1), LocalTime.NOON).in(w)).isEqualTo(w);
    }
}
