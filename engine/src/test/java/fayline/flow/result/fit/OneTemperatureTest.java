package fayline.flow.result.fit;

import static fayline.flow.result.fit.WarmPane.AFT_MM_PER_K;
import static fayline.flow.result.fit.WarmPane.NEAR;
import static fayline.flow.result.fit.WarmPane.UPPER_MM_PER_K;
import static fayline.flow.result.fit.WarmPane.answer;
import static fayline.flow.result.fit.WarmPane.at;
import static fayline.flow.result.fit.WarmPane.fit;
import static fayline.flow.result.fit.WarmPane.gap;
import static fayline.flow.result.fit.WarmPane.heat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.flow.project.fit.Fit;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.FitRow;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Gaps of one state read at several temperatures, on the pane of {@link WarmPane}. */
class OneTemperatureTest {
    /** Aft and upper read at noon, forward and lower in the evening. */
    private static List<FitReading> noonAndEvening(String state) {
        OptionalDouble noon = OptionalDouble.of(30);
        OptionalDouble evening = OptionalDouble.of(20);
        return List.of(
                gap(1, "A", state, 3, noon),
                gap(2, "U", state, 3, noon),
                gap(3, "F", state, 3, evening),
                gap(4, "L", state, 3, evening));
    }

    @Test
    void should_bring_gaps_to_the_last_temperature_when_expansions_are_known_and_move_by_them() {
        FitResult r = answer(fit(Optional.of(heat(OptionalDouble.empty()))), noonAndEvening("dry"));
        assertThat(r.now().orElseThrow().temperatureDegC()).hasValue(20);
        // ten kelvin cooler the aft gap is 10 * 0.031494 wider
        assertThat(at(r, "A").gapMm()).isCloseTo(3 + 10 * AFT_MM_PER_K, within(NEAR));
        assertThat(at(r, "U").gapMm()).isCloseTo(3 + 10 * UPPER_MM_PER_K, within(NEAR));
        assertThat(at(r, "F").gapMm()).isEqualTo(3);
        assertThat(at(r, "F").deviationMm()).isCloseTo(0.06, within(NEAR));
        // sqrt(0.06^2 + (0.031494 sqrt 2)^2 + (0.1 * 0.31494)^2)
        double doubt = Math.sqrt(0.06 * 0.06 + 2 * AFT_MM_PER_K * AFT_MM_PER_K + AFT_MM_PER_K * AFT_MM_PER_K);
        assertThat(at(r, "A").deviationMm()).isCloseTo(doubt, within(NEAR));
        // the aft gap is wider by 0.315 than the forward one, so the part goes half of that aft, but for a slight turn
        assertThat(r.advice()
                        .orElseThrow()
                        .best()
                        .found()
                        .orElseThrow()
                        .move()
                        .inPlane()
                        .dxMm())
                .isCloseTo(5 * AFT_MM_PER_K, within(1e-3));
        assertThat(r.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s)
                        .contains("30 degC")
                        .contains("brought to 20 degC")
                        .contains("0.31 mm")
                        .contains("station A"));
        assertThat(r.advice().orElseThrow().rows()).extracting(FitRow::gapMm).contains(3 + 10 * AFT_MM_PER_K);
    }

    @Test
    void should_average_repeats_without_an_alarm_when_only_the_temperature_set_them_apart() {
        double warm = 3 - 10 * AFT_MM_PER_K;
        FitResult r = answer(
                fit(Optional.of(heat(OptionalDouble.empty()))),
                List.of(gap(1, "A", "dry", warm, OptionalDouble.of(30)), gap(2, "A", "dry", 3, OptionalDouble.of(20))));
        // the surround's share goes with the gap: 2e-6 * (3 - warm) * 10 K
        assertThat(at(r, "A").gapMm()).isCloseTo(3, within(1e-5));
        assertThat(at(r, "A").findings()).isEmpty();
    }

    @Test
    void should_leave_gaps_as_read_and_say_so_when_expansions_are_not_known_or_the_part_is_bonded_all_round() {
        FitResult unknown = answer(fit(Optional.empty()), noonAndEvening("dry"));
        assertThat(at(unknown, "A").gapMm()).isEqualTo(3);
        assertThat(unknown.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s).contains("how part and surround grow is not said"));
        FitResult bonded = answer(fit(Optional.of(heat(OptionalDouble.of(3)))), noonAndEvening("bonded"));
        assertThat(at(bonded, "A").gapMm()).isEqualTo(3);
        assertThat(bonded.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s).contains("bonded all round"));
    }

    @Test
    void should_say_nothing_when_all_is_read_at_one_temperature_or_none_was_noted() {
        Fit fit = fit(Optional.of(heat(OptionalDouble.empty())));
        for (OptionalDouble t : List.of(OptionalDouble.of(25), OptionalDouble.empty())) {
            FitResult r = answer(fit, List.of(gap(1, "A", "dry", 3.2, t), gap(2, "F", "dry", 2.9, t)));
            assertThat(at(r, "A").gapMm()).isEqualTo(3.2);
            assertThat(r.now().orElseThrow().findings()).isEmpty();
        }
    }
}
