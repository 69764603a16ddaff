package fayline.flow.planner;

import static fayline.flow.planner.SmallShop.at;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Place.Kind;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Worker.Stretch;
import fayline.flow.planner.SmallShop.Step;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Plans that can be checked by hand; the reckoning stands beside each. */
class SerialPlannerTest {
    private static final String MON = "2026-03-02T";
    private static final String TUE = "2026-03-03T";
    private static final String WED = "2026-03-04T";

    private static PlannedStep of(Plan plan, String id) {
        return plan.steps().stream()
                .filter(p -> p.step().equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError(plan.unplanned()));
    }

    private static String reason(Plan plan, String id) {
        return plan.unplanned().stream()
                .filter(p -> p.step().equals(id))
                .findFirst()
                .orElseThrow()
                .reason();
    }

    private static SmallShop shop(String now) {
        return new SmallShop(now).person("ada", "laminate");
    }

    @Test
    void should_start_the_next_morning_when_a_cure_ends_in_the_night() {
        // 08:00 + 1 h hands + 12 h = 21:00; people come in at 08:00.
        Plan plan = shop(MON + "07:00")
                .step(new Step("lay-up", 1, 60).alone(720, ""))
                .step(new Step("trim", 1, 30).after("lay-up"))
                .plan();
        assertThat(of(plan, "lay-up").start()).isEqualTo(at(MON + "08:00"));
        assertThat(of(plan, "lay-up").end()).isEqualTo(at(MON + "21:00"));
        assertThat(of(plan, "trim").start()).isEqualTo(at(TUE + "08:00"));
        assertThat(plan.finish()).contains(at(TUE + "08:30"));
    }

    @Test
    void should_run_through_the_break_when_a_step_may_not_stop() {
        Plan plan = shop(MON + "08:00").step(new Step("wet", 1, 300)).plan();
        assertThat(of(plan, "wet").stretches()).containsExactly(new Stretch(at(MON + "08:00"), at(MON + "13:00")));
    }

    @Test
    void should_stop_over_breaks_and_nights_when_a_step_may() {
        // 4 h until noon, 4 h after the break, the last 2 h the next day.
        Plan plan = shop(MON + "08:00").step(new Step("fit", 1, 600).stops()).plan();
        assertThat(of(plan, "fit").stretches())
                .containsExactly(
                        new Stretch(at(MON + "08:00"), at(MON + "12:00")),
                        new Stretch(at(MON + "12:30"), at(MON + "16:30")),
                        new Stretch(at(TUE + "08:00"), at(TUE + "10:00")));
    }

    @Test
    void should_take_more_people_when_only_they_fit_before_the_evening() {
        // 13:00 + 5 h is past 16:30; with two 13:00 + 2 h 40 is not.
        Plan plan = shop(MON + "13:00")
                .person("bo")
                .step(new Step("wet", 1, 300).or(2, 160))
                .plan();
        assertThat(of(plan, "wet").start()).isEqualTo(at(MON + "13:00"));
        assertThat(of(plan, "wet").people()).containsExactly("ada", "bo");
    }

    @Test
    void should_put_both_on_the_next_day_when_the_bag_would_not_fit_within_its_window() {
        // 11:00 + 4 h = 15:00, the bag to 17:00: too late; from 08:00 it goes 12:00 to 14:00.
        Plan plan = shop(MON + "11:00")
                .step(new Step("lay-up", 1, 240))
                .step(new Step("bag", 1, 120).within(30, "hands-end", "lay-up"))
                .plan();
        assertThat(of(plan, "lay-up").start()).isEqualTo(at(TUE + "08:00"));
        assertThat(of(plan, "bag").start()).isEqualTo(at(TUE + "12:00"));
    }

    @Test
    void should_take_more_hands_when_the_window_counts_from_the_start() {
        // Within 200 min of the start a crew of one (240 min) can never be through; two (130 min) can.
        Plan plan = shop(MON + "08:00")
                .person("bo")
                .step(new Step("lay-up", 1, 240).or(2, 130))
                .step(new Step("bag", 1, 60).within(200, "start", "lay-up").after("lay-up"))
                .plan();
        assertThat(of(plan, "lay-up").people()).hasSize(2);
        assertThat(of(plan, "bag").start()).isEqualTo(at(MON + "10:10"));
    }

    @Test
    void should_miss_a_window_when_that_is_cheaper_than_waiting() {
        // Friday 08:00 + 1 h + 24 h = Saturday 09:00, shut at 21:00: Monday with 60 min more, or a day later without.
        Plan plan = shop("2026-03-06T08:00")
                .step(new Step("first", 1, 60).alone(1440, ""))
                .step(new Step("second", 1, 120).window(0, 720, 60, "first"))
                .plan();
        assertThat(of(plan, "second").missed()).containsExactly("first");
        assertThat(of(plan, "second").start()).isEqualTo(at("2026-03-09T08:00"));
        assertThat(of(plan, "second").handsEnd()).isEqualTo(at("2026-03-09T11:00"));
    }

    @Test
    void should_wait_when_missing_a_window_is_dearer() {
        // Monday 08:00 + 1 h + 24 h = Tuesday 09:00.
        Plan plan = shop("2026-03-06T08:00")
                .step(new Step("first", 1, 60).alone(1440, ""))
                .step(new Step("second", 1, 60).window(0, 720, 400, "first"))
                .plan();
        assertThat(of(plan, "second").missed()).isEmpty();
        assertThat(of(plan, "first").start()).isEqualTo(at("2026-03-09T08:00"));
        assertThat(of(plan, "second").start()).isEqualTo(at("2026-03-10T09:00"));
    }

    @Test
    void should_integrate_the_clock_when_the_night_is_colder() {
        // From 15:00: 4 h at rate 1 = 240, 12 h at 0.5 = 360, then 60 more at 1 from 07:00: 08:00.
        Plan plan = shop(MON + "08:00")
                .clock("slow", 1.0, 0.5)
                .step(new Step("lay-up", 1, 420).alone(660, "slow"))
                .plan();
        assertThat(of(plan, "lay-up").handsEnd()).isEqualTo(at(MON + "15:00"));
        assertThat(of(plan, "lay-up").end()).isEqualTo(at(TUE + "08:00"));
    }

    @Test
    void should_put_one_part_after_the_other_when_they_share_a_mould() {
        Plan plan = shop(MON + "08:00")
                .person("bo")
                .mould("m")
                .step(new Step("a", 1, 60).alone(600, ""))
                .step(new Step("a-out", 1, 30).after("a"))
                .step(new Step("b", 1, 60).alone(600, ""))
                .step(new Step("b-out", 1, 30).after("b"))
                .hold(Kind.MOULD, List.of("m"), "a", "a-out")
                .hold(Kind.MOULD, List.of("m"), "b", "b-out")
                .plan();
        // a: 08:00 to 19:00, out on Tuesday 08:00 to 08:30; b: 08:30 to 19:30, out on Wednesday.
        assertThat(of(plan, "a-out").start()).isEqualTo(at(TUE + "08:00"));
        assertThat(of(plan, "b").start()).isEqualTo(at(TUE + "08:30"));
        assertThat(of(plan, "b-out").start()).isEqualTo(at(WED + "08:00"));
        assertThat(of(plan, "b").places()).containsExactly("m");
    }

    @Test
    void should_let_the_air_settle_when_dust_and_wet_share_a_room() {
        SmallShop shop = shop(MON + "08:00")
                .person("bo")
                .settles(90)
                .stand("bench", "hall", true, false)
                .stand("bay", "hall", false, true)
                .step(new Step("sand", 1, 60).air("dust"))
                .step(new Step("lay-up", 1, 120).air("wet"))
                .hold(Kind.STAND, List.of("bench"), "sand")
                .hold(Kind.STAND, List.of("bay"), "lay-up");
        Plan plan = shop.plan();
        PlannedStep sand = of(plan, "sand");
        PlannedStep wet = of(plan, "lay-up");
        boolean wetFirst = !sand.start().isBefore(wet.handsEnd());
        boolean settled = !wet.start().isBefore(sand.handsEnd().plusSeconds(90 * 60));
        assertThat(wetFirst || settled).isTrue();
        // Wet first is 08:00 to 10:00 and 11:00; dust first would end at 12:30.
        assertThat(plan.finish()).contains(at(MON + "11:00"));
    }

    @Test
    void should_keep_the_mould_when_a_step_is_running_in_it() {
        // Running since 07:30 for an hour of hands and 10 h alone: 18:30. The mould is free after the demould on
        // Tuesday.
        Plan plan = shop(MON + "08:00")
                .mould("m")
                .step(new Step("a", 1, 60).alone(600, "").running(MON + "07:30", "m"))
                .step(new Step("a-out", 1, 30).after("a"))
                .step(new Step("b", 1, 60))
                .hold(Kind.MOULD, List.of("m"), "a", "a-out")
                .hold(Kind.MOULD, List.of("m"), "b")
                .plan();
        assertThat(of(plan, "a").handsEnd()).isEqualTo(at(MON + "08:30"));
        assertThat(of(plan, "a").end()).isEqualTo(at(MON + "18:30"));
        assertThat(of(plan, "b").start()).isEqualTo(at(TUE + "08:30"));
    }

    @Test
    void should_start_earlier_when_someone_must_look_at_the_bag_before_they_leave() {
        // 15:00 + 1 h + 60 min = 17:00, when all have left: the next morning.
        Plan plan = shop(MON + "15:00").step(new Step("bag", 1, 60).watch(60)).plan();
        assertThat(of(plan, "bag").start()).isEqualTo(at(TUE + "08:00"));
    }

    @Test
    void should_say_who_lacks_what_when_nobody_has_the_skill() {
        Plan plan = shop(MON + "08:00")
                .step(new Step("sign", 1, 30).skill("sign", 1))
                .step(new Step("close", 1, 30).after("sign"))
                .plan();
        assertThat(plan.steps()).isEmpty();
        assertThat(plan.finish()).isEmpty();
        assertThat(reason(plan, "sign")).contains("skill sign", "nobody has it", "Teach");
        assertThat(reason(plan, "close")).contains("comes after \"sign\"");
    }

    @Test
    void should_name_the_day_when_a_step_is_longer_than_any() {
        Plan plan = shop(MON + "08:00").step(new Step("wet", 1, 540)).plan();
        assertThat(reason(plan, "wet")).contains("540 min with 1", "510 min", "Split");
    }

    @Test
    void should_say_so_when_nobody_else_is_ever_there() {
        Plan plan =
                shop(MON + "08:00").step(new Step("wet", 1, 60).accompanied()).plan();
        assertThat(reason(plan, "wet")).contains("second person");
    }

    @Test
    void should_say_so_when_no_stand_allows_dust() {
        Plan plan = shop(MON + "08:00")
                .stand("bay", "hall", false, true)
                .step(new Step("sand", 1, 60).air("dust"))
                .hold(Kind.STAND, List.of("bay"), "sand")
                .plan();
        assertThat(reason(plan, "sand")).contains("No stand", "dust");
    }

    @Test
    void should_plan_neither_when_a_hard_window_can_never_be_met() {
        Plan plan = shop(MON + "08:00")
                .step(new Step("lay-up", 1, 60).alone(600, ""))
                .step(new Step("bag", 1, 30).within(30, "end", "lay-up"))
                .plan();
        // The cure takes 11 h from a start between 08:00 and 15:30 and always ends in the night.
        assertThat(reason(plan, "bag")).contains("at most 30 min", "lay-up");
        assertThat(reason(plan, "lay-up")).contains("must not be begun without it");
    }

    @Test
    void should_say_when_it_was_when_a_hard_window_has_shut_already() {
        Plan plan = shop(MON + "08:00")
                .step(new Step("lay-up", 1, 60).done("2026-02-27T08:00", "2026-02-27T09:00"))
                .step(new Step("bag", 1, 30).within(120, "hands-end", "lay-up"))
                .plan();
        assertThat(reason(plan, "bag")).contains("Fri 27 Feb 11:00", "cannot any more");
    }

    @Test
    void should_name_the_circle_when_steps_wait_for_each_other() {
        Plan plan = shop(MON + "08:00")
                .step(new Step("a", 1, 30).after("b"))
                .step(new Step("b", 1, 30).after("a"))
                .step(new Step("c", 1, 30))
                .plan();
        assertThat(reason(plan, "a")).contains("waits for itself");
        assertThat(of(plan, "c").start()).isEqualTo(at(MON + "08:00"));
    }

    @Test
    void should_not_begin_in_a_mould_when_the_way_out_cannot_be_planned() {
        Plan plan = shop(MON + "08:00")
                .mould("m")
                .step(new Step("a", 1, 60))
                .step(new Step("a-out", 1, 30).after("a").skill("rigging", 1))
                .step(new Step("b", 1, 60))
                .hold(Kind.MOULD, List.of("m"), "a", "a-out")
                .hold(Kind.MOULD, List.of("m"), "b")
                .plan();
        assertThat(reason(plan, "a")).contains("mould that is not given back");
        assertThat(of(plan, "b").start()).isEqualTo(at(MON + "08:00"));
    }

    @Test
    void should_never_plan_fourteen_person_hours_of_one_person_in_a_day_as_one_block() {
        SmallShop shop = new SmallShop(SmallShop.MONDAY + "08:00").person("ada").person("bob");
        Plan alone = shop.step(new SmallShop.Step("lay-up", 1, 14 * 60)).plan();
        assertThat(alone.steps()).isEmpty();
        assertThat(alone.unplanned().get(0).reason()).contains("Split the step").contains("take more hands");

        SmallShop two = new SmallShop(SmallShop.MONDAY + "08:00").person("ada").person("bob");
        Plan helped =
                two.step(new SmallShop.Step("lay-up", 1, 14 * 60).or(2, 7 * 60)).plan();
        assertThat(helped.unplanned()).isEmpty();
        assertThat(helped.steps().get(0).people()).hasSize(2);
    }
}
