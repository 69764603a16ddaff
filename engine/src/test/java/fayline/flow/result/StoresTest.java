package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.plan.Plan;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Definition;
import fayline.flow.project.design.Hand;
import fayline.flow.project.stock.Delivery;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.MouldUse;
import fayline.flow.result.stock.StoresCheck;
import fayline.flow.result.stock.StoresResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Stores, weeks, moulds, several projects. */
class StoresTest {
    private static StoresResult.Item item(StoresResult stores, String of, String component) {
        return stores.items().stream()
                .filter(i -> i.of().equals(of) && i.component().equals(component))
                .findFirst()
                .orElseThrow();
    }

    private static StoresResult dated(Definition definition, ShopState state) {
        ProjectResult result = ProjectCalculator.calculate(definition, state);
        Plan plan = new SerialPlanner().plan(result.work());
        Map<String, Instant> starts = new HashMap<>();
        plan.steps().forEach(p -> starts.put(p.step(), p.start()));
        return new StoresCheck(definition, state).check(result.steps(), starts);
    }

    @Test
    void should_split_a_mix_into_its_parts_and_take_the_first_expired_first_when_lots_are_held() {
        SmallShop shop = new SmallShop();
        shop.lots.add(SmallShop.lot("L-late", "er", "resin", "3 kg", "2027-01-01"));
        shop.lots.add(SmallShop.lot("L-soon", "er", "resin", "3 kg", "2026-04-01"));
        shop.lots.add(SmallShop.lot("L-gone", "er", "resin", "9 kg", "2026-02-01"));
        StoresResult stores = ProjectCalculator.calculate(shop.build(), ShopState.at(SmallShop.MONDAY))
                .stores();
        StoresResult.Item resin = item(stores, "er", "resin");
        // 2.2 kg in the part and 15 % of waste, 100 of 130 parts of it resin.
        assertThat(resin.needed().si()).isCloseTo(2.2 * 1.15 * 100 / 130, within(1e-9));
        assertThat(resin.held().si()).isCloseTo(6, within(1e-9));
        assertThat(resin.expired().si()).isCloseTo(9, within(1e-9));
        assertThat(resin.lots()).containsExactly("L-soon", "L-late");
        assertThat(stores.findings())
                .anyMatch(f -> f.sentence().startsWith("9.00 kg of Slow resin, resin is out of date"));
    }

    @Test
    void should_tell_what_runs_short_by_when_and_when_to_order_when_the_work_is_planned() {
        SmallShop shop = new SmallShop();
        shop.moreParts.add(shop.shell("lid", Hand.NONE, Optional.empty(), shop.shellMake));
        // 3 plies x 2 m2 x 1.15 = 6.9 m2 a shell.
        shop.lots.add(SmallShop.lot("L-1", "g-200", "", "10 m2", ""));
        StoresResult stores = dated(shop.build(), ShopState.at(SmallShop.MONDAY));
        StoresResult.Shortage cloth = stores.shortages().stream()
                .filter(s -> s.of().equals("g-200"))
                .findFirst()
                .orElseThrow();
        assertThat(cloth.shortBy().si()).isCloseTo(3.8, within(1e-9));
        LocalDate day =
                cloth.by().orElseThrow().atZone(java.time.ZoneOffset.UTC).toLocalDate();
        assertThat(cloth.orderBy()).contains(day.minusDays(10));
        assertThat(cloth.late()).isTrue();
    }

    @Test
    void should_count_a_delivery_from_its_day_on_when_it_comes_before_or_after_the_need() {
        SmallShop shop = new SmallShop();
        shop.lots.add(SmallShop.lot("L-1", "g-200", "", "1 m2", ""));
        shop.deliveries.add(delivery("2026-03-02"));
        assertThat(dated(shop.build(), ShopState.at(SmallShop.MONDAY)).shortages())
                .noneMatch(s -> s.of().equals("g-200"));
        shop.deliveries.set(0, delivery("2026-06-01"));
        StoresResult later = dated(shop.build(), ShopState.at(SmallShop.MONDAY));
        assertThat(later.shortages()).anyMatch(s -> s.of().equals("g-200"));
        assertThat(item(later, "g-200", "").coming().si()).isCloseTo(20, within(1e-9));
    }

    private static Delivery delivery(String due) {
        return new Delivery(
                "d-1", "g-200", "20 m2", LocalDate.parse(due), Optional.empty(), Optional.empty(), List.of());
    }

    @Test
    void should_count_what_begun_steps_drew_when_stock_is_told() {
        SmallShop shop = new SmallShop();
        shop.lots.add(SmallShop.lot("L-1", "g-200", "", "10 m2", ""));
        ShopState state = ShopState.at(SmallShop.MONDAY).withSteps(Map.of("shell/1/lay-up-1", started()));
        StoresResult.Item cloth =
                item(ProjectCalculator.calculate(shop.build(), state).stores(), "g-200", "");
        assertThat(cloth.held().si()).isCloseTo(10 - 4.6, within(1e-9));
        assertThat(cloth.needed().si()).isCloseTo(2.3, within(1e-9));
    }

    @Test
    void should_sum_weeks_to_the_whole_when_a_plan_is_known() {
        Definition definition = new SmallShop().build();
        ProjectResult result = ProjectCalculator.calculate(definition, ShopState.at(SmallShop.MONDAY));
        List<WeekNeeds> weeks = WeekNeeds.of(
                result,
                new SerialPlanner().plan(result.work()),
                definition.shop().zone());
        assertThat(weeks).isNotEmpty();
        assertThat(weeks.get(0).monday()).isEqualTo(LocalDate.of(2026, 3, 2));
        assertThat(weeks.stream().mapToDouble(WeekNeeds::cost).sum())
                .isCloseTo(result.part("shell").orElseThrow().cost(), within(1e-6));
        assertThat(weeks.stream().mapToInt(w -> w.steps().size()).sum())
                .isEqualTo(result.steps().size());
    }

    @Test
    void should_count_pulls_and_say_what_is_due_when_a_mould_has_been_pulled() {
        SmallShop shop = new SmallShop();
        shop.mould = new fayline.flow.project.shop.Mould("m-shell", "Shell mould", Optional.empty(), 9, 2, 11, 3, 12);
        shop.moreParts.add(shop.shell("next", Hand.NONE, Optional.empty(), shop.shellMake));
        ShopState state = ShopState.at(SmallShop.MONDAY).withSteps(Map.of("shell/1/demould", started()));
        ProjectResult result = ProjectCalculator.calculate(shop.build(), state);
        MouldUse use = result.moulds().get(0);
        assertThat(use.pulls()).isEqualTo(10);
        assertThat(use.sinceTouchUp()).isEqualTo(3);
        assertThat(use.touchUpDue()).isTrue();
        assertThat(use.fullDue()).isTrue();
        assertThat(result.findings()).anyMatch(f -> f.sentence().contains("12 times since its last full release"));
    }

    @Test
    void should_plan_two_aircraft_as_one_shop_when_projects_are_combined() {
        SmallShop first = new SmallShop();
        SmallShop second = new SmallShop();
        second.id = "wren-2";
        ShopState state = ShopState.at(SmallShop.MONDAY);
        ProjectResult one = ProjectCalculator.calculate(first.build(), state);
        ProjectResult two = ProjectCalculator.calculate(second.build(), state);
        var work = ShopWork.combine(List.of(one, two));
        assertThat(work.steps()).hasSize(one.steps().size() + two.steps().size());
        assertThat(work.people()).hasSize(3);
        assertThat(work.clocks()).isEqualTo(one.work().clocks());
        Plan plan = new SerialPlanner().plan(work);
        assertThat(plan.unplanned()).isEmpty();
        assertThat(new fayline.flow.audit.PlanAuditor().audit(work, plan)).isEmpty();
    }

    private static StepFacts started() {
        return new StepFacts(
                Instant.parse("2026-02-27T08:00:00Z"),
                Optional.of(Instant.parse("2026-02-27T10:00:00Z")),
                Optional.empty(),
                List.of(),
                List.of(),
                0);
    }
}
