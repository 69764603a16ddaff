package fayline.flow.result.hours;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Fraction;
import fayline.flow.project.Definition;
import fayline.flow.project.local.LocalRules;
import fayline.flow.project.local.LocalTask;
import fayline.flow.project.recipe.StepKind;
import fayline.flow.result.ProjectCalculator;
import fayline.flow.result.SmallShop;
import fayline.flow.result.state.ShopState;
import fayline.flow.result.state.ShopState.StepFacts;
import fayline.flow.result.step.StepResult;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Hours and shares by hand: every figure below can be added up in the head. */
class HoursCalculatorTest {
    private static final Instant NOW = Instant.parse("2026-03-06T18:00:00Z");

    private final SmallShop shop = new SmallShop();

    private static StepFacts facts(String from, String to, String... people) {
        return new StepFacts(
                Instant.parse(from + ":00Z"),
                Optional.of(Instant.parse(to + ":00Z")),
                Optional.empty(),
                List.of(people),
                List.of(),
                0);
    }

    private List<StepResult> steps(Definition d) {
        return ProjectCalculator.calculate(d, ShopState.at(NOW)).steps();
    }

    private HoursResult hours(Map<String, StepFacts> facts) {
        Definition d = shop.build();
        return HoursCalculator.calculate(d, ShopState.at(NOW).withSteps(facts), steps(d));
    }

    private String local(int n) {
        return steps(shop.build()).get(n).local();
    }

    @Test
    void should_add_up_by_day_person_part_and_sort_of_work() {
        HoursResult r = hours(Map.of(
                local(0), facts("2026-03-02T08:00", "2026-03-02T10:00", "ada", "bo"),
                local(1), facts("2026-03-03T08:00", "2026-03-03T09:00", "bo")));

        assertThat(r.minutes()).isCloseTo(300, within(1e-9));
        assertThat(r.by(BookedTime::person)).isEqualTo(Map.of("ada", 120.0, "bo", 180.0));
        assertThat(r.by(BookedTime::made)).isEqualTo(Map.of("shell", 300.0));
        assertThat(r.by(b -> b.day().toString())).isEqualTo(Map.of("2026-03-02", 240.0, "2026-03-03", 60.0));
        assertThat(r.by(b -> b.kind().key()).values().stream()
                        .mapToDouble(m -> m)
                        .sum())
                .isCloseTo(300, within(1e-9));
        assertThat(r.share()).isEmpty();
    }

    @Test
    void should_count_pieces_of_one_day_as_one_line_where_somebody_was_at_two_steps() {
        HoursResult r = hours(Map.of(
                local(0), facts("2026-03-02T08:00", "2026-03-02T10:00", "ada"),
                local(1), facts("2026-03-02T09:00", "2026-03-02T11:00", "ada")));

        assertThat(r.booked()).hasSize(2).allMatch(b -> b.day().equals(LocalDate.of(2026, 3, 2)));
        assertThat(r.booked()).extracting(BookedTime::minutes).containsExactly(90.0, 90.0);
    }

    @Test
    void should_tell_the_builders_share_of_a_task_without_what_is_paid_and_bought() {
        StepKind first = steps(shop.build()).get(0).kind();
        shop.local = new LocalRules(
                "somebody, invented",
                List.of("bo"),
                Optional.of(Fraction.ofPercent(51)),
                List.of(
                        new LocalTask("t-1", "Shell", List.of("shell"), List.of(), 3, Fraction.ofPercent(20)),
                        new LocalTask(
                                "t-2", "Its first step", List.of("shell"), List.of(first), 1, Fraction.ofPercent(0)),
                        new LocalTask("t-3", "Nothing yet", List.of("no-such"), List.of(), 9, Fraction.ofPercent(0))),
                List.of());
        String other = steps(shop.build()).stream()
                .filter(s -> s.kind() != first)
                .findFirst()
                .orElseThrow()
                .local();

        HoursResult r = hours(Map.of(
                local(0),
                facts("2026-03-02T08:00", "2026-03-02T11:00", "ada"),
                other,
                facts("2026-03-03T08:00", "2026-03-03T09:00", "bo")));

        // 3 h of 4 h were the builders' own; a fifth was bought: 3/4 x 4/5
        assertThat(r.tasks().get(0).share().orElseThrow()).isCloseTo(0.6, within(1e-12));
        assertThat(r.tasks().get(1).share().orElseThrow()).isCloseTo(1.0, within(1e-12));
        assertThat(r.tasks().get(2).share()).isEmpty();
        // (3 x 0.6 + 1 x 1) / (3 + 1); what is not begun counts neither way
        assertThat(r.share().orElseThrow()).isCloseTo(0.7, within(1e-12));
    }
}
