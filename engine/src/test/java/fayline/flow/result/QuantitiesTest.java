package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Mass;
import fayline.flow.project.design.Hand;
import fayline.flow.project.design.Part;
import fayline.flow.result.quantity.BagStack;
import fayline.flow.result.quantity.Need;
import fayline.flow.result.quantity.PartResult;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.step.StepResult;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Hand-computed quantities of the small shop (first principles; margins of the bag are common practice, no source). */
class QuantitiesTest {
    private static ProjectResult result(SmallShop shop) {
        return ProjectCalculator.calculate(shop.build(), ShopState.at(SmallShop.MONDAY));
    }

    private static PartResult shell(ProjectResult result) {
        return result.part("shell").orElseThrow();
    }

    private static double amount(List<Need> needs, String of) {
        return needs.stream()
                .filter(n -> n.of().equals(of))
                .mapToDouble(n -> n.amount().si())
                .sum();
    }

    @Test
    void should_weigh_what_the_hand_sum_says_when_a_shell_has_two_stages_and_core() {
        PartResult shell = shell(result(new SmallShop()));
        // Cloth 3 x 0.2 kg/m2 x 2 m2 = 1.2 kg; core 60 kg/m3 x 10 mm x 2 m2 = 1.2 kg.
        assertThat(shell.dry().kilograms()).isCloseTo(2.4, within(1e-9));
        // Resin as heavy as the cloth at a fibre mass fraction of one half, bedding 0.5 kg/m2 x 2 m2.
        assertThat(shell.asMade().kilograms()).isCloseTo(2.4 + 1.2 + 1.0, within(1e-9));
        // One cloth is 0.2/(2540 V_f), V_f = 1150/(1150 + 2540): 0.25265 mm; three of them and the core.
        assertThat(shell.zones().get(0).thickness().orElseThrow().millimetres())
                .isCloseTo(10 + 3 * 0.25265, within(1e-3));
    }

    @Test
    void should_draw_cloth_resin_and_bag_with_their_waste_when_needs_are_summed() {
        PartResult shell = shell(result(new SmallShop()));
        assertThat(amount(shell.needs(), "g-200")).isCloseTo(3 * 2.0 * 1.15, within(1e-9));
        assertThat(amount(shell.needs(), "foam-10")).isCloseTo(2.0 * 1.15, within(1e-9));
        // 0.8 + 0.4 kg in the plies and 1.0 kg of bedding, with 15 % of waste on each.
        assertThat(amount(shell.needs(), "er")).isCloseTo(2.2 * 1.15, within(1e-9));
        // Two bags of 2 m2 with an edge of 6 m: A + P m + pi m2, m = 50 mm, and 10 % of spare.
        double peel = (2.0 + 6 * 0.05 + Math.PI * 0.0025) * 1.1;
        assertThat(amount(shell.needs(), "peel")).isCloseTo(2 * peel, within(1e-9));
        // Tape line 180 mm out: 6 + 2 pi 0.18, six pleats of 150 mm (depth 100 mm and 50), 5 % of spare.
        double tape = (6 + 2 * Math.PI * 0.18 + 2 * 0.15 * 6) * 1.05;
        assertThat(amount(shell.needs(), "tape")).isCloseTo(2 * tape, within(1e-9));
        assertThat(amount(shell.needs(), "wax")).isCloseTo(2 * 0.015, within(1e-9));
        double cloth = shell.needs().stream()
                .filter(n -> n.of().equals("g-200"))
                .mapToDouble(n -> n.cost().orElseThrow())
                .sum();
        assertThat(cloth).isCloseTo(6.9 * 6.40, within(1e-9));
    }

    @Test
    void should_stack_the_bag_from_the_part_outward_when_a_step_is_bagged() {
        BagStack bag = result(new SmallShop())
                .step("wren-1/shell/1/bag-1")
                .flatMap(StepResult::bag)
                .orElseThrow();
        // Order: AC 43.13-1B par 3-4.
        assertThat(bag.layers())
                .extracting(BagStack.Layer::what)
                .containsExactly("peel ply", "perforated film", "breather", "bag");
        assertThat(bag.ports()).isEqualTo(2);
        assertThat(bag.pleatHeight().millimetres()).isCloseTo(150, within(1e-9));
    }

    @Test
    void should_mix_adhesive_by_area_line_density_and_squeeze_out_when_a_joint_is_bonded() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("lid", Hand.NONE, Optional.empty(), shop.shellMake));
        shop.joints.add(SmallShop.joint("seam", "shell", "lid"));
        var seam = result(shop).joint("seam").orElseThrow();
        assertThat(seam.faying().squareMetres()).isCloseTo(0.06, within(1e-12));
        // 1.5 m x 40 mm x 0.5 mm x 1.3 kg/L = 39 g, and 30 % squeezed out.
        assertThat(seam.inJoint().grams()).isCloseTo(39, within(1e-9));
        assertThat(seam.adhesive().grams()).isCloseTo(50.7, within(1e-9));
    }

    @Test
    void should_split_batches_under_the_pot_limit_and_keep_their_sum_when_resin_is_mixed() {
        StepResult layUp =
                result(new SmallShop()).step("wren-1/shell/1/lay-up-1").orElseThrow();
        var list = layUp.batches().get(0);
        assertThat(list.total().kilograms()).isCloseTo(0.8 * 1.15, within(1e-9));
        assertThat(list.scale()).hasSize(list.batches()).hasSizeGreaterThan(1);
        double sum =
                list.scale().stream().mapToDouble(b -> b.mass().kilograms()).sum();
        assertThat(sum).isCloseTo(list.total().kilograms(), within(1e-9));
        assertThat(list.batch()).isLessThanOrEqualTo(list.largest()).isLessThanOrEqualTo(Mass.ofGrams(500));
        assertThat(list.resin().kilograms() / list.hardener().kilograms()).isCloseTo(100 / 30.0, within(1e-9));
        assertThat(list.hardenerTolerance().kilograms())
                .isCloseTo(list.hardener().kilograms() * 0.03, within(1e-12));
        assertThat(list.findings()).allMatch(f -> !f.sentence().isBlank());
    }

    @Test
    void should_scale_resin_and_cloth_with_the_area_when_the_area_changes() {
        Random random = new Random(7);
        PartResult one = shell(result(new SmallShop()));
        for (int i = 0; i < 20; i++) {
            double factor = 0.2 + random.nextDouble() * 5;
            SmallShop shop = new SmallShop();
            shop.zones = List.of(SmallShop.zone("skin", 2.0 * factor, 6.0, 2));
            PartResult scaled = shell(result(shop));
            for (String thing : List.of("er", "g-200", "foam-10", "wax")) {
                assertThat(amount(scaled.needs(), thing))
                        .isCloseTo(amount(one.needs(), thing) * factor, within(1e-9 * factor));
            }
            assertThat(scaled.asMade().kilograms()).isCloseTo(one.asMade().kilograms() * factor, within(1e-9 * factor));
        }
    }

    @Test
    void should_keep_totals_when_a_zone_is_split_in_two() {
        Random random = new Random(11);
        PartResult whole = shell(result(new SmallShop()));
        for (int i = 0; i < 20; i++) {
            double part = 0.05 + 0.9 * random.nextDouble();
            SmallShop shop = new SmallShop();
            shop.zones = List.of(
                    SmallShop.zone("bow", 2.0 * part, 3.0, 1), SmallShop.zone("stern", 2.0 * (1 - part), 3.0, 1));
            PartResult split = shell(result(shop));
            for (Need need : whole.needs()) {
                assertThat(amount(split.needs(), need.of()))
                        .as(need.of())
                        .isCloseTo(need.amount().si(), within(1e-9));
            }
            assertThat(split.dry().kilograms()).isCloseTo(whole.dry().kilograms(), within(1e-9));
            assertThat(split.asMade().kilograms()).isCloseTo(whole.asMade().kilograms(), within(1e-9));
            assertThat(split.edge()).isEqualTo(whole.edge());
        }
    }

    @Test
    void should_compute_the_same_for_each_part_when_parts_stand_in_another_order() {
        SmallShop shop = new SmallShop();
        for (String id : List.of("a", "b", "c", "d")) {
            shop.moreParts.add(shop.shell(id, Hand.NONE, Optional.empty(), shop.shellMake));
        }
        ProjectResult straight = result(shop);
        List<Part> turned = shop.moreParts;
        Collections.reverse(turned);
        ProjectResult reversed = result(shop);
        for (PartResult p : straight.parts()) {
            assertThat(reversed.part(p.part())).contains(p);
        }
        assertThat(reversed.steps()).containsExactlyInAnyOrderElementsOf(straight.steps());
    }

    @Test
    void should_say_so_when_a_part_is_computed_over_its_target() {
        SmallShop shop = new SmallShop();
        shop.zones = List.of(SmallShop.zone("skin", 3.0, 7.0, 2));
        assertThat(shell(result(shop)).findings())
                .anyMatch(f -> f.sentence().contains("6.90 kg") && f.sentence().contains("1.90 kg over"));
        assertThat(shell(result(new SmallShop())).findings())
                .noneMatch(f -> f.sentence().contains("over its target"));
    }

    @Test
    void should_keep_the_kinds_of_amounts_apart_when_needs_are_summed() {
        List<Need> needs = result(new SmallShop()).needs();
        assertThat(needs).filteredOn(n -> n.of().equals("tape")).allMatch(n -> n.amount() instanceof Length);
        assertThat(needs).filteredOn(n -> n.of().equals("g-200")).allMatch(n -> n.amount() instanceof Area);
        assertThat(needs).extracting(Need::of).doesNotHaveDuplicates();
    }
}
