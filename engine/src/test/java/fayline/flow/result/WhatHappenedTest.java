package fayline.flow.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Fraction;
import fayline.flow.audit.PlanAuditor;
import fayline.flow.card.Card;
import fayline.flow.card.CardMaker;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.project.Climate;
import fayline.flow.project.Definition;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.ClockRunning;
import fayline.flow.result.step.OpenWindow;
import fayline.method.cure.CureState;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A step finished late, or colder readings, change every dependent limit, quantity, clock, card and plan. */
class WhatHappenedTest {
    private static final Instant NOW = Instant.parse("2026-03-03T07:30:00Z");

    /** Released, tested, and laid up on Monday; the lay-up finished at a given time, bagged half an hour later. */
    private static ShopState laidUpBy(Instant finished) {
        Map<String, StepFacts> facts = new HashMap<>();
        facts.put("shell/1/release", facts("2026-03-02T07:30:00Z", Instant.parse("2026-03-02T07:50:00Z")));
        facts.put("shell/1/leak-test", facts("2026-03-02T09:00:00Z", Instant.parse("2026-03-02T09:20:00Z")));
        facts.put("shell/1/lay-up-1", facts("2026-03-02T10:00:00Z", finished));
        facts.put("shell/1/bag-1", facts(finished.toString(), finished.plusSeconds(1800)));
        return ShopState.at(NOW).withSteps(facts);
    }

    private static StepFacts facts(String started, Instant left) {
        return new StepFacts(
                Instant.parse(started),
                Optional.of(left),
                Optional.empty(),
                List.of("ada", "bo"),
                List.of("bench-1", "port-1"),
                0);
    }

    private static ClockRunning clock(ProjectResult result, CureState state) {
        return result.clocks().stream()
                .filter(c -> c.step().equals("wren-1/shell/1/lay-up-1") && c.state() == state)
                .findFirst()
                .orElseThrow();
    }

    private static OpenWindow recoat(ProjectResult result) {
        return result.windows().stream()
                .filter(w ->
                        w.step().equals("wren-1/shell/1/lay-up-2") && w.miss().isPresent())
                .findFirst()
                .orElseThrow();
    }

    private static PlannedStep planned(Plan plan, String local) {
        return plan.steps().stream()
                .filter(p -> p.step().equals("wren-1/" + local))
                .findFirst()
                .orElseThrow();
    }

    private static Plan plan(ProjectResult result) {
        Plan plan = new SerialPlanner().plan(result.work());
        assertThat(new PlanAuditor().audit(result.work(), plan)).isEmpty();
        return plan;
    }

    @Test
    void should_tell_when_and_why_a_state_is_reached_when_a_cure_runs() {
        Instant finished = Instant.parse("2026-03-02T12:00:00Z");
        ProjectResult result = ProjectCalculator.calculate(new SmallShop().build(), laidUpBy(finished));
        ClockRunning demould = clock(result, CureState.DEMOULD);
        // 24 h at 20 degC from the last batch on, and it is 20 degC.
        assertThat(demould.at()).contains(finished.plus(Duration.ofHours(24)));
        assertThat(demould.soFar().hours()).isCloseTo(19.5, within(1e-6));
        assertThat(demould.remaining().orElseThrow().hours()).isCloseTo(4.5, within(1e-6));
        assertThat(demould.reached()).isFalse();
        assertThat(demould.why().inputs()).anyMatch(i -> i.value().contains("factor of two per 10 K"));
        // What shuts counts from the first batch.
        assertThat(clock(result, CureState.GEL).from()).isEqualTo(Instant.parse("2026-03-02T10:00:00Z"));
        assertThat(clock(result, CureState.GEL).reached()).isTrue();
    }

    @Test
    void should_shift_clocks_windows_and_plan_by_the_delay_when_a_step_is_finished_late() {
        Definition shop = new SmallShop().build();
        Instant finished = Instant.parse("2026-03-02T12:00:00Z");
        Duration delay = Duration.ofHours(3);
        ProjectResult onTime = ProjectCalculator.calculate(shop, laidUpBy(finished));
        ProjectResult late = ProjectCalculator.calculate(shop, laidUpBy(finished.plus(delay)));
        assertThat(clock(late, CureState.DEMOULD).at())
                .contains(clock(onTime, CureState.DEMOULD).at().orElseThrow().plus(delay));
        assertThat(recoat(onTime).opens()).contains(finished.plus(Duration.ofHours(6)));
        assertThat(recoat(late).opens()).contains(finished.plus(delay).plus(Duration.ofHours(6)));
        assertThat(recoat(late).shuts())
                .contains(recoat(onTime).shuts().orElseThrow().plus(delay));
        Plan before = plan(onTime);
        Plan after = plan(late);
        // The bag is on until handling strength, twelve hours after it closed.
        assertThat(planned(before, "shell/1/bag-1").end()).isEqualTo(Instant.parse("2026-03-03T00:30:00Z"));
        assertThat(planned(after, "shell/1/bag-1").end()).isEqualTo(Instant.parse("2026-03-03T03:30:00Z"));
        Card cardBefore = CardMaker.make(shop, onTime, before, "wren-1/shell/1/lay-up-2");
        Card cardAfter = CardMaker.make(shop, late, after, "wren-1/shell/1/lay-up-2");
        assertThat(shuts(cardAfter)).isEqualTo(shuts(cardBefore).plus(delay));
        assertThat(cardBefore.clocks()).isNotEmpty().isNotEqualTo(cardAfter.clocks());
    }

    @Test
    void should_hold_the_plan_back_when_a_step_is_finished_so_late_that_the_cure_is_not_done() {
        Definition shop = new SmallShop().build();
        ProjectResult late = ProjectCalculator.calculate(shop, laidUpBy(Instant.parse("2026-03-02T22:00:00Z")));
        Plan plan = plan(late);
        // Bag closed at half past ten at night, handling strength at half past ten in the morning.
        assertThat(planned(plan, "shell/1/lay-up-2").start()).isAfterOrEqualTo(Instant.parse("2026-03-03T10:30:00Z"));
        Plan onTime = plan(ProjectCalculator.calculate(shop, laidUpBy(Instant.parse("2026-03-02T12:00:00Z"))));
        assertThat(planned(onTime, "shell/1/lay-up-2").start())
                .isBefore(planned(plan, "shell/1/lay-up-2").start());
    }

    @Test
    void should_lengthen_cures_windows_and_plan_when_the_night_was_read_colder() {
        Definition shop = new SmallShop().build();
        Instant finished = Instant.parse("2026-03-02T12:00:00Z");
        ShopState state = laidUpBy(finished);
        ProjectResult warm = ProjectCalculator.calculate(shop, state);
        // Ten degrees all the time: half the speed.
        ProjectResult cold = ProjectCalculator.calculate(
                shop,
                state.withReadings(List.of(
                        SmallShop.reading("2026-03-02T10:00:00Z", 10),
                        SmallShop.reading("2026-03-02T20:00:00Z", 10),
                        SmallShop.reading("2026-03-03T07:30:00Z", 10))));
        ClockRunning demould = clock(cold, CureState.DEMOULD);
        // 19.5 h at half speed are 9.75 h; the rest of the 24 at the usual 20 degC.
        assertThat(demould.soFar().hours()).isCloseTo(9.75, within(1e-3));
        assertThat(demould.at()).contains(NOW.plus(Duration.ofMinutes(Math.round(14.25 * 60))));
        assertThat(demould.measured()).isCloseTo(1, within(1e-9));
        assertThat(clock(warm, CureState.DEMOULD).measured()).isZero();
        assertThat(recoat(cold).opens().orElseThrow())
                .isAfter(recoat(warm).opens().orElseThrow());
        assertThat(recoat(cold).shuts().orElseThrow())
                .isAfter(recoat(warm).shuts().orElseThrow());
        assertThat(planned(plan(cold), "shell/1/lay-up-2").start())
                .isAfter(planned(plan(warm), "shell/1/lay-up-2").start());
        assertThat(cold.airNow().findings()).anyMatch(f -> f.sentence().contains("limit"));
    }

    @Test
    void should_let_the_coldest_probe_rule_cures_and_the_warmest_what_shuts_when_probes_differ() {
        SmallShop shop = new SmallShop();
        for (String at : List.of("2026-03-02T10:00:00Z", "2026-03-02T20:00:00Z", "2026-03-03T07:30:00Z")) {
            Climate.Reading cold = SmallShop.reading(at, 10);
            shop.readings.add(cold);
            shop.readings.add(new Climate.Reading(
                    cold.at(), "under the lamp", SmallShop.celsius(30), cold.humidity(), cold.surface()));
        }
        ProjectResult result =
                ProjectCalculator.calculate(shop.build(), laidUpBy(Instant.parse("2026-03-02T12:00:00Z")));
        assertThat(clock(result, CureState.DEMOULD).soFar().hours()).isCloseTo(9.75, within(1e-3));
        // 21.5 h from the first batch at twice the speed.
        assertThat(clock(result, CureState.RECOAT_SHUTS).soFar().hours()).isCloseTo(43, within(1e-2));
        assertThat(recoat(result).missed()).isTrue();
        assertThat(recoat(result).open()).isFalse();
    }

    @Test
    void should_change_batches_on_the_card_when_another_temperature_is_forecast() {
        SmallShop shop = new SmallShop();
        shop.zones = List.of(SmallShop.zone("skin", 6.0, 10.0, 2));
        ShopState state = ShopState.at(SmallShop.MONDAY);
        Card usual = layUpCard(shop.build(), state);
        shop.forecast.add(new Climate.Day(
                LocalDate.of(2026, 3, 2), SmallShop.celsius(38), SmallShop.celsius(25), Fraction.ofPercent(50)));
        Card hot = layUpCard(shop.build(), state);
        assertThat(hot.mixes().get(0).list().temperature()).isEqualTo(SmallShop.celsius(38));
        assertThat(hot.mixes().get(0).list().potLife())
                .isLessThan(usual.mixes().get(0).list().potLife());
        assertThat(hot.mixes().get(0).list().batches())
                .isGreaterThan(usual.mixes().get(0).list().batches());
        assertThat(hot.mixes().get(0).list().total())
                .isEqualTo(usual.mixes().get(0).list().total());
    }

    @Test
    void should_warn_on_the_card_when_the_shop_is_forecast_too_cold_to_begin() {
        SmallShop shop = new SmallShop();
        shop.usual = new Climate.Usual(SmallShop.celsius(14), SmallShop.celsius(12), Fraction.ofPercent(55));
        Card card = layUpCard(shop.build(), ShopState.at(SmallShop.MONDAY));
        assertThat(card.findings()).anyMatch(f -> f.sentence().contains("14.0 degC, the limit is 16.0 degC"));
    }

    @Test
    void should_start_a_step_without_hands_by_itself_when_what_it_waits_for_is_over() {
        SmallShop shop = new SmallShop();
        shop.recipes.add(SmallRecipes.cureByItself());
        shop.shellMake = SmallShop.make("by-itself", Map.of(), List.of());
        Instant left = Instant.parse("2026-03-02T12:00:00Z");
        ShopState state = ShopState.at(NOW).withSteps(Map.of("shell/1/close", facts("2026-03-02T11:00:00Z", left)));
        var cure = ProjectCalculator.calculate(shop.build(), state)
                .step("wren-1/shell/1/cure")
                .orElseThrow()
                .work();
        assertThat(cure.actual().started()).contains(left);
        assertThat(cure.actual().ended()).contains(left.plus(Duration.ofHours(12)));
    }

    private static Card layUpCard(Definition shop, ShopState state) {
        ProjectResult result = ProjectCalculator.calculate(shop, state);
        return CardMaker.make(shop, result, plan(result), "wren-1/shell/1/lay-up-1");
    }

    private static Instant shuts(Card card) {
        return card.windows().stream()
                .filter(w -> w.before() && w.miss().startsWith("Missed: Abrade"))
                .findFirst()
                .flatMap(Card.WindowLine::shuts)
                .orElseThrow();
    }
}
