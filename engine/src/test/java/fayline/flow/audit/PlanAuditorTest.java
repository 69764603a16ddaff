package fayline.flow.audit;

import static fayline.flow.audit.TinyShop.at;
import static fayline.flow.audit.TinyShop.stretch;
import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.TinyShop.Put;
import fayline.flow.audit.TinyShop.Step;
import fayline.flow.plan.Place;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Miss;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.Worker.Stretch;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Each rule of plans alone: a tiny plan that keeps it, and its twin in which only that rule is broken. */
class PlanAuditorTest {
    private final TinyShop shop = new TinyShop();

    private void clean() {
        assertThat(shop.audit()).as("before it is broken").isEmpty();
    }

    private BrokenRule only(String rule) {
        List<BrokenRule> found = shop.audit();
        assertThat(found).extracting(BrokenRule::rule).as("%s", found).containsOnly(rule);
        assertThat(found.get(0).sentence()).contains("expected");
        return found.get(0);
    }

    @Test
    void should_name_every_rule_once_when_asked() {
        assertThat(PlanAuditor.ruleNames()).doesNotHaveDuplicates().hasSizeGreaterThan(35);
    }

    @Test
    void should_find_nothing_when_there_is_no_work() {
        clean();
    }

    @Test
    void should_break_OnlyKnownNames_when_a_stranger_works() {
        shop.step("a").hands(1, 60);
        Put put = shop.put("a", "mon 08:00", "ada");
        clean();
        put.people = List.of("zoe");
        assertThat(only("OnlyKnownNames").sentence()).contains("zoe");
    }

    @Test
    void should_break_OnlyKnownNames_when_a_step_is_invented() {
        shop.step("a");
        shop.put("a", "mon 08:00", "ada");
        clean();
        shop.unplanned.add(new Plan.Unplanned("b", "nobody asked for it"));
        assertThat(only("OnlyKnownNames").steps()).containsExactly("b");
    }

    @Test
    void should_break_EveryStepIsThere_when_one_is_left_out_or_planned_twice() {
        shop.step("a");
        shop.step("b");
        shop.put("a", "mon 08:00", "ada");
        Put put = shop.put("b", "mon 10:00", "ada");
        clean();
        shop.puts.remove(put);
        assertThat(only("EveryStepIsThere").steps()).containsExactly("b");
        shop.puts.add(put);
        shop.puts.add(put);
        assertThat(only("EveryStepIsThere").sentence()).contains("planned 2 times");
    }

    @Test
    void should_break_EveryStepIsThere_when_no_reason_is_given() {
        shop.step("a");
        shop.unplanned.add(new Plan.Unplanned("a", " "));
        assertThat(shop.audit()).extracting(BrokenRule::rule).contains("EveryStepIsThere");
    }

    @Test
    void should_break_EveryStepIsPlanned_and_admit_it_when_a_step_is_unplanned() {
        shop.step("a");
        shop.unplanned.add(new Plan.Unplanned("a", "expected somebody who can sign"));
        BrokenRule found = only("EveryStepIsPlanned");
        assertThat(found.admitted()).isTrue();
        assertThat(found.sentence()).contains("who can sign");
    }

    @Test
    void should_break_WhatHappenedStays_when_history_is_moved() {
        Step step = shop.step("a");
        step.state = WorkStep.State.DONE;
        step.actual = happened("mon 07:00", Optional.of("mon 07:40"), Optional.of("mon 07:40"), "ada");
        shop.now = at("mon 09:00");
        Put put = shop.put("a", "mon 07:00", "ada");
        put.stretches(stretch("mon 07:00", "mon 07:40"));
        clean();
        put.people = List.of("bo");
        assertThat(only("WhatHappenedStays").sentence()).contains("ada");
        put.people = List.of("ada");
        put.stretches(stretch("mon 07:00", "mon 07:30"));
        only("WhatHappenedStays");
    }

    @Test
    void should_break_WhatHappenedStays_when_running_hands_left_before_now() {
        Step step = shop.step("a");
        step.state = WorkStep.State.RUNNING;
        step.actual = happened("mon 07:00", Optional.empty(), Optional.empty(), "ada");
        shop.now = at("mon 09:00");
        Put put = shop.put("a", "mon 07:00", "ada");
        put.stretches(stretch("mon 07:00", "mon 09:00"));
        clean();
        put.stretches(stretch("mon 07:00", "mon 08:10"));
        only("WhatHappenedStays");
    }

    @Test
    void should_break_TimesAreOnWholeMinutes_when_a_second_slips_in() {
        shop.step("a");
        Put put = shop.put("a", "mon 08:00", "ada");
        clean();
        put.start = put.start.plusSeconds(7);
        put.end = put.end.plusSeconds(7);
        put.handsEnd = put.end;
        put.stretches = List.of(new Stretch(put.start, put.handsEnd));
        only("TimesAreOnWholeMinutes");
    }

    @Test
    void should_break_NothingStartsInThePast_when_it_is_later_already() {
        shop.step("a");
        shop.put("a", "mon 08:00", "ada");
        clean();
        shop.now = at("mon 08:01");
        assertThat(only("NothingStartsInThePast").sentence()).contains("08:01");
    }

    @Test
    void should_break_NothingStartsBeforeItsDay_when_it_does() {
        Step step = shop.step("a");
        step.notBefore = Optional.of(at("tue 08:00"));
        Put put = shop.put("a", "tue 08:00", "ada");
        clean();
        put.shift(-1);
        only("NothingStartsBeforeItsDay");
    }

    @Test
    void should_break_DeliveriesHaveCome_when_the_resin_is_still_on_its_way() {
        shop.step("a").awaits = List.of("d-1");
        Put put = shop.put("a", "tue 10:00", "ada");
        clean();
        put.shift(-15);
        assertThat(only("DeliveriesHaveCome").sentence()).contains("resin (d-1)", "Tue 3 Mar 2026 10:00");
    }

    @Test
    void should_break_StretchesFitTheStep_when_ends_differ_or_stretches_overlap() {
        Step step = shop.step("a").hands(1, 60);
        step.interruptible = true;
        Put put = shop.put("a", "mon 08:00", "ada");
        put.stretches(stretch("mon 08:00", "mon 08:30"), stretch("mon 08:30", "mon 09:00"));
        clean();
        put.stretches = List.of(stretch("mon 08:00", "mon 08:35"), stretch("mon 08:35", "mon 09:00"));
        put.start = at("mon 07:55");
        only("StretchesFitTheStep");
        put.start = at("mon 08:00");
        put.stretches = List.of(
                stretch("mon 08:00", "mon 08:30"),
                stretch("mon 08:15", "mon 08:30"),
                stretch("mon 08:45", "mon 09:00"));
        only("StretchesFitTheStep");
    }

    @Test
    void should_break_StretchesFitTheStep_when_a_cure_is_given_hands() {
        shop.step("a").hands().alone(60);
        Put put = shop.put("a", "mon 08:00");
        clean();
        put.stretches = List.of(stretch("mon 08:00", "mon 08:30"));
        only("StretchesFitTheStep");
    }

    @Test
    void should_break_WetWorkIsNotInterrupted_when_wet_work_is_split() {
        shop.step("a").air = "wet";
        Put put = shop.put("a", "mon 08:00", "ada");
        clean();
        put.stretches(stretch("mon 08:00", "mon 08:30"), stretch("mon 09:00", "mon 09:30"));
        only("WetWorkIsNotInterrupted");
    }

    @Test
    void should_break_WorkThatMayNotStopRunsThrough_when_dry_work_is_split() {
        Step step = shop.step("a");
        Put put = shop.put("a", "mon 08:00", "ada");
        put.stretches(stretch("mon 08:00", "mon 08:30"), stretch("mon 09:00", "mon 09:30"));
        only("WorkThatMayNotStopRunsThrough");
        step.interruptible = true;
        clean();
    }

    @Test
    void should_break_StepsLastTheirTime_when_hands_are_cut_short_or_dawdle() {
        shop.step("a").hands(1, 60, 2, 35);
        Put put = shop.put("a", "mon 08:00", "ada", "bo");
        clean();
        put.stretches(stretch("mon 08:00", "mon 08:34"));
        assertThat(only("StepsLastTheirTime").sentence()).contains("34 min", "35 min");
        put.stretches(stretch("mon 08:00", "mon 08:36"));
        only("StepsLastTheirTime");
    }

    @Test
    void should_break_StepsLastTheirTime_when_a_running_step_is_cut_short() {
        Step step = shop.step("a").hands(1, 90);
        step.state = WorkStep.State.RUNNING;
        step.actual = happened("mon 07:00", Optional.empty(), Optional.empty(), "ada");
        shop.now = at("mon 08:00");
        Put put = shop.put("a", "mon 07:00", "ada");
        clean();
        put.stretches(stretch("mon 07:00", "mon 08:05"));
        only("StepsLastTheirTime");
    }

    @Test
    void should_break_CuresLastTheirTime_when_a_clock_has_not_run_or_has_run_over() {
        Step step = shop.step("a").hands(1, 60);
        step.alone = new Span(120, "slow");
        Put put = shop.put("a", "mon 08:00", "ada");
        // From 09:00 the clock makes 90 equivalent minutes up to 12:00 at half speed, and the last 30 in 15 at double
        // speed.
        put.end = at("mon 12:15");
        clean();
        put.end = at("mon 12:14");
        assertThat(only("CuresLastTheirTime").sentence()).contains("118", "120", "12:15");
        put.end = at("mon 12:16");
        only("CuresLastTheirTime");
    }

    @Test
    void should_allow_an_end_up_to_now_when_a_running_cure_is_over() {
        Step step = shop.step("a").hands(1, 60).alone(30);
        step.state = WorkStep.State.RUNNING;
        step.actual = happened("mon 07:00", Optional.of("mon 08:00"), Optional.empty(), "ada");
        shop.now = at("mon 09:00");
        Put put = shop.put("a", "mon 07:00", "ada");
        clean();
        put.end = at("mon 09:00");
        clean();
        put.end = at("mon 09:01");
        only("CuresLastTheirTime");
        put.end = at("mon 08:29");
        only("CuresLastTheirTime");
    }

    @Test
    void should_break_EarlierStepsComeFirst_when_a_step_overtakes() {
        shop.step("a").alone(60);
        shop.step("b").after("a");
        shop.step("c").after("a", "hands-end", 0, Optional.empty(), Optional.empty());
        shop.step("d").after("a", "start", 0, Optional.empty(), Optional.empty());
        shop.put("a", "mon 09:00", "ada");
        Put b = shop.put("b", "mon 11:00", "cy");
        Put c = shop.put("c", "mon 10:00", "bo");
        Put d = shop.put("d", "mon 09:00", "bo");
        clean();
        b.shift(-1);
        assertThat(only("EarlierStepsComeFirst").steps()).containsExactly("b", "a");
        b.shift(1);
        c.people = List.of("cy");
        c.shift(-1);
        only("EarlierStepsComeFirst");
        c.shift(1);
        d.shift(-1);
        only("EarlierStepsComeFirst");
    }

    @Test
    void should_break_EarlierStepsComeFirst_when_the_earlier_step_is_unplanned() {
        shop.step("a");
        shop.step("b").after("a");
        shop.put("b", "mon 10:00", "ada");
        shop.unplanned.add(new Plan.Unplanned("a", "no resin"));
        assertThat(shop.audit())
                .extracting(BrokenRule::rule)
                .containsExactlyInAnyOrder("EveryStepIsPlanned", "EarlierStepsComeFirst");
    }

    @Test
    void should_break_WindowsAreOpen_when_a_step_comes_too_early() {
        shop.step("a").hands(1, 60);
        shop.step("b")
                .after
                .add(new WorkStep.Link("a", "end", new Span(60, "slow"), Optional.empty(), Optional.empty()));
        shop.put("a", "mon 08:00", "ada");
        // 60 equivalent minutes take 120 at half speed.
        Put put = shop.put("b", "mon 11:00", "ada");
        clean();
        put.shift(-1);
        assertThat(only("WindowsAreOpen").sentence()).contains("59.5", "11:00");
    }

    @Test
    void should_break_HardWindowsAreNotMissed_when_the_bag_comes_too_late() {
        shop.step("a");
        shop.step("b").shuts("a", 0, 30);
        shop.put("a", "mon 08:00", "ada");
        Put put = shop.put("b", "mon 09:30", "ada");
        clean();
        put.shift(1);
        assertThat(only("HardWindowsAreNotMissed").sentence()).contains("31 min", "30 min");
    }

    @Test
    void should_break_MissedWindowsArePaid_when_a_missed_window_is_not_listed() {
        shop.step("a");
        shop.step("b").hands(1, 60, 2, 40).priced("a", 30, 25);
        shop.put("a", "mon 08:00", "ada");
        Put put = shop.put("b", "mon 09:30", "ada", "bo");
        clean();
        put.shift(1);
        assertThat(only("MissedWindowsArePaid").sentence()).contains("25 person-minutes", "Abrade.");
        put.missed = List.of("a");
        assertThat(only("MissedWindowsArePaid").sentence()).contains("40 min", "53 min", "13 min");
        put.stretches(stretch("mon 09:31", "mon 10:24"));
        clean();
        put.stretches(stretch("mon 09:30", "mon 10:23"));
        assertThat(only("MissedWindowsArePaid").sentence()).contains("inside it");
    }

    @Test
    void should_break_MissedWindowsArePaid_when_a_hard_window_is_listed() {
        shop.step("a");
        shop.step("b").shuts("a", 0, 30);
        shop.put("a", "mon 08:00", "ada");
        Put put = shop.put("b", "mon 09:00", "ada");
        clean();
        put.missed = List.of("a");
        only("MissedWindowsArePaid");
    }

    @Test
    void should_break_PeopleWorkInTheirHours_when_somebody_is_not_there() {
        shop.step("a").hands(1, 60);
        Put put = shop.put("a", "mon 15:00", "ada");
        clean();
        put.shift(1);
        assertThat(only("PeopleWorkInTheirHours").sentence()).contains("ada", "16:01");
        put.people = List.of("bo");
        clean();
        put.people = List.of("cy");
        only("PeopleWorkInTheirHours");
    }

    @Test
    void should_let_running_work_go_on_after_hours_when_it_may_not_stop() {
        Step step = shop.step("a").hands(1, 120);
        step.state = WorkStep.State.RUNNING;
        step.actual = happened("mon 15:00", Optional.empty(), Optional.empty(), "ada");
        shop.now = at("mon 15:30");
        Put put = shop.put("a", "mon 15:00", "ada");
        clean();
        step.interruptible = true;
        put.stretches(stretch("mon 15:00", "mon 15:30"), stretch("mon 15:30", "mon 17:00"));
        only("PeopleWorkInTheirHours");
        put.stretches(stretch("mon 15:00", "mon 16:00"), stretch("tue 07:00", "tue 08:00"));
        clean();
    }

    @Test
    void should_break_NobodyWorksInABreak_when_interruptible_work_runs_through() {
        Step step = shop.step("a").hands(1, 60);
        Put put = shop.put("a", "mon 11:30", "ada");
        clean();
        step.interruptible = true;
        assertThat(only("NobodyWorksInABreak").sentence()).contains("30 min");
        put.stretches(stretch("mon 11:30", "mon 12:00"), stretch("mon 12:30", "mon 13:00"));
        clean();
    }

    @Test
    void should_break_NobodyIsInTwoPlaces_when_hands_overlap() {
        shop.step("a");
        shop.step("b");
        shop.put("a", "mon 08:00", "ada");
        Put put = shop.put("b", "mon 09:00", "ada");
        clean();
        put.shift(-1);
        assertThat(only("NobodyIsInTwoPlaces").steps()).containsExactlyInAnyOrder("a", "b");
        put.people = List.of("bo");
        clean();
    }

    @Test
    void should_break_NobodyIsInTwoPlaces_when_somebody_is_still_at_running_work() {
        Step step = shop.step("a").hands(1, 90);
        step.state = WorkStep.State.RUNNING;
        step.actual = happened("mon 07:00", Optional.empty(), Optional.empty(), "ada");
        shop.now = at("mon 08:00");
        shop.step("b");
        shop.put("a", "mon 07:00", "ada");
        Put put = shop.put("b", "mon 08:30", "ada");
        clean();
        put.shift(-15);
        only("NobodyIsInTwoPlaces");
    }

    @Test
    void should_break_CrewHasTheSkills_when_too_few_can_do_it() {
        Step step = shop.step("a").hands(2, 60);
        step.skills = Map.of("laminate", 2, "bag", 1);
        Put put = shop.put("a", "mon 08:00", "ada", "bo");
        clean();
        put.people = List.of("ada", "cy");
        assertThat(only("CrewHasTheSkills").sentence()).contains("1 can laminate", "at least 2");
    }

    @Test
    void should_break_CrewIsBigEnough_when_one_is_missing_or_counted_twice() {
        shop.step("a").hands(2, 60, 3, 45);
        Put put = shop.put("a", "mon 08:00", "ada", "bo");
        clean();
        put.people = List.of("ada");
        assertThat(only("CrewIsBigEnough").sentence()).contains("crew of 1", "[2, 3]");
        put.people = List.of("ada", "bo", "bo");
        only("CrewIsBigEnough");
    }

    @Test
    void should_break_CrewIsBigEnough_when_a_cure_is_given_people() {
        shop.step("a").hands().alone(60);
        Put put = shop.put("a", "mon 08:00");
        clean();
        put.people = List.of("ada");
        only("CrewIsBigEnough");
    }

    @Test
    void should_break_NobodyLaminatesAlone_when_nobody_else_is_in_the_shop() {
        shop.step("a").accompanied = true;
        Put put = shop.put("a", "mon 08:00", "ada");
        clean();
        put.shift(-1);
        only("NobodyLaminatesAlone");
        shop.people.add(TinyShop.worker("dee", java.util.Set.of(), "07:00", "08:00", List.of("mon")));
        clean();
    }

    @Test
    void should_break_BagsAreWatched_when_nobody_is_there_to_look() {
        Step step = shop.step("a").hands(1, 60).alone(600);
        step.watch = List.of(15, 60);
        Put put = shop.put("a", "mon 14:59", "bo");
        clean();
        put.shift(1);
        assertThat(only("BagsAreWatched").sentence()).contains("17:00", "60 min");
    }

    @Test
    void should_break_HoldsStayInPlace_when_a_part_moves() {
        shop.step("a");
        shop.step("b").after("a");
        shop.hold("h", Place.Kind.STAND, List.of("bench", "saw"), 1, "a", "b");
        shop.put("a", "mon 08:00", "ada").in("bench");
        Put put = shop.put("b", "mon 09:00", "ada").in("bench");
        clean();
        put.in("saw");
        assertThat(only("HoldsStayInPlace").steps()).containsExactlyInAnyOrder("a", "b");
        put.in();
        only("HoldsStayInPlace");
        put.in("bench", "p-1");
        only("HoldsStayInPlace");
    }

    @Test
    void should_break_HoldsStayInPlace_when_two_holds_of_a_step_share_one_port() {
        shop.step("a");
        shop.hold("h", Place.Kind.PORT, List.of("p-1", "p-2"), 1, "a");
        shop.hold("k", Place.Kind.PORT, List.of("p-1", "p-2"), 1, "a");
        Put put = shop.put("a", "mon 08:00", "ada").in("p-1", "p-2");
        clean();
        put.in("p-2");
        only("HoldsStayInPlace");
    }

    @Test
    void should_break_OneCureInAMouldAtATime_when_a_mould_is_still_full() {
        shop.step("a").alone(600);
        shop.step("b");
        shop.hold("h", Place.Kind.MOULD, List.of("m-1"), 1, "a");
        shop.hold("k", Place.Kind.MOULD, List.of("m-1", "m-2"), 1, "b");
        shop.put("a", "mon 08:00", "ada").in("m-1");
        Put put = shop.put("b", "mon 10:00", "ada").in("m-2");
        clean();
        put.in("m-1");
        assertThat(only("OneCureInAMouldAtATime").sentence()).contains("m-1");
        put.shift(24 * 60);
        clean();
    }

    @Test
    void should_break_OneCureInAMouldAtATime_when_the_demould_is_not_planned() {
        shop.step("a");
        shop.step("out").after("a");
        shop.step("b");
        shop.hold("h", Place.Kind.MOULD, List.of("m-1"), 1, "a", "out");
        shop.hold("k", Place.Kind.MOULD, List.of("m-1", "m-2"), 1, "b");
        shop.put("a", "mon 08:00", "ada").in("m-1");
        shop.unplanned.add(new Plan.Unplanned("out", "nobody can"));
        Put put = shop.put("b", "thu 10:00", "ada").in("m-2");
        assertThat(shop.audit()).extracting(BrokenRule::rule).containsExactly("EveryStepIsPlanned");
        put.in("m-1");
        assertThat(shop.audit())
                .extracting(BrokenRule::rule)
                .containsExactlyInAnyOrder("EveryStepIsPlanned", "OneCureInAMouldAtATime");
    }

    @Test
    void should_break_OneJobOnAStandAtATime_when_two_share_a_bench() {
        shop.step("a");
        shop.step("b");
        shop.hold("h", Place.Kind.STAND, List.of("bench"), 1, "a");
        shop.hold("k", Place.Kind.STAND, List.of("bench"), 1, "b");
        shop.put("a", "mon 08:00", "ada").in("bench");
        Put put = shop.put("b", "mon 09:00", "bo").in("bench");
        clean();
        put.shift(-1);
        only("OneJobOnAStandAtATime");
    }

    @Test
    void should_break_OneBagOnAPort_when_a_bag_is_hung_on_a_taken_port() {
        shop.step("a").alone(300);
        shop.step("b").alone(300);
        shop.hold("h", Place.Kind.PORT, List.of("p-1", "p-2"), 1, "a");
        shop.hold("k", Place.Kind.PORT, List.of("p-1", "p-2"), 1, "b");
        shop.put("a", "mon 08:00", "ada").in("p-1");
        Put put = shop.put("b", "mon 09:00", "bo").in("p-2");
        clean();
        put.in("p-1");
        only("OneBagOnAPort");
    }

    @Test
    void should_leave_two_running_jobs_in_peace_when_they_share_a_bench() {
        for (String id : List.of("a", "b")) {
            Step step = shop.step(id).hands(1, 60);
            step.state = WorkStep.State.RUNNING;
            step.actual = happened("mon 08:00", Optional.empty(), Optional.empty(), id.equals("a") ? "ada" : "bo");
            shop.hold("h-" + id, Place.Kind.STAND, List.of("bench"), 1, id);
            shop.put(id, "mon 08:00", id.equals("a") ? "ada" : "bo").in("bench");
        }
        shop.now = at("mon 08:30");
        clean();
    }

    @Test
    void should_break_StandsSuitTheWork_when_wet_work_is_on_the_saw_stand() {
        Step step = shop.step("a");
        step.air = "wet";
        shop.hold("h", Place.Kind.STAND, List.of("bench", "saw"), 1, "a");
        Put put = shop.put("a", "mon 08:00", "ada").in("bench");
        clean();
        put.in("saw");
        only("StandsSuitTheWork");
        step.air = "dust";
        clean();
        put.in("bench");
        only("StandsSuitTheWork");
    }

    @Test
    void should_break_DustStaysAwayFromWetWork_when_the_air_has_not_settled() {
        shop.step("saw").air = "dust";
        shop.step("wet").air = "wet";
        shop.hold("h", Place.Kind.STAND, List.of("saw"), 1, "saw");
        shop.hold("k", Place.Kind.STAND, List.of("bench"), 1, "wet");
        Put dust = shop.put("saw", "mon 08:00", "cy").in("saw");
        Put wet = shop.put("wet", "mon 11:00", "ada").in("bench");
        clean();
        wet.shift(-1);
        assertThat(only("DustStaysAwayFromWetWork").sentence()).contains("2 h");
        wet.shift(1);
        dust.people = List.of("bo");
        dust.shift(240);
        clean();
        dust.shift(-1);
        only("DustStaysAwayFromWetWork");
    }

    @Test
    void should_break_FinishIsTheLastEnd_when_the_plan_boasts() {
        shop.step("a");
        shop.put("a", "mon 08:00", "ada");
        clean();
        shop.finish = Optional.of(at("mon 08:30"));
        only("FinishIsTheLastEnd");
    }

    @Test
    void should_not_depend_on_the_order_when_a_plan_is_judged() {
        shop.step("a").alone(60);
        shop.step("b").priced("a", 30, 10);
        shop.step("c")
                .after
                .add(new WorkStep.Link("b", "end", Span.NONE, Optional.empty(), Optional.of(new Miss("", 5))));
        Put late = shop.put("c", "mon 10:00", "cy");
        Put first = shop.put("a", "mon 08:00", "ada");
        Put second = shop.put("b", "mon 12:00", "ada");
        List<BrokenRule> one = new ArrayList<>(shop.audit());
        shop.puts.clear();
        shop.puts.addAll(List.of(second, first, late));
        assertThat(one).isNotEmpty();
        assertThat(shop.audit()).containsExactlyInAnyOrderElementsOf(one);
    }

    private static WorkStep.Actual happened(
            String started, Optional<String> handsEnded, Optional<String> ended, String... people) {
        Optional<Instant> hands = handsEnded.map(TinyShop::at);
        return new WorkStep.Actual(
                Optional.of(at(started)), hands, ended.map(TinyShop::at), List.of(people), List.of());
    }
}
