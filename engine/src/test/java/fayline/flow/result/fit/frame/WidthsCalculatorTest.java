package fayline.flow.result.fit.frame;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.flow.project.fit.frame.FitFrame;
import fayline.flow.project.fit.frame.FrameWidth;
import fayline.flow.reading.WidthReading;
import fayline.flow.reading.WidthReading.State;
import fayline.flow.reading.WidthReadings;
import fayline.flow.record.TakenReading;
import fayline.flow.result.fit.frame.WidthAnswer.Stage;
import fayline.method.fitup.frame.trial.TrialFitResult;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class WidthsCalculatorTest {
    private static final FrameWidth REAR = new FrameWidth(
            "rear",
            "rear arch",
            Widths.mm("690 mm"),
            Widths.mm("1.5 mm"),
            Widths.mm("0.3 mm"),
            Optional.empty(),
            List.of());

    private final List<TakenReading> taken = new ArrayList<>();

    private void read(State state, int trial, String typed) {
        taken.add(new TakenReading(
                taken.size() + 1L,
                "p",
                Instant.EPOCH,
                "runa",
                "width",
                "pane",
                "rear",
                state.word(),
                trial == 1 ? Map.of("value", typed) : Map.of("value", typed, "round", String.valueOf(trial))));
    }

    private WidthAnswer answer(FrameWidth width, WidthLesson... taught) {
        return WidthsCalculator.calculate(new WidthsQuestion(
                        Widths.fit(new FitFrame(List.of(width), Optional.empty())),
                        WidthReadings.of(taken, "pane"),
                        List.of(taught)))
                .widths()
                .get(0);
    }

    private List<WidthLesson> teaches() {
        return WidthsCalculator.teaches(WidthsCalculator.calculate(new WidthsQuestion(
                Widths.fit(new FitFrame(List.of(REAR), Optional.empty())),
                WidthReadings.of(taken, "pane"),
                List.of())));
    }

    @Test
    void should_wait_for_a_bare_width_when_nothing_is_read() {
        WidthAnswer a = answer(REAR);
        assertThat(a.stage()).isEqualTo(Stage.WAIT);
        assertThat(a.trial()).isEmpty();
        assertThat(a.startMm()).isEmpty();
        assertThat(a.next()).isEqualTo(new WidthAnswer.Next(1, State.BARE));
    }

    @Test
    void should_ask_for_a_second_trial_though_the_first_came_out() {
        read(State.BARE, 1, "692 mm");
        assertThat(answer(REAR).next()).isEqualTo(new WidthAnswer.Next(1, State.CLAMPED));
        read(State.CLAMPED, 1, "690.2 mm");
        WidthAnswer a = answer(REAR);
        assertThat(a.stage()).isEqualTo(Stage.WAIT);
        assertThat(a.trial().orElseThrow().verdict()).isEqualTo(TrialFitResult.Verdict.TRY_AGAIN);
        assertThat(a.next()).isEqualTo(new WidthAnswer.Next(2, State.BARE));
    }

    @Test
    void should_follow_how_the_frame_gave_and_go_when_the_second_trial_came_out() {
        read(State.BARE, 1, "690 mm");
        read(State.CLAMPED, 1, "687.9 mm");
        // One for one: 690 + (690 - 687.9) = 692.1.
        assertThat(answer(REAR).trial().orElseThrow().bareMm()).isEqualTo(692.1, within(1e-9));
        read(State.BARE, 2, "692.5 mm");
        read(State.CLAMPED, 2, "689.9 mm");
        WidthAnswer a = answer(REAR);
        assertThat(a.stage()).isEqualTo(Stage.GO);
        // 2.0 for 2.5: the missing 0.1 takes 0.125 more.
        assertThat(a.trial().orElseThrow().follow()).isEqualTo(0.8, within(1e-9));
        assertThat(a.trial().orElseThrow().bareMm()).isEqualTo(692.625, within(1e-9));
        assertThat(a.next()).isEqualTo(new WidthAnswer.Next(2, State.BONDED));
    }

    @Test
    void should_teach_the_opposite_hand_the_share_and_what_the_bond_took() {
        read(State.BARE, 1, "690 mm");
        read(State.CLAMPED, 1, "687.9 mm");
        read(State.BARE, 2, "692.5 mm");
        read(State.CLAMPED, 2, "689.9 mm");
        read(State.BONDED, 2, "687.5 mm");
        WidthAnswer left = answer(REAR);
        assertThat(left.stage()).isEqualTo(Stage.BONDED);
        assertThat(left.bonded().orElseThrow().offMm()).isEqualTo(-2.5, within(1e-9));
        assertThat(left.bonded().orElseThrow().within()).isFalse();
        WidthLesson lesson = teaches().get(0);
        assertThat(lesson.bondTookMm().getAsDouble()).isEqualTo(-2.4, within(1e-9));
        taken.clear();
        WidthAnswer right = answer(REAR, lesson);
        // To come out at 690 it must be 692.4 with the sheet clamped on: 692.5 + (692.4 - 689.9) / 0.8.
        assertThat(right.aimMm()).isEqualTo(692.4, within(1e-9));
        assertThat(right.startMm().getAsDouble()).isEqualTo(695.625, within(1e-9));
        assertThat(right.allowance().deviationMm().getAsDouble()).isEqualTo(0.3 * Math.sqrt(2), within(1e-12));
        read(State.BARE, 1, "695 mm");
        read(State.CLAMPED, 1, "691.6 mm");
        WidthAnswer tried = answer(REAR, lesson);
        assertThat(tried.startMm()).isEmpty();
        assertThat(tried.trial().orElseThrow().followFrom()).isEqualTo(TrialFitResult.From.GIVEN);
        assertThat(tried.trial().orElseThrow().bareMm()).isEqualTo(695 + 0.8 / 0.8, within(1e-9));
    }

    @Test
    void should_let_what_is_entered_stand_before_what_was_taught() {
        WidthLesson lesson = new WidthLesson(
                "rear",
                "Pane, left",
                692.5,
                689.9,
                java.util.OptionalDouble.of(0.8),
                java.util.OptionalDouble.of(-2.4),
                0.3);
        FrameWidth entered = new FrameWidth(
                "rear",
                "rear arch",
                REAR.wanted(),
                REAR.tolerance(),
                REAR.deviation(),
                Optional.of(Widths.mm("-1 mm")),
                List.of());
        WidthAnswer a = answer(entered, lesson);
        assertThat(a.aimMm()).isEqualTo(691, within(1e-9));
        assertThat(a.allowance().origin()).isEqualTo("entered in the definition");
    }

    @Test
    void should_average_repeats_and_keep_every_width_as_typed() {
        read(State.BARE, 1, "27 3/16 in");
        read(State.BARE, 1, "690.6 mm");
        WidthAnswer a = answer(REAR);
        assertThat(a.trials().get(0).bareMm().getAsDouble()).isEqualTo((27.1875 * 25.4 + 690.6) / 2, within(1e-9));
        assertThat(a.trials().get(0).readings())
                .extracting(WidthReading::typed)
                .containsExactly("27 3/16 in", "690.6 mm");
    }
}
