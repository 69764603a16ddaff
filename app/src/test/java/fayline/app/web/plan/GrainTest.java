package fayline.app.web.plan;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.web.frame.TimeWords;
import fayline.flow.plan.Plan.PlannedStep;
import fayline.flow.plan.WorkStep;
import fayline.flow.plan.WorkStep.Actual;
import fayline.flow.plan.WorkStep.CrewTime;
import fayline.flow.plan.WorkStep.Link;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.plan.WorkStep.State;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GrainTest {
    private static final TimeWords TIME = new TimeWords(ZoneOffset.UTC, Instant.parse("2026-03-02T07:00:00Z"));

    private static WorkStep step(String id, String air, Link... after) {
        return new WorkStep(
                id,
                "p",
                "m",
                id,
                "trim",
                List.of(new CrewTime(1, 60)),
                Map.of(),
                air,
                true,
                Span.NONE,
                List.of(after),
                Optional.empty(),
                List.of(),
                List.of(),
                false,
                State.TODO,
                Actual.NONE);
    }

    private static Link after(String step, boolean window) {
        return new Link(
                step, "end", Span.NONE, window ? Optional.of(new Span(60, "")) : Optional.empty(), Optional.empty());
    }

    private static PlannedStep planned(String id, String from, String to) {
        Instant end = Instant.parse(to + ":00Z");
        return new PlannedStep(
                id, Instant.parse(from + ":00Z"), end, end, List.of("ada"), List.of(), List.of(), List.of());
    }

    @ParameterizedTest
    @CsvSource({
        "2026-03-02T07:00,2026-03-02T09:00,morning",
        "2026-03-02T07:00,2026-03-02T12:45,morning",
        "2026-03-02T07:00,2026-03-02T13:30,all day",
        "2026-03-02T11:15,2026-03-02T15:00,afternoon",
        "2026-03-02T13:00,2026-03-02T15:00,afternoon",
        "2026-03-02T07:00,2026-03-03T10:00,from morning to tomorrow noon",
        "2026-03-02T14:00,2026-03-04T16:00,from afternoon to Wed 4 Mar evening"
    })
    void should_speak_of_half_days_where_no_resin_decides(String from, String to, String words) {
        Grain grain = Grain.of(TIME, List.of(step("sand", "dust")));
        assertThat(grain.words(planned("sand", from, to))).isEqualTo(words);
        assertThat(grain.begins(planned("sand", from, to)))
                .isEqualTo(from.compareTo("2026-03-02T11:15") < 0 ? "today morning" : "today afternoon");
    }

    @Test
    void should_give_hours_and_minutes_for_wet_work_and_both_ends_of_a_window() {
        Grain grain = Grain.of(
                TIME,
                List.of(
                        step("lay-up", "wet"),
                        step("abrade", "dust"),
                        step("bond", "quiet", after("abrade", true)),
                        step("trim", "dust", after("bond", false))));
        assertThat(List.of("lay-up", "abrade", "bond")).allMatch(grain::isMinutes);
        assertThat(grain.isMinutes("trim")).isFalse();
        assertThat(grain.words(planned("lay-up", "2026-03-02T07:35", "2026-03-02T09:10")))
                .isEqualTo("07:35 to 09:10");
        assertThat(grain.words(planned("bond", "2026-03-02T16:35", "2026-03-03T09:10")))
                .isEqualTo("16:35 to tomorrow 09:10");
    }
}
