package fayline.flow.planner;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.plan.Place;
import fayline.flow.plan.Place.Kind;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.PlanConflict.Conflict;
import fayline.flow.planner.SmallShop.Step;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Small shops in which it can be said by hand what stands against what. */
class PlanConflictTest {
    private static final String MON = "2026-03-02T";

    private static List<Conflict> of(SmallShop shop, String step) {
        Work work = shop.work();
        return PlanConflict.of(work, step, SerialPlanner.quick());
    }

    private static SmallShop shop() {
        return new SmallShop(MON + "08:00").person("ada", "laminate");
    }

    @Test
    void should_find_no_conflict_where_a_step_can_be_planned() {
        assertThat(of(shop().step(new Step("a", 1, 60)), "a")).isEmpty();
        assertThat(of(shop().step(new Step("a", 1, 60)), "no-such")).isEmpty();
    }

    @Test
    void should_name_the_length_alone_when_a_step_may_not_stop_and_is_longer_than_the_day() {
        Conflict c = of(shop().step(new Step("wet", 1, 840)), "wet").get(0);
        assertThat(c.requirements()).containsExactly("its 840 min of hands may not stop");
    }

    @Test
    void should_name_the_skill_alone_when_nobody_has_it() {
        Conflict c =
                of(shop().step(new Step("a", 1, 60).skill("plumbing", 1)), "a").get(0);
        assertThat(c.requirements()).containsExactly("1 of its people need the skill plumbing");
    }

    @Test
    void should_name_the_window_and_the_length_of_which_either_may_give_way() {
        // Lay-up until 09:00 and a bag within an hour of it, but the bag takes 14 h without a stop.
        SmallShop shop =
                shop().step(new Step("lay-up", 1, 60)).step(new Step("bag", 1, 840).within(60, "end", "lay-up"));
        Conflict c = of(shop, "bag").get(0);
        assertThat(c.requirements()).contains("its 840 min of hands may not stop");
        assertThat(c.sentence()).contains("may not stop");
    }

    @Test
    void should_name_the_place_when_it_has_to_choose_among_none() {
        SmallShop shop = shop().mould("m").step(new Step("a", 1, 60)).hold(Kind.MOULD, List.of(), "a");
        assertThat(of(shop, "a").get(0).requirements()).containsExactly("it needs 1 of no place");
    }

    @Test
    void should_name_places_as_the_shop_calls_them() {
        SmallShop shop = shop().mould("m-fin").step(new Step("a", 1, 60)).hold(Kind.MOULD, List.of("m-fin"), "a");
        Work work = shop.work();
        Work called = work.withPlaces(
                        List.of(new Place("m-fin", "Fin mould", Kind.MOULD, "hall", true, true)), work.holds())
                .withWishes(List.of(new WorkWish(
                        "w", "a", WorkWish.Kind.AWAY, "m-fin", Optional.empty(), Optional.empty(), "ada", "")));
        Conflict conflict = PlanConflict.of(called, "a", SerialPlanner.quick()).get(0);
        assertThat(conflict.requirements())
                .containsExactlyInAnyOrder("it needs 1 of Fin mould", "ada wants it kept away from Fin mould");
        assertThat(conflict.wishes()).containsExactly("w");
    }

    @Test
    void should_tell_conflicts_apart_that_have_nothing_in_common() {
        // Fifteen hours without a stop, by two, in a shop of one: both must give way.
        List<Conflict> c = of(shop().step(new Step("a", 2, 900).skill("laminate", 2)), "a");
        assertThat(c.stream().flatMap(x -> x.requirements().stream()))
                .containsExactlyInAnyOrder("its 900 min of hands may not stop", "it needs 2 people at once");
        assertThat(c).hasSize(2);
    }

    @Test
    void should_name_the_other_work_when_only_that_is_in_the_way() {
        SmallShop shop = shop().mould("m").step(new Step("a", 1, 60)).hold(Kind.MOULD, List.of("m"), "a");
        for (int i = 0; i < 60; i++) {
            shop.step(new Step("other-" + i, 1, 480));
        }
        shop.step(new Step("last", 1, 480));
        Work work = shop.work();
        String left = SerialPlanner.quick().plan(work).unplanned().get(0).step();
        assertThat(PlanConflict.of(work, left, SerialPlanner.quick()).get(0).requirements())
                .contains("the other work of the shop takes people and places");
    }
}
