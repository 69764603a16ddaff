package fayline.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.forecast.PlanForecast.End;
import fayline.flow.forecast.PlanForecast.Holding;
import fayline.flow.forecast.Spreads.Between;
import fayline.flow.plan.Plan;
import fayline.flow.plan.Work;
import fayline.flow.plan.WorkWish;
import fayline.flow.planner.SerialPlanner;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TrialPlansTest {
    private static final Work WORK = ProjectCalculator.calculate(
                    new SmallShop().build(), ShopState.at(SmallShop.MONDAY))
            .work();
    private static final Spreads NONE = new Spreads(Map.of(), 0, 0, Map.of());
    private static final Spreads SOME = new Spreads(Map.of("lay-up", 0.3), 0.1, 0.2, Map.of());

    private static Target everything() {
        Set<String> made =
                WORK.steps().stream().map(s -> s.project() + "/" + s.made()).collect(Collectors.toSet());
        return new Target("all", "Everything", made, Optional.of(LocalDate.parse("2026-03-31")));
    }

    private static PlanForecast of(Work work, Spreads spreads, int trials, long seed) {
        return new TrialPlans(work, spreads, List.of(everything()), SerialPlanner.quick(), seed)
                .run(trials, () -> false);
    }

    @Test
    void should_give_the_plans_own_end_in_every_trial_when_nothing_is_uncertain() {
        Plan plan = SerialPlanner.quick().plan(WORK);
        End end = of(WORK, NONE, 4, 1).ends().get(0);
        assertThat(end.sorted()).hasSize(4).containsOnly(plan.finish().orElseThrow());
        assertThat(end.unplanned()).isZero();
        assertThat(end.at(0.5)).isEqualTo(plan.finish());
    }

    @Test
    void should_keep_a_wished_start_but_for_its_end_when_all_that_comes_before_may_be_late() {
        Plan plan = SerialPlanner.quick().plan(WORK);
        Plan.PlannedStep last = plan.steps().get(plan.steps().size() - 1);
        Instant from = last.start();
        Work wished = WORK.withWishes(List.of(new WorkWish(
                "w",
                last.step(),
                WorkWish.Kind.START,
                "",
                Optional.of(from),
                Optional.of(from.plus(Duration.ofMinutes(15))),
                "",
                "")));
        Spreads wide = new Spreads(Map.of(), 0.6, 0.5, Map.of());
        // Without the wish many trials are late by more than the quarter hour in which it is wished to begin.
        Instant late = plan.finish().orElseThrow().plus(Duration.ofHours(1));
        assertThat(of(WORK, wide, 24, 3).ends().get(0).sorted()).anyMatch(e -> e.isAfter(late));
        End end = of(wished, wide, 24, 3).ends().get(0);
        assertThat(end.unplanned()).isZero();
        assertThat(end.sorted()).allMatch(e -> e.isAfter(from));
    }

    @Test
    void should_answer_alike_for_an_equal_seed() {
        assertThat(of(WORK, SOME, 12, 5)).isEqualTo(of(WORK, SOME, 12, 5));
        assertThat(of(WORK, SOME, 12, 5).ends())
                .isNotEqualTo(of(WORK, SOME, 12, 6).ends());
    }

    @Test
    void should_order_the_quantiles_and_give_shares_between_nothing_and_all() {
        PlanForecast f = of(WORK, SOME, 25, 2);
        End end = f.ends().get(0);
        Instant p50 = end.at(0.5).orElseThrow();
        assertThat(p50).isBefore(end.at(0.8).orElseThrow().plusSeconds(1));
        assertThat(end.inTime(ZoneOffset.UTC).orElseThrow()).isBetween(0.0, 1.0);
        assertThat(f.holding())
                .isNotEmpty()
                .allSatisfy(h -> assertThat(h.share()).isBetween(0.0, 1.0));
        assertThat(f.holding()).isSortedAccordingTo((a, b) -> Double.compare(b.share(), a.share()));
    }

    @Test
    void should_hold_the_end_by_its_last_step_in_every_trial_when_nothing_is_uncertain() {
        Plan plan = SerialPlanner.quick().plan(WORK);
        String last = plan.steps().stream()
                .max(java.util.Comparator.comparing(Plan.PlannedStep::end))
                .orElseThrow()
                .step();
        assertThat(of(WORK, NONE, 3, 1).holding()).contains(new Holding(last, 1));
    }

    @Test
    void should_move_the_end_with_a_delivery_that_comes_between_two_days() {
        Work waiting = WORK.withDeliveries(List.of(new Work.Awaited("d", "cloth", WORK.now())))
                .withSteps(WORK.steps().stream().map(TrialPlansTest::awaiting).toList(), WORK.holds());
        Instant from = Instant.parse("2026-03-09T12:00:00Z");
        Instant to = Instant.parse("2026-03-13T12:00:00Z");
        End early = of(waiting, spread(from, from), 3, 1).ends().get(0);
        End late = of(waiting, spread(to, to), 3, 1).ends().get(0);
        End between = of(waiting, spread(from, to), 40, 1).ends().get(0);
        assertThat(early.sorted().get(0)).isBefore(late.sorted().get(0));
        assertThat(between.sorted())
                .allSatisfy(e -> assertThat(e)
                        .isBetween(early.sorted().get(0), late.sorted().get(0)));
        assertThat(between.sorted().stream().distinct().count()).isGreaterThan(1);
    }

    private static fayline.flow.plan.WorkStep awaiting(fayline.flow.plan.WorkStep s) {
        return new fayline.flow.plan.WorkStep(
                s.id(),
                s.project(),
                s.made(),
                s.title(),
                s.kind(),
                s.hands(),
                s.skills(),
                s.air(),
                s.interruptible(),
                s.alone(),
                s.after(),
                s.notBefore(),
                List.of("d"),
                s.watchMin(),
                s.accompanied(),
                s.state(),
                s.actual());
    }

    private static Spreads spread(Instant from, Instant to) {
        return new Spreads(Map.of(), 0, 0, Map.of("d", new Between(from, to, false)));
    }

    @Test
    void should_keep_what_was_tried_when_it_is_stopped() {
        AtomicInteger asked = new AtomicInteger();
        PlanForecast f = new TrialPlans(WORK, SOME, List.of(everything()), SerialPlanner.quick(), 1)
                .run(1000, () -> asked.incrementAndGet() > 5);
        assertThat(f.trials()).isEqualTo(5);
        assertThat(f.ends().get(0).sorted()).hasSize(5);
    }

    @Test
    void should_count_trials_without_a_plan_as_never() {
        Instant t = Instant.parse("2026-03-09T12:00:00Z");
        End end = new End(everything(), List.of(t, t.plusSeconds(60), t.plusSeconds(120)), 1);
        assertThat(end.at(0.5)).contains(t.plusSeconds(60));
        assertThat(end.at(0.75)).contains(t.plusSeconds(120));
        assertThat(end.at(0.8)).isEmpty();
        assertThat(end.inTime(ZoneOffset.UTC).orElseThrow()).isCloseTo(0.75, within(1e-12));
    }
}
