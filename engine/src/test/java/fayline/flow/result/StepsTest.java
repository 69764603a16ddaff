package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.audit.PlanAuditor;
import fayline.flow.plan.Hold;
import fayline.flow.plan.Plan;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.design.Hand;
import fayline.flow.project.stock.Delivery;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Recipes made into steps. */
class StepsTest {
    private static ProjectResult result(SmallShop shop) {
        return ProjectCalculator.calculate(shop.build(), ShopState.at(SmallShop.MONDAY));
    }

    private static StepResult step(ProjectResult result, String local) {
        return result.step("wren-1/" + local).orElseThrow();
    }

    private static List<String> waits(StepResult step) {
        return step.work().after().stream().map(Link::step).toList();
    }

    @Test
    void should_fill_parameters_in_when_texts_name_them() {
        StepResult release = step(result(new SmallShop()), "shell/1/release");
        assertThat(release.title()).isEqualTo("Do release with Slow resin");
    }

    @Test
    void should_share_the_hands_by_crew_and_round_up_when_rates_add_up() {
        // 15 min per ply and m2 on one ply of 2 m2, 10 min per m2 of core on 2 m2: 50 person-minutes.
        StepResult layUp = step(result(new SmallShop()), "shell/1/lay-up-2");
        assertThat(layUp.work().hands()).containsExactly(new CrewTime(2, 25), new CrewTime(3, 20), new CrewTime(4, 15));
        assertThat(layUp.personMinutes()).isEqualTo(50);
        assertThat(layUp.hands().get(0).inputs())
                .allMatch(i -> i.origin() == SmallShop.assumed() || i.name().startsWith("factor"));
    }

    @Test
    void should_count_batches_into_the_hands_when_a_rate_is_per_batch() {
        StepResult layUp = step(result(new SmallShop()), "shell/1/lay-up-1");
        // 15 min x 4 m2 of plies, and 5 min for each batch.
        assertThat(layUp.personMinutes())
                .isEqualTo(60 + 5 * layUp.batches().get(0).batches());
    }

    @Test
    void should_put_unattended_times_and_windows_on_the_cure_clock_when_a_state_is_waited_for() {
        ProjectResult result = result(new SmallShop());
        StepResult bag = step(result, "shell/1/bag-2");
        assertThat(bag.work().alone().minutes()).isCloseTo(24 * 60, within(1e-6));
        assertThat(bag.work().alone().clock()).isEqualTo("er@demould");
        Link recoat = step(result, "shell/1/lay-up-2").work().after().get(1);
        assertThat(recoat.from()).isEqualTo("hands-end");
        assertThat(recoat.opens().minutes()).isCloseTo(6 * 60, within(1e-6));
        assertThat(recoat.shuts().orElseThrow().minutes()).isCloseTo(30 * 60, within(1e-6));
        assertThat(recoat.miss().orElseThrow().personMinutes()).isEqualTo(60);
        assertThat(recoat.miss().orElseThrow().does()).isEqualTo("Abrade Slow resin, wipe, dry.");
    }

    @Test
    void should_take_the_coldest_stand_for_cures_and_the_warmest_for_what_shuts_when_stands_may_be_chosen() {
        SmallShop shop = new SmallShop();
        shop.mould = new fayline.flow.project.shop.Mould("m-shell", "Shell", Optional.empty(), 0, 0, 0, 3, 12);
        ProjectResult result = result(shop);
        assertThat(step(result, "shell/1/bag-1").work().alone().clock()).isEqualTo("er@handling");
        Link recoat = step(result, "shell/1/lay-up-2").work().after().get(1);
        assertThat(recoat.opens().clock()).isEqualTo("er@recoat-opens");
        assertThat(recoat.shuts().orElseThrow().clock()).isEqualTo("er@recoat-shuts+5K");
        Hold stand = result.work().holds().stream()
                .filter(h -> h.id().endsWith("stand:leak-test-demould"))
                .findFirst()
                .orElseThrow();
        assertThat(stand.candidates()).containsExactly("bench-1", "bench-2", "tent");
    }

    @Test
    void should_keep_to_stands_that_allow_the_air_when_a_mould_stands_elsewhere() {
        List<Hold> holds = result(new SmallShop()).work().holds();
        assertThat(holds)
                .filteredOn(h -> h.id().endsWith("stand:trim-trim"))
                .singleElement()
                .satisfies(h -> assertThat(h.candidates()).containsExactly("trim"));
        assertThat(holds)
                .filteredOn(h -> h.id().endsWith("stand:leak-test-demould"))
                .singleElement()
                .satisfies(h -> assertThat(h.candidates()).containsExactly("bench-1"));
    }

    @Test
    void should_close_the_gap_when_a_parameter_leaves_a_step_out() {
        SmallShop shop = new SmallShop();
        shop.shellMake = SmallShop.make("two-stages", Map.of("resin", "er", "weigh", "no"), List.of());
        ProjectResult result = result(shop);
        assertThat(result.step("wren-1/shell/1/weigh")).isEmpty();
        assertThat(waits(step(result, "shell/1/trim"))).containsExactly("wren-1/shell/1/demould");
    }

    @Test
    void should_wait_for_parts_and_makes_when_joints_and_later_makes_follow() {
        SmallShop shop = new SmallShop();
        shop.shellMake = SmallShop.make("two-stages", Map.of("resin", "er"), List.of());
        shop.moreParts.add(shop.shell(
                "lid",
                Hand.NONE,
                Optional.empty(),
                SmallShop.make("two-stages", Map.of("resin", "er"), List.of("shell/lay-up-1")),
                SmallShop.make("bond", Map.of("adhesive", "paste"), List.of("seam"))));
        shop.joints.add(SmallShop.joint("seam", "shell", "lid"));
        ProjectResult result = result(shop);
        assertThat(waits(step(result, "lid/1/release"))).containsExactly("wren-1/shell/1/lay-up-1");
        // The lid's second make waits for the joint, so the joint waits for the first only.
        assertThat(waits(step(result, "seam/1/bond"))).containsExactly("wren-1/shell/1/trim", "wren-1/lid/1/trim");
        assertThat(waits(step(result, "lid/2/bond"))).containsExactly("wren-1/lid/1/trim", "wren-1/seam/1/bond");
    }

    @Test
    void should_ask_which_way_round_at_the_first_irreversible_step_when_a_part_has_a_hand() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("left", Hand.LEFT, Optional.of("right"), shop.shellMake));
        shop.moreParts.add(shop.shell("right", Hand.RIGHT, Optional.of("left"), shop.shellMake));
        ProjectResult result = result(shop);
        assertThat(result.steps())
                .filteredOn(StepResult::whichWay)
                .extracting(StepResult::id)
                .containsExactly("wren-1/left/1/lay-up-1", "wren-1/right/1/lay-up-1");
    }

    @Test
    void should_wait_for_a_delivery_until_the_day_of_doubt_when_a_part_needs_it() {
        SmallShop shop = new SmallShop();
        shop.deliveries.add(new Delivery(
                "d-1",
                "er",
                "20 kg",
                LocalDate.of(2026, 3, 6),
                Optional.of(LocalDate.of(2026, 3, 12)),
                Optional.empty(),
                List.of("shell/lay-up-1")));
        ProjectResult result = result(shop);
        assertThat(step(result, "shell/1/lay-up-1").work().awaits()).containsExactly("d-1");
        assertThat(result.work().deliveries().get(0).expected()).isEqualTo(Instant.parse("2026-03-12T12:00:00Z"));
    }

    @Test
    void should_say_so_when_resin_is_mixed_before_a_bag_was_tested() {
        SmallShop shop = new SmallShop();
        assertThat(result(shop).findings()).noneMatch(f -> f.sentence().contains("tested for leaks"));
        shop.shellMake = SmallShop.make("no-test", Map.of(), List.of());
        assertThat(result(shop).findings())
                .anyMatch(f -> f.sentence().contains("before any bag was tested for leaks"))
                .anyMatch(f -> f.sentence().contains("Stage 2 of Part shell is drawn but no step"));
    }

    @Test
    void should_accompany_wet_hands_and_look_at_bags_when_work_is_wet() {
        ProjectResult result = result(new SmallShop());
        assertThat(step(result, "shell/1/lay-up-1").work().accompanied()).isTrue();
        assertThat(step(result, "shell/1/trim").work().accompanied()).isFalse();
        assertThat(step(result, "shell/1/bag-1").work().watchMin()).containsExactly(15);
        assertThat(step(result, "shell/1/bag-1").cautions()).contains("vacuum");
        assertThat(step(result, "shell/1/lay-up-1").cautions()).containsExactly("epoxy", "exotherm");
    }

    @Test
    void should_leave_volunteers_out_unless_the_lead_counts_on_them() {
        SmallShop shop = new SmallShop();
        fayline.flow.project.shop.Person p = shop.people.get(2);
        shop.people.set(
                2, new fayline.flow.project.shop.Person(p.id(), p.name(), p.skills(), true, p.hours(), p.absences()));
        assertThat(result(shop).work().people()).extracting(w -> w.id()).containsExactly("ada", "bo");
        ShopState counted = new ShopState(
                SmallShop.MONDAY, Map.of(), List.of(), Map.of(), Map.of(), List.of(), List.of(), Set.of("cy"));
        assertThat(ProjectCalculator.calculate(shop.build(), counted).work().people())
                .hasSize(3);
    }

    @Test
    void should_make_a_plan_without_a_broken_rule_when_the_work_is_planned() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("left", Hand.LEFT, Optional.of("right"), shop.shellMake));
        shop.moreParts.add(shop.shell("right", Hand.RIGHT, Optional.of("left"), shop.shellMake));
        shop.joints.add(SmallShop.joint("seam", "left", "right"));
        ProjectResult result = result(shop);
        Plan plan = new SerialPlanner().plan(result.work());
        assertThat(plan.unplanned()).isEmpty();
        assertThat(plan.steps()).hasSize(result.steps().size());
        assertThat(new PlanAuditor().audit(result.work(), plan)).isEmpty();
    }

    @Test
    void should_run_a_bag_on_when_its_hands_have_left_and_end_it_by_the_air_read() {
        SmallShop shop = new SmallShop();
        Instant left = Instant.parse("2026-03-02T12:00:00Z");
        Map<String, StepFacts> facts = Map.of(
                "shell/1/bag-1",
                new StepFacts(
                        left.minusSeconds(1200),
                        Optional.of(left),
                        Optional.empty(),
                        List.of("ada", "bo"),
                        List.of(),
                        0));
        ShopState evening = ShopState.at(left.plusSeconds(11 * 3600)).withSteps(facts);
        assertThat(step(ProjectCalculator.calculate(shop.build(), evening), "shell/1/bag-1")
                        .work()
                        .state())
                .isEqualTo(State.RUNNING);
        ShopState morning = evening.withNow(left.plusSeconds(13 * 3600));
        var work = step(ProjectCalculator.calculate(shop.build(), morning), "shell/1/bag-1")
                .work();
        // Twelve hours to handling strength at 20 degC, and it was 20 degC.
        assertThat(work.state()).isEqualTo(State.DONE);
        assertThat(work.actual().ended()).contains(left.plusSeconds(12 * 3600));
    }
}
