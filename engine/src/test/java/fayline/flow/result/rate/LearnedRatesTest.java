package fayline.flow.result.rate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Figure.Origin;
import fayline.flow.plan.WorkStep.State;
import fayline.flow.project.Definition;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.ProjectResult;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.time.YearMonth;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LearnedRatesTest {
    private static final Definition SHOP = new SmallShop().build();
    private static final Instant NOW = Instant.parse("2026-03-04T07:30:00Z");

    private static StepFacts facts(String from, String to, String... people) {
        Optional<Instant> left = to.isEmpty() ? Optional.empty() : Optional.of(Instant.parse(to + ":00Z"));
        return new StepFacts(Instant.parse(from + ":00Z"), left, Optional.empty(), List.of(people), List.of(), 0);
    }

    private static BookedHours booked(Map<String, StepFacts> facts) {
        return BookedHours.of(SHOP.shop(), ShopState.at(NOW).withSteps(facts));
    }

    private static StepResult step(ProjectResult result, String local) {
        return result.steps().stream()
                .filter(s -> s.local().equals(local))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void should_book_start_to_finish_for_each_of_the_people_on_one_day() {
        BookedHours b = booked(Map.of("shell/1/cut", facts("2026-03-02T08:00", "2026-03-02T09:30", "ada", "bo")));
        assertThat(b.minutes().get("shell/1/cut")).isCloseTo(180, within(1e-9));
        assertThat(b.months().get(YearMonth.of(2026, 3))).isCloseTo(3, within(1e-9));
    }

    @Test
    void should_share_a_persons_time_when_two_steps_are_open_at_once() {
        BookedHours b = booked(Map.of(
                "shell/1/a", facts("2026-03-02T08:00", "2026-03-02T10:00", "ada"),
                "shell/1/b", facts("2026-03-02T09:00", "2026-03-02T11:00", "ada")));
        assertThat(b.minutes().get("shell/1/a")).isCloseTo(90, within(1e-9));
        assertThat(b.minutes().get("shell/1/b")).isCloseTo(90, within(1e-9));
        assertThat(b.months().get(YearMonth.of(2026, 3))).isCloseTo(3, within(1e-9));
    }

    @Test
    void should_book_only_usual_hours_when_a_step_goes_over_the_night() {
        var hours = SHOP.shop().people().find("ada").orElseThrow().hours().get(0);
        BookedHours b = booked(Map.of("shell/1/a", facts("2026-03-02T07:30", "2026-03-03T23:00", "ada")));
        double day = java.time.Duration.between(hours.from(), hours.to()).toMinutes()
                - hours.pause()
                        .map(p -> java.time.Duration.between(p.from(), p.to()).toMinutes())
                        .orElse(0L);
        assertThat(b.minutes().get("shell/1/a")).isCloseTo(2 * day, within(1e-9));
    }

    @Test
    void should_book_no_minutes_for_a_step_that_is_not_finished_but_count_its_hours() {
        BookedHours b = booked(Map.of("shell/1/a", facts("2026-03-04T06:30", "", "ada")));
        assertThat(b.minutes()).isEmpty();
        assertThat(b.months().get(YearMonth.of(2026, 3))).isCloseTo(1, within(1e-9));
    }

    @Test
    void should_put_the_learned_factor_with_its_origin_on_steps_to_do_and_leave_finished_ones() {
        Map<String, StepFacts> facts = new HashMap<>();
        ProjectResult plain = ProjectCalculator.calculate(SHOP, ShopState.at(NOW));
        StepResult release = step(plain, "shell/1/release");
        // Three times as long as the recipe says.
        Instant end = Instant.parse("2026-03-02T07:30:00Z").plusSeconds(60L * release.personMinutes() * 3);
        facts.put(
                "shell/1/release",
                new StepFacts(
                        Instant.parse("2026-03-02T07:30:00Z"),
                        Optional.of(end),
                        Optional.empty(),
                        List.of("ada"),
                        List.of(),
                        0));
        ShopState state = ShopState.at(NOW).withSteps(facts);
        ProjectResult recipes = ProjectCalculator.calculate(SHOP, state);
        LearnedRates rates = LearnedRates.of(List.of(ProjectTimes.of(SHOP, state, recipes.steps())));
        double factor = rates.rates().factor(release.kind().key(), 1);
        assertThat(factor).isGreaterThan(1.2);
        ProjectResult learned = ProjectCalculator.calculate(ProjectCalculator.expand(SHOP, state), rates);
        assertThat(step(learned, "shell/1/release").personMinutes()).isEqualTo(release.personMinutes());
        List<StepResult> open = learned.steps().stream()
                .filter(s -> s.kind() == release.kind() && s.work().state() == State.TODO)
                .toList();
        for (StepResult s : open) {
            int before = step(recipes, s.local()).personMinutes();
            assertThat(s.personMinutes()).isEqualTo((int) Math.ceil(before * factor - 1e-9));
        }
        // Another kind moves only as far as the one person's pace is learned: not at all in the plan.
        learned.steps().stream()
                .filter(s -> s.kind() != release.kind())
                .forEach(s -> assertThat(s.work().hands())
                        .isEqualTo(step(recipes, s.local()).work().hands()));
        assertThat(learned.steps().stream()
                        .flatMap(s -> s.hands().stream())
                        .flatMap(f -> f.inputs().stream())
                        .anyMatch(i -> i.origin() == Origin.LEARNED))
                .isEqualTo(!open.isEmpty());
    }

    @Test
    void should_change_nothing_when_nothing_is_learned() {
        ProjectResult plain = ProjectCalculator.calculate(SHOP, ShopState.at(NOW));
        assertThat(ProjectCalculator.calculate(ProjectCalculator.expand(SHOP, ShopState.at(NOW)), LearnedRates.NONE)
                        .steps())
                .isEqualTo(plain.steps());
        LearnedRates nothing = LearnedRates.of(List.of(ProjectTimes.of(SHOP, ShopState.at(NOW), plain.steps())));
        assertThat(ProjectCalculator.calculate(ProjectCalculator.expand(SHOP, ShopState.at(NOW)), nothing)
                        .steps())
                .isEqualTo(plain.steps());
    }

    @Test
    void should_count_repeats_on_from_one_project_to_the_next_in_the_order_of_time() {
        SmallShop second = new SmallShop();
        second.id = "wren-2";
        Definition other = second.build();
        ShopState later = ShopState.at(NOW)
                .withSteps(Map.of("shell/1/release", facts("2026-03-03T08:00", "2026-03-03T08:20", "ada")));
        ShopState sooner = ShopState.at(NOW)
                .withSteps(Map.of("shell/1/release", facts("2026-03-02T08:00", "2026-03-02T08:30", "ada")));
        LearnedRates rates = LearnedRates.of(List.of(
                ProjectTimes.of(
                        SHOP, later, ProjectCalculator.expand(SHOP, later).steps()),
                ProjectTimes.of(
                        other, sooner, ProjectCalculator.expand(other, sooner).steps())));
        assertThat(rates.rates().counted())
                .extracting(w -> w.id())
                .containsExactly("wren-2/shell/1/release", "wren-1/shell/1/release");
        assertThat(rates.rates().counted()).extracting(w -> w.repeat()).containsExactly(1, 2);
    }
}
