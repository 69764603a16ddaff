package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Place.Kind;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.planner.PlanReasons.Cause;
import fayline.flow.planner.PlanReasons.Reason;
import fayline.flow.planner.SmallShop.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanReasonsTest {
    private static final String MON = "2026-03-02T";

    private static Reason of(SmallShop shop, String step) {
        Work work = shop.work();
        return PlanReasons.of(work, new SerialPlanner().plan(work)).stream()
                .filter(r -> r.step().equals(step))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_name_the_cure_when_a_step_waits_for_it_over_night() {
        SmallShop shop = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("lay-up", 1, 60).alone(720, ""))
                .step(new Step("trim", 1, 30).after("lay-up"));
        assertThat(of(shop, "lay-up").cause()).isEqualTo(Cause.NOW);
        // The cure ends at 21:00, the trim begins at 08:00; but ada leaves at 16:30, 7 h 30 after the hands' end.
        assertThat(of(shop, "lay-up").slipMin()).isEqualTo(450);
        Reason trim = of(shop, "trim");
        assertThat(trim.cause()).isEqualTo(Cause.CURE);
        assertThat(trim.on()).isEqualTo("lay-up");
        assertThat(trim.words()).contains("unattended time of \"lay-up\"", "21:00", "come in");
        assertThat(trim.slipMin()).isZero();
    }

    @Test
    void should_name_the_mould_when_it_is_taken() {
        SmallShop shop = new SmallShop(MON + "08:00")
                .person("ada")
                .person("bo")
                .mould("m")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60))
                .hold(Kind.MOULD, List.of("m"), "a")
                .hold(Kind.MOULD, List.of("m"), "b");
        assertThat(of(shop, "b").cause()).isEqualTo(Cause.PLACE);
        assertThat(of(shop, "b").on()).isEqualTo("m");
        assertThat(of(shop, "a").slipMin()).isZero();
    }

    @Test
    void should_name_the_person_when_there_is_but_one() {
        SmallShop shop = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60));
        assertThat(of(shop, "b").cause()).isEqualTo(Cause.PERSON);
        assertThat(of(shop, "b").words()).contains("ada", "\"a\"", "09:00");
    }

    @Test
    void should_follow_the_chain_that_holds_the_end_back_to_its_beginning() {
        SmallShop shop = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("lay-up", 1, 60).alone(720, ""))
                .step(new Step("trim", 1, 30).after("lay-up"))
                .step(new Step("paint", 1, 60));
        Work work = shop.work();
        Plan plan = new SerialPlanner().plan(work);
        List<Reason> chain = PlanReasons.chain(work, plan, java.util.Set.of("trim"));
        assertThat(chain).extracting(Reason::step).containsExactly("trim", "lay-up");
        assertThat(chain.get(0).via()).isEqualTo("lay-up");
        assertThat(PlanReasons.chain(work, plan, java.util.Set.of())).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 5, 9, 23, 57})
    void should_give_every_step_to_do_a_reason_and_no_negative_slip_when_a_shop_is_invented(long seed) {
        Work work = RandomWork.of(seed, 7, 70);
        Plan plan = new SerialPlanner().plan(work);
        List<Reason> reasons = PlanReasons.of(work, plan);
        assertThat(reasons).allSatisfy(r -> {
            assertThat(r.slipMin()).isNotNegative();
            assertThat(r.words()).isNotBlank();
        });
        long todo = work.steps().stream()
                .filter(s -> s.state() == fayline.flow.plan.WorkStep.State.TODO)
                .count();
        assertThat(reasons).hasSize((int) todo - plan.unplanned().size());
    }

    @Test
    void should_tell_what_moved_and_why_when_a_step_takes_longer() {
        SmallShop before = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60).after("a"));
        SmallShop after = new SmallShop(MON + "08:00")
                .person("ada")
                .step(new Step("a", 1, 120))
                .step(new Step("b", 1, 60).after("a"))
                .step(new Step("c", 1, 30).after("b"));
        PlanChanges changes = PlanChanges.between(before.plan(), after.work(), after.plan());
        assertThat(changes.changes()).extracting(PlanChanges.Change::step).containsExactly("b", "c");
        PlanChanges.Change b = changes.changes().get(0);
        assertThat(b.kind()).isEqualTo(PlanChanges.Kind.LATER);
        assertThat(b.byMin()).isEqualTo(60);
        assertThat(b.words()).contains("1 h later", "Mon 2 Mar 10:00", "was Mon 2 Mar 09:00", "\"a\"");
        assertThat(changes.finish()).hasValueSatisfying(f -> assertThat(f).contains("1 h 30 min later"));
        assertThat(PlanChanges.between(after.plan(), after.work(), after.plan()).changes())
                .isEmpty();
    }

    /** The step's start once what its reason names is gone and all is planned anew. */
    private static void assertMovesWithout(Work with, Work without, String step, Cause cause) {
        Plan before = new SerialPlanner().plan(with);
        Reason reason = PlanReasons.of(with, before).stream()
                .filter(r -> r.step().equals(step))
                .findFirst()
                .orElseThrow();
        assertThat(reason.cause()).isEqualTo(cause);
        assertThat(start(new SerialPlanner().plan(without), step)).isBefore(start(before, step));
    }

    private static java.time.Instant start(Plan plan, String step) {
        return plan.steps().stream()
                .filter(p -> p.step().equals(step))
                .findFirst()
                .orElseThrow()
                .start();
    }

    private static SmallShop shop(String... people) {
        SmallShop shop = new SmallShop(MON + "08:00");
        for (String p : people) {
            shop.person(p);
        }
        return shop;
    }

    @Test
    void should_move_a_step_when_the_earlier_step_that_it_names_is_taken_away() {
        Work with = shop("ada", "bo")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 30).after("a"))
                .work();
        Work without = shop("ada", "bo")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 30))
                .work();
        assertMovesWithout(with, without, "b", Cause.STEP);
    }

    @Test
    void should_move_a_step_when_the_cure_that_it_names_is_taken_away() {
        Work with = shop("ada")
                .step(new Step("a", 1, 60).alone(720, ""))
                .step(new Step("b", 1, 30).after("a"))
                .work();
        Work without = shop("ada")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 30).after("a"))
                .work();
        assertMovesWithout(with, without, "b", Cause.CURE);
    }

    @Test
    void should_move_a_step_when_there_is_one_more_of_the_place_that_it_names() {
        Work with = shop("ada", "bo")
                .mould("m")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60))
                .hold(Kind.MOULD, List.of("m"), "a")
                .hold(Kind.MOULD, List.of("m"), "b")
                .work();
        Work without = shop("ada", "bo")
                .mould("m")
                .mould("n")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60))
                .hold(Kind.MOULD, List.of("m"), "a")
                .hold(Kind.MOULD, List.of("m", "n"), "b")
                .work();
        assertMovesWithout(with, without, "b", Cause.PLACE);
    }

    @Test
    void should_move_a_step_when_there_is_one_more_like_the_person_that_it_names() {
        Work with = shop("ada")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60))
                .work();
        Work without = shop("ada", "bo")
                .step(new Step("a", 1, 60))
                .step(new Step("b", 1, 60))
                .work();
        assertMovesWithout(with, without, "b", Cause.PERSON);
    }

    @Test
    void should_name_what_ended_in_the_break_and_then_the_break() {
        Work work = shop("ada", "bo")
                .step(new Step("a", 1, 245))
                .step(new Step("b", 1, 30).after("a").stops())
                .work();
        Reason b = PlanReasons.of(work, new SerialPlanner().plan(work)).stream()
                .filter(r -> r.step().equals("b"))
                .findFirst()
                .orElseThrow();
        assertThat(b.cause()).isEqualTo(Cause.STEP);
        assertThat(b.words()).endsWith("then for the break to end");
    }
}
