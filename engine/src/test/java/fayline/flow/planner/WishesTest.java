package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Place.Kind;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.PlanConflict.Conflict;
import fayline.flow.planner.PlanReasons.Cause;
import fayline.flow.planner.PlanReasons.Reason;
import fayline.flow.planner.SmallShop.Step;
import fayline.flow.planner.goal.PlanGoal;
import fayline.flow.project.shop.PlanWeights;
import fayline.flow.record.PublishedPlan;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Small shops in which it can be said by hand what a wish of the lead makes of the plan. */
class WishesTest {
    private static final String MON = "2026-03-02T";
    private static final String TUE = "2026-03-03T";

    private static WorkWish wish(String step, WorkWish.Kind kind, String on) {
        return new WorkWish(kind + step, step, kind, on, Optional.empty(), Optional.empty(), "ada", "because");
    }

    private static WorkWish start(String step, String from, String before) {
        return new WorkWish(
                "start-" + step,
                step,
                WorkWish.Kind.START,
                "",
                from.isEmpty() ? Optional.empty() : Optional.of(SmallShop.at(from)),
                before.isEmpty() ? Optional.empty() : Optional.of(SmallShop.at(before)),
                "",
                "");
    }

    private static SmallShop two() {
        return new SmallShop(MON + "08:00").person("ada", "laminate").person("bo", "laminate", "sand");
    }

    private static PlannedStep planned(Work work, String step) {
        Plan plan = new SerialPlanner().plan(work);
        assertThat(new PlanAuditor().audit(work, plan)).isEmpty();
        return plan.steps().stream()
                .filter(p -> p.step().equals(step))
                .findFirst()
                .orElseThrow();
    }

    private static String unplanned(Work work, String step) {
        Plan plan = new SerialPlanner().plan(work);
        assertThat(new PlanAuditor().audit(work, plan)).allMatch(b -> b.admitted());
        return plan.unplanned().stream()
                .filter(u -> u.step().equals(step))
                .findFirst()
                .orElseThrow()
                .reason();
    }

    @Test
    void should_put_whom_the_lead_wants_into_the_crew_and_leave_out_whom_not() {
        Work work = two().step(new Step("a", 1, 60))
                .step(new Step("both", 1, 60).or(2, 55))
                .work();
        assertThat(planned(work, "a").people()).containsExactly("ada");
        assertThat(planned(work.withWishes(List.of(wish("a", WorkWish.Kind.WITH, "bo"))), "a")
                        .people())
                .containsExactly("bo");
        assertThat(planned(work.withWishes(List.of(wish("a", WorkWish.Kind.WITHOUT, "ada"))), "a")
                        .people())
                .containsExactly("bo");
        assertThat(planned(
                                work.withWishes(List.of(
                                        wish("both", WorkWish.Kind.WITH, "bo"),
                                        new WorkWish(
                                                "second",
                                                "both",
                                                WorkWish.Kind.WITH,
                                                "ada",
                                                Optional.empty(),
                                                Optional.empty(),
                                                "",
                                                ""))),
                                "both")
                        .people())
                .containsExactlyInAnyOrder("ada", "bo");
    }

    @Test
    void should_take_the_place_that_the_lead_wants_and_wait_for_it_when_it_is_taken() {
        Work work = two().stand("one", "hall", true, true)
                .stand("other", "hall", true, true)
                .step(new Step("a", 1, 120))
                .step(new Step("b", 1, 60))
                .hold(Kind.STAND, List.of("one"), "a")
                .hold(Kind.STAND, List.of("one", "other"), "b")
                .work();
        assertThat(planned(work, "b").places()).containsExactly("other");
        Work wished = work.withWishes(List.of(wish("b", WorkWish.Kind.AT, "one")));
        assertThat(planned(wished, "b").places()).containsExactly("one");
        assertThat(planned(wished, "b").start()).isEqualTo(SmallShop.at(MON + "10:00"));
        assertThat(planned(work.withWishes(List.of(wish("b", WorkWish.Kind.AWAY, "other"))), "b")
                        .places())
                .containsExactly("one");
        Reason reason = PlanReasons.of(wished, new SerialPlanner().plan(wished)).stream()
                .filter(r -> r.step().equals("b"))
                .findFirst()
                .orElseThrow();
        assertThat(reason.cause()).isEqualTo(Cause.PLACE);
        assertThat(reason.words()).contains("ada wants it at one (because)");
    }

    @Test
    void should_begin_within_the_time_that_the_lead_wants_and_put_other_work_around_it() {
        Work work = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("long", 1, 420))
                .step(new Step("b", 1, 60))
                .work()
                .withWishes(List.of(start("b", MON + "13:00", MON + "15:00")));
        assertThat(planned(work, "b").start()).isBetween(SmallShop.at(MON + "13:00"), SmallShop.at(MON + "14:59"));
        assertThat(planned(work, "long").start()).isEqualTo(SmallShop.at(TUE + "08:00"));
    }

    @Test
    void should_name_the_wish_that_lets_a_step_wait_and_move_it_when_the_wish_is_gone() {
        Work work = two().step(new Step("a", 1, 60)).work().withWishes(List.of(start("a", TUE + "12:30", "")));
        Plan plan = new SerialPlanner().plan(work);
        Reason reason = PlanReasons.of(work, plan).get(0);
        assertThat(reason.cause()).isEqualTo(Cause.WISH);
        assertThat(reason.on()).isEqualTo("start-a");
        assertThat(reason.words()).contains("waits because the lead wants it to begin no sooner than Tue 3 Mar 12:30");
        assertThat(planned(work.withoutWish(reason.on()), "a").start()).isEqualTo(SmallShop.at(MON + "08:00"));
    }

    @Test
    void should_bind_nobody_any_more_when_the_time_wished_is_over() {
        Work work = two().step(new Step("a", 1, 60)).work().withWishes(List.of(start("a", "", MON + "08:00")));
        assertThat(planned(work, "a").start()).isEqualTo(SmallShop.at(MON + "08:00"));
    }

    @Test
    void should_say_wish_and_cause_when_the_person_lacks_the_skill() {
        Work work = two().step(new Step("a", 1, 60).skill("sand", 1))
                .work()
                .withWishes(List.of(wish("a", WorkWish.Kind.WITH, "ada")));
        assertThat(unplanned(work, "a")).contains("Ada wants ada on it (because)", "ada has not the skill sand");
        Conflict c = PlanConflict.of(work, "a", SerialPlanner.quick()).get(0);
        assertThat(c.requirements())
                .containsExactly("1 of its people need the skill sand", "ada wants ada on it (because)");
    }

    @Test
    void should_say_wish_and_cause_when_the_person_is_not_in_then() {
        Work work = two().step(new Step("a", 1, 60))
                .work()
                .withWishes(List.of(
                        wish("a", WorkWish.Kind.WITH, "bo"), start("a", "2026-03-07T08:00", "2026-03-08T12:00")));
        assertThat(unplanned(work, "a")).contains("bo is not in the shop between Sat 7 Mar 08:00");
        Conflict c = PlanConflict.of(work, "a", SerialPlanner.quick()).get(0);
        assertThat(c.requirements())
                .containsExactly("the lead wants it to begin between Sat 7 Mar 08:00 and Sun 8 Mar 12:00");
    }

    @Test
    void should_say_wish_and_cause_when_the_place_does_not_fit() {
        SmallShop shop = two().stand("wet", "hall", false, true)
                .stand("dusty", "hall", true, false)
                .mould("m")
                .step(new Step("a", 1, 60).air("dust"))
                .hold(Kind.STAND, List.of("wet", "dusty"), "a");
        assertThat(unplanned(shop.work().withWishes(List.of(wish("a", WorkWish.Kind.AT, "wet"))), "a"))
                .contains("wet is not for this work");
        assertThat(unplanned(shop.work().withWishes(List.of(wish("a", WorkWish.Kind.AT, "m"))), "a"))
                .contains("it can only take wet, dusty");
        assertThat(unplanned(shop.work().withWishes(List.of(wish("a", WorkWish.Kind.AT, "nowhere"))), "a"))
                .contains("no such place");
        assertThat(unplanned(shop.work().withWishes(List.of(wish("a", WorkWish.Kind.AWAY, "dusty"))), "a"))
                .contains("no other place is left for it");
        assertThat(unplanned(shop.work().withWishes(List.of(wish("a", WorkWish.Kind.WITH, "zoe"))), "a"))
                .contains("\"zoe\" is not among the people who are planned");
    }

    @Test
    void should_leave_a_part_where_it_has_begun_and_say_so() {
        Work work = two().stand("one", "hall", true, true)
                .stand("other", "hall", true, true)
                .step(new Step("a", 1, 60).running(MON + "07:50", "one"))
                .step(new Step("b", 1, 60).after("a"))
                .hold(Kind.STAND, List.of("one", "other"), "a", "b")
                .work();
        assertThat(unplanned(work.withWishes(List.of(wish("b", WorkWish.Kind.AT, "other"))), "b"))
                .contains("it has begun at one and stays there");
        assertThat(planned(work.withWishes(List.of(wish("b", WorkWish.Kind.AT, "one"))), "b")
                        .places())
                .containsExactly("one");
    }

    @Test
    void should_name_both_wishes_when_they_want_one_person_at_the_same_time() {
        Work work = two().step(new Step("a", 1, 300))
                .step(new Step("b", 1, 300))
                .work()
                .withWishes(List.of(
                        wish("a", WorkWish.Kind.WITH, "ada"),
                        start("a", MON + "08:00", MON + "09:00"),
                        wish("b", WorkWish.Kind.WITH, "ada"),
                        start("b", MON + "08:00", MON + "09:00")));
        Plan plan = new SerialPlanner().plan(work);
        String out = plan.unplanned().get(0).step();
        String in = out.equals("a") ? "b" : "a";
        assertThat(plan.unplanned().get(0).reason()).contains("What is wished counts", "ada wants ada on it");
        String sentence =
                PlanConflict.of(work, out, SerialPlanner.quick()).get(0).sentence();
        assertThat(sentence)
                .contains("ada wants ada on it (because);", "ada wants ada on it (because), for \"" + in + "\"");
        assertThat(sentence).contains("the lead wants it to begin between Mon 2 Mar 08:00 and Mon 2 Mar 09:00");
    }

    @Test
    void should_say_so_when_two_wishes_contradict_each_other() {
        Work work = two().step(new Step("a", 1, 60))
                .work()
                .withWishes(List.of(wish("a", WorkWish.Kind.WITH, "bo"), wish("a", WorkWish.Kind.WITHOUT, "bo")));
        assertThat(unplanned(work, "a")).contains("Ada wants bo on it", "but ada wants it done without bo");
    }

    @Test
    void should_move_what_the_crew_was_told_when_the_lead_wishes_otherwise() {
        Work work = two().step(new Step("a", 1, 60)).step(new Step("b", 1, 60)).work();
        Plan plan = new SerialPlanner().plan(work);
        PlanGoal goal = new PlanGoal(PlanWeights.USUAL, List.of(), Optional.of(told(plan)));
        String other = planned(work, "a").people().contains("ada") ? "bo" : "ada";
        Work wished = work.withWishes(List.of(wish("a", WorkWish.Kind.WITH, other)));
        Plan first = StayingPlan.of(wished, new SerialPlanner().plan(wished), goal, Optional.of(plan)).stream()
                .filter(p -> new PlanAuditor().audit(wished, p).isEmpty())
                .findFirst()
                .orElseThrow();
        assertThat(first.steps())
                .filteredOn(p -> p.step().equals("a"))
                .allSatisfy(p -> assertThat(p.people()).containsExactly(other));
    }

    static PublishedPlan told(Plan plan) {
        return new PublishedPlan(
                1,
                Instant.EPOCH,
                "ada",
                "d",
                "h",
                plan.steps().stream()
                        .map(p -> new PublishedPlan.Step(
                                p.step(), p.start(), p.handsEnd(), p.end(), p.people(), p.places()))
                        .toList());
    }
}
