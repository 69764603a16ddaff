package fayline.flow.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.plan.Plan;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A card tells the whole of a step to someone who has not seen it. */
class CardTest {
    private static final Definition SHOP = shop();
    private static final ProjectResult RESULT = ProjectCalculator.calculate(SHOP, ShopState.at(SmallShop.MONDAY));
    private static final Plan PLAN = new SerialPlanner().plan(RESULT.work());

    private static Definition shop() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("left", Hand.LEFT, Optional.of("right"), shop.shellMake));
        shop.moreParts.add(shop.shell("right", Hand.RIGHT, Optional.of("left"), shop.shellMake));
        shop.lots.add(SmallShop.lot("L-7", "er", "resin", "20 kg", "2027-01-01"));
        shop.lots.add(SmallShop.lot("L-8", "er", "hardener", "6 kg", "2027-01-01"));
        shop.lots.add(SmallShop.lot("L-9", "g-200", "", "40 m2", ""));
        return shop.build();
    }

    private static Card card(String local) {
        return CardMaker.make(SHOP, RESULT, PLAN, "wren-1/" + local);
    }

    @Test
    void should_name_part_hand_drawing_and_revision_when_a_card_is_headed() {
        Card.Heading heading = card("left/1/lay-up-1").heading();
        assertThat(heading.aircraft()).isEqualTo("Wren, serial 001");
        assertThat(heading.revision()).isEqualTo("A");
        assertThat(heading.definition()).isEqualTo("hash-1");
        assertThat(heading.hand()).isEqualTo(Hand.LEFT);
        assertThat(heading.opposite()).isEqualTo("Part right");
        assertThat(heading.drawing()).isEqualTo("WR-100 rev A");
    }

    @Test
    void should_hold_for_which_way_round_and_bring_the_other_hands_lessons_when_a_part_has_a_hand() {
        Card card = card("left/1/lay-up-1");
        assertThat(card.whichWay().orElseThrow().orient()).isEqualTo("Nose towards the door.");
        assertThat(card.whichWay().orElseThrow().question()).contains("left hand, not the right");
        assertThat(card.lessons()).containsExactly("Lesson of left.", "From Part right: Lesson of right.");
        assertThat(card("shell/1/lay-up-1").whichWay()).isEmpty();
    }

    @Test
    void should_list_plies_batches_lots_and_checks_when_a_step_lays_up() {
        Card card = card("shell/1/lay-up-2");
        assertThat(card.plies()).extracting(Card.PlyLine::material).containsExactly("foam-10 name", "g-200 name");
        assertThat(card.plies()).extracting(Card.PlyLine::core).containsExactly(true, false);
        assertThat(card.mixes()).extracting(m -> m.list().purpose()).containsExactly("core-bedding", "plies");
        for (Card.MixLine mix : card.mixes()) {
            assertThat(mix.lots()).containsExactly("resin L-7", "hardener L-8");
            assertThat(mix.list().people()).isEqualTo(card.when().people().size());
            assertThat(mix.list().batches()).isPositive();
        }
        assertThat(card.fetch())
                .anyMatch(f -> f.name().equals("g-200 name") && f.lots().contains("L-9"));
        assertThat(card.checks().get(0)).contains("16.0 degC").contains("70 %").contains("3.0 K");
        assertThat(card.checks()).contains("Check lay-up-2.");
        assertThat(card.readings())
                .anyMatch(r -> r.contains("humidity"))
                .anyMatch(r -> r.contains("Lot of both parts"));
        assertThat(card.say()).containsExactly("Work on lay-up-2.");
    }

    @Test
    void should_tell_windows_both_ways_with_their_moments_and_price_when_they_are_planned() {
        Card first = card("shell/1/lay-up-1");
        assertThat(first.windows())
                .anyMatch(w -> !w.before()
                        && w.what().startsWith("Do bag-1")
                        && w.miss().startsWith("It may not be missed"))
                .anyMatch(w -> !w.before()
                        && w.miss().equals("Missed: Abrade Slow resin, wipe, dry. 60 person-minutes more.")
                        && w.opens().isPresent()
                        && w.shuts().isPresent());
        assertThat(first.windows()).anyMatch(Card.WindowLine::before);
        assertThat(first.windows())
                .filteredOn(w -> w.shuts().isPresent() && w.opens().isPresent())
                .allMatch(w -> w.opens().orElseThrow().isBefore(w.shuts().orElseThrow()));
    }

    @Test
    void should_stack_the_bag_and_set_its_watches_when_a_step_is_bagged() {
        Card card = card("shell/1/bag-1");
        assertThat(card.bag())
                .extracting(Card.BagLine::what)
                .containsExactly("peel ply", "perforated film", "breather", "bag", "sealant tape, 6 pleats");
        assertThat(card.bag()).extracting(Card.BagLine::order).containsExactly(1, 2, 3, 4, 5);
        assertThat(card.when().watch())
                .containsExactly(card.when().handsEnd().orElseThrow().plusSeconds(900));
        assertThat(card.cautions()).extracting(Caution::key).contains("vacuum");
        assertThat(card.when().crew()).contains("2 to 3 people, 1 who can bag").contains("never alone");
    }

    @Test
    void should_make_a_card_with_a_why_for_every_step_when_the_work_is_planned() {
        for (StepResult step : RESULT.steps()) {
            Card card = CardMaker.make(SHOP, RESULT, PLAN, step.id());
            assertThat(card.title()).isNotBlank();
            assertThat(card.when().unplanned()).isEmpty();
            assertThat(card.when().start()).isPresent();
            assertThat(card.figures())
                    .isNotEmpty()
                    .allMatch(f -> !f.source().isBlank() && !f.inputs().isEmpty());
        }
    }

    @Test
    void should_say_why_when_a_step_is_in_no_plan() {
        Card card = CardMaker.make(
                SHOP, RESULT, new Plan(List.of(), List.of(), Optional.empty()), "wren-1/shell/1/lay-up-1");
        assertThat(card.when().unplanned()).isEqualTo("The plan does not hold this step.");
        assertThat(card.mixes()).isNotEmpty();
    }

    @Test
    void should_refuse_when_there_is_no_such_step() {
        assertThatThrownBy(() -> card("shell/9/nothing"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wren-1/shell/9/nothing");
    }

    @Test
    void should_defer_to_local_rules_and_never_promise_safety_when_a_caution_is_told() {
        Set<String> keys = new HashSet<>();
        for (Caution c : Cautions.all()) {
            assertThat(keys.add(c.key())).isTrue();
            assertThat(c.text()).isNotBlank().doesNotContainIgnoringCase("is safe");
            assertThat(c.source()).contains("local rules");
        }
        assertThat(keys)
                .contains(
                        "epoxy",
                        "isocyanate",
                        "exotherm",
                        "peroxide",
                        "dust",
                        "solvent",
                        "vacuum",
                        "oven",
                        "sharp",
                        "fuel");
        assertThat(Cautions.get("moon-dust").text()).contains("ask the lead");
    }
}
