package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.basis.units.Area;
import fayline.flow.plan.OppositeHands.Crew;
import fayline.flow.plan.OppositeHands.Follow;
import fayline.flow.plan.OppositeHands.Taught;
import fayline.flow.plan.PieceGroup;
import fayline.flow.plan.PieceGroup.Limit;
import fayline.flow.plan.PieceGroup.PieceSet;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkStep;
import fayline.flow.project.Definition;
import fayline.flow.project.design.AfterOpposite;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.project.design.PieceSets;
import fayline.flow.project.design.Zone;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.project.shop.Mould;
import fayline.flow.result.state.ShopState;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Like pieces divided into sets, and second hands, as the work for the planner. */
class PieceSetsTest {
    private static final String RIBS = "wren-1/ribs";

    private static SmallShop shop(PieceSets sets) {
        SmallShop shop = new SmallShop();
        shop.mould = new Mould("m-shell", "Rib moulds", Optional.empty(), 0, 0, 0, 3, 12, true);
        shop.shellMake = SmallShop.make("two-stages", Map.of("resin", "er", "mould", "none"), List.of("ribs"));
        shop.zones = shop.zones.stream()
                .map(z -> new Zone(
                        z.id(),
                        z.name(),
                        z.laminate(),
                        z.area().times(0.1),
                        z.edge(),
                        z.corners(),
                        z.axis(),
                        z.outline()))
                .toList();
        shop.moreParts.add(
                shop.shell("ribs", Hand.NONE, Optional.empty(), SmallShop.make("no-test", Map.of(), List.of()))
                        .withSets(sets));
        return shop;
    }

    private static PieceSets sets(int pieces, int least, int most, PieceSets.Limit limit) {
        return new PieceSets(pieces, "R", least, most, limit, "so it is", true, Optional.empty());
    }

    private static Work work(SmallShop shop, ShopState state) {
        return ProjectCalculator.calculate(shop.build(), state).work();
    }

    private static ShopState fresh() {
        return ShopState.at(SmallShop.MONDAY);
    }

    private static List<PieceSet> ribs(Work work) {
        return work.sets().groups().stream()
                .filter(g -> g.id().equals(RIBS))
                .flatMap(g -> g.sets().stream())
                .toList();
    }

    private static WorkStep step(Work work, String local) {
        return work.steps().stream()
                .filter(s -> s.id().equals("wren-1/" + local))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_make_a_part_of_each_set_with_the_amounts_of_its_pieces() {
        SmallShop shop = shop(sets(6, 2, 3, PieceSets.Limit.OTHER));
        Work work = work(shop, fresh());
        assertThat(ribs(work)).containsExactly(new PieceSet("ribs-1-3", 1, 3), new PieceSet("ribs-4-6", 4, 6));
        Definition one = ProjectCalculator.expand(shop.build(), fresh()).definition();
        Part part = one.parts().get("ribs-4-6");
        Part stated = shop.build().parts().get("ribs");
        assertThat(part.name()).isEqualTo("Part ribs, set 2 of 2: R4 to R6");
        assertThat(part.zones().get(0).area().squareMetres())
                .isEqualTo(3 * stated.zones().get(0).area().squareMetres());
        assertThat(part.sizes()).containsEntry("pleats", 18.0).containsEntry("depth", 0.1);
        assertThat(part.target().orElseThrow().value().kilograms()).isEqualTo(15);
        assertThat(one.shop().moulds().get("m-shell-4-6").name()).isEqualTo("Rib moulds 4 to 6");
        assertThat(part.mould()).contains("m-shell-4-6");
        assertThat(one.shop().moulds().find("m-shell")).isEmpty();
    }

    @Test
    void should_wait_in_turn_and_for_all_sets_when_something_names_the_part() {
        Work work = work(shop(sets(6, 2, 3, PieceSets.Limit.OTHER)), fresh());
        assertThat(step(work, "ribs-4-6/1/lay-up").after())
                .extracting(WorkStep.Link::step)
                .contains("wren-1/ribs-1-3/1/bag");
        assertThat(step(work, "shell/1/release").after())
                .extracting(WorkStep.Link::step)
                .contains("wren-1/ribs-1-3/1/bag", "wren-1/ribs-4-6/1/bag");
    }

    @Test
    void should_offer_every_other_number_of_sets_within_the_limits() {
        Work work = work(shop(sets(6, 2, 6, PieceSets.Limit.OTHER)), fresh());
        assertThat(work.divisions())
                .extracting(w -> ribs(w).stream().map(PieceSet::size).toList())
                .containsExactly(List.of(6), List.of(3, 3), List.of(2, 2, 2));
        assertThat(work.sets().otherwise())
                .allSatisfy(w -> assertThat(w.sets().otherwise()).isEmpty());
    }

    @Test
    void should_keep_a_set_as_it_is_once_it_has_begun() {
        Instant at = SmallShop.MONDAY;
        ShopState begun = ShopState.at(at.plusSeconds(3600))
                .withSteps(Map.of(
                        "ribs-1-2/1/lay-up",
                        new ShopState.StepFacts(
                                at, Optional.empty(), Optional.empty(), List.of("ada", "bo"), List.of(), 0)));
        Work work = work(shop(sets(6, 2, 6, PieceSets.Limit.OTHER)), begun);
        assertThat(work.divisions())
                .extracting(w -> ribs(w).stream().map(PieceSet::made).toList())
                .containsExactly(List.of("ribs-1-2", "ribs-3-6"), List.of("ribs-1-2", "ribs-3-4", "ribs-5-6"));
    }

    @Test
    void should_make_sets_no_larger_than_shelves_that_the_recipe_names() {
        SmallShop shop = shop(sets(6, 1, 6, PieceSets.Limit.SHELVES));
        double one = shop.build().parts().get("ribs").zones().stream()
                .mapToDouble(z -> z.area().squareMetres())
                .sum();
        shop.shelves = Optional.of(new Area(2.5 * one));
        shop.moreParts.set(
                0,
                shop.moreParts
                        .get(0)
                        .withMake(List.of(SmallShop.make(
                                "two-stages", Map.of("resin", "er", "stand", "bench-1", "mould", "none"), List.of()))));
        shop.shellMake = SmallShop.make("two-stages", Map.of("resin", "er", "mould", "none"), List.of());
        ProjectResult result = ProjectCalculator.calculate(shop.build(), fresh());
        PieceGroup group = result.work().sets().groups().get(0);
        assertThat(group.limits()).contains(new Limit("bench-1", 2));
        assertThat(result.findings()).anySatisfy(f -> assertThat(f.sentence()).contains("may have 6, but only 2 fit"));
        assertThat(result.work().sets().otherwise())
                .isNotEmpty()
                .allSatisfy(w ->
                        assertThat(ribs(w)).allSatisfy(s -> assertThat(s.size()).isLessThanOrEqualTo(2)));
    }

    @Test
    void should_make_sets_no_larger_than_one_pot_serves() {
        SmallShop shop = shop(sets(12, 1, 12, PieceSets.Limit.ONE_POT));
        ProjectResult result = ProjectCalculator.calculate(shop.build(), fresh());
        int pot = result.work().sets().groups().get(0).limits().stream()
                .filter(l -> l.place().isEmpty())
                .mapToInt(Limit::most)
                .findFirst()
                .orElseThrow();
        assertThat(pot).isBetween(1, 11);
        assertThat(batches(shop, pot)).isEqualTo(1);
        assertThat(batches(shop, pot + 1)).isNotEqualTo(1);
    }

    /** Batches of the lay-up of one set of so many. */
    private static int batches(SmallShop shop, int n) {
        SmallShop one = shop(new PieceSets(n, "", n, n, PieceSets.Limit.OTHER, "", false, Optional.empty()));
        return ProjectCalculator.calculate(one.build(), fresh())
                .step("wren-1/ribs-1-" + n + "/1/lay-up")
                .orElseThrow()
                .batches()
                .get(0)
                .batches();
    }

    private static SmallShop hands(AfterOpposite asks) {
        SmallShop shop = new SmallShop();
        Part left = shop.shell("left", Hand.LEFT, Optional.of("right"), shop.shellMake);
        Part right = shop.shell("right", Hand.RIGHT, Optional.of("left"), shop.shellMake);
        shop.moreParts.add(left);
        shop.moreParts.add(right.withAfterOpposite(asks));
        return shop;
    }

    @Test
    void should_follow_the_same_step_of_the_first_hand_while_hands_are_practised() {
        AfterOpposite asks = new AfterOpposite(
                Optional.empty(),
                List.of(),
                AfterOpposite.Crew.SAME,
                List.of(StepKind.LAY_UP),
                Optional.of(fayline.basis.units.TimeSpan.ofHours(48)),
                fayline.basis.units.TimeSpan.ofMinutes(20));
        Work work = work(hands(asks), fresh());
        assertThat(work.hands().follows())
                .containsExactlyInAnyOrder(
                        new Follow("wren-1/right/1/lay-up-1", "wren-1/left/1/lay-up-1", Crew.SAME),
                        new Follow("wren-1/right/1/lay-up-2", "wren-1/left/1/lay-up-2", Crew.SAME));
        WorkStep.Link link = step(work, "right/1/lay-up-1").after().stream()
                .filter(l -> l.step().equals("wren-1/left/1/lay-up-1"))
                .findFirst()
                .orElseThrow();
        assertThat(link.from()).isEqualTo("hands-end");
        assertThat(link.shuts().orElseThrow().minutes()).isEqualTo(2880);
        assertThat(link.miss().orElseThrow().personMinutes()).isEqualTo(20);
    }

    @Test
    void should_wait_for_the_lessons_of_the_first_hand_and_ask_for_them_when_none_is_written() {
        AfterOpposite asks = new AfterOpposite(
                Optional.of("left/demould"),
                List.of(StepKind.TRIM),
                AfterOpposite.Crew.ANY,
                List.of(),
                Optional.empty(),
                fayline.basis.units.TimeSpan.ofMinutes(0));
        SmallShop shop = hands(asks);
        Work work = work(shop, fresh());
        assertThat(work.hands().lessons())
                .containsExactly(new Taught("wren-1/right/1/trim", "wren-1/left/1/demould", "Part left"));
        assertThat(step(work, "right/1/trim").after().stream()
                        .map(WorkStep.Link::step)
                        .collect(Collectors.toSet()))
                .contains("wren-1/left/1/demould");
    }
}
