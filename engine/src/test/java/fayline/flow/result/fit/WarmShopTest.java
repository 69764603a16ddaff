package fayline.flow.result.fit;

import static fayline.flow.result.fit.WarmPane.AFT_MM_PER_K;
import static fayline.flow.result.fit.WarmPane.NEAR;
import static fayline.flow.result.fit.WarmPane.answer;
import static fayline.flow.result.fit.WarmPane.at;
import static fayline.flow.result.fit.WarmPane.fit;
import static fayline.flow.result.fit.WarmPane.gap;
import static fayline.flow.result.fit.WarmPane.heat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.flow.reading.FitReading;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.scheme.SchemeOutcome;
import fayline.method.fitup.space.PartMove;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/**
 * A shop that is warmer than the temperature at which the gaps are wanted. Hand check: acrylic of 900 mm in carbon, ten kelvin,
 * 10 * (72e-6 * 450 - 2e-6 * 453) = 0.315 mm at each end, the 0.3 mm that is three times a gauge's error.
 */
class WarmShopTest {
    private static final OptionalDouble COOL = OptionalDouble.of(20);
    private static final OptionalDouble WARM = OptionalDouble.of(30);
    private static final OptionalDouble FREE = OptionalDouble.empty();

    private static List<FitReading> read(String state, OptionalDouble degC, Map<String, Double> gaps) {
        List<FitReading> all = new ArrayList<>();
        for (String id : List.of("A", "F", "U", "L", "W")) {
            if (gaps.containsKey(id)) {
                all.add(gap(all.size() + 1, id, state, gaps.get(id), degC));
            }
        }
        return all;
    }

    private static FitRow row(FitAdvice a, String id) {
        return a.rows().stream()
                .filter(r -> r.station().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static PartMove.Found move(FitResult r) {
        return r.advice().orElseThrow().best().found().orElseThrow();
    }

    @Test
    void should_seek_the_move_at_the_reference_when_the_shop_is_ten_kelvin_warmer() {
        // 2.45 at both ends is too tight as read; at 20 degC the ends stand 0.315 wider and fit as they lie
        FitResult r = answer(
                fit(Optional.of(heat(FREE))), read("dry", WARM, Map.of("A", 2.45, "F", 2.45, "U", 2.86, "L", 2.86)));
        FitAdvice a = r.advice().orElseThrow();
        assertThat(at(r, "A").gapMm()).as("kept as read").isEqualTo(2.45);
        assertThat(row(a, "A").gapMm()).isCloseTo(2.45 + 0.315, within(0.001));
        assertThat(row(a, "A").lowerMm()).isEqualTo(2.5);
        assertThat(a.best().outside()).isEmpty();
        assertThat(move(r).gapsMm().get(0)).isCloseTo(2.765, within(0.001));
        // what the feeler shows now after the move, and its limits there
        assertThat(a.shop().seenMm(0, move(r).gapsMm().get(0))).isCloseTo(2.45, within(1e-6));
        assertThat(a.shop().seenMm(0, row(a, "A").lowerMm())).isCloseTo(2.5 - 0.315, within(0.001));
        assertThat(r.findings())
                .extracting(Finding::sentence)
                .contains(
                        "Read at 30 degC, wanted at 20 degC: that alone makes up to -0.31 mm, at A. Every 10 K warmer make up"
                                + " to -0.31 mm, at A. The move is sought at 20 degC.");
    }

    @Test
    void should_give_the_same_move_and_shims_whatever_the_temperature_of_the_shop() {
        Map<String, Double> cool = Map.of("A", 3.4, "F", 2.6, "U", 3.1, "L", 2.9);
        FitResult one = answer(fit(Optional.of(heat(FREE))), read("dry", COOL, cool));
        Map<String, Double> warm = Map.of(
                "A", 3.4 - 10 * (72e-6 * 450 - 2e-6 * 453.4),
                "F", 2.6 - 10 * (72e-6 * 450 - 2e-6 * 452.6),
                "U", 3.1 - 10 * (72e-6 * 200 - 2e-6 * 203.1),
                "L", 2.9 - 10 * (72e-6 * 200 - 2e-6 * 202.9));
        FitResult other = answer(fit(Optional.of(heat(FREE))), read("dry", WARM, warm));
        assertThat(move(other).move().inPlane().dxMm())
                .isCloseTo(move(one).move().inPlane().dxMm(), within(1e-4));
        assertThat(move(other).move().inPlane().dyMm())
                .isCloseTo(move(one).move().inPlane().dyMm(), within(1e-4));
        assertThat(one.advice().orElseThrow().shop().matters()).isFalse();
    }

    @Test
    void should_not_learn_a_warm_afternoon_as_what_a_state_did() {
        // latched on a warm afternoon: the part went 0.2 aft, and every end closed by 0.315 besides
        double grown = 10 * AFT_MM_PER_K;
        double up = 10 * WarmPane.UPPER_MM_PER_K;
        List<FitReading> all =
                new ArrayList<>(read("dry", COOL, Map.of("A", 3.0, "F", 3.0, "U", 3.0, "L", 3.0, "W", 3.0)));
        all.addAll(read(
                "bonded",
                WARM,
                Map.of("A", 2.8 - grown, "F", 3.2 - grown, "U", 3.0 - up, "L", 3.0 - up, "W", 2.8 - grown)));
        StateChange c = answer(fit(Optional.of(heat(FREE))), all)
                .now()
                .orElseThrow()
                .since()
                .orElseThrow();
        assertThat(c.gaps())
                .extracting(StateChange.Change::changeMm)
                .allSatisfy(g -> assertThat(Math.abs(g)).isLessThan(0.201));
        assertThat(c.gaps().get(0).changeMm()).isCloseTo(-0.2, within(NEAR));
        assertThat(c.gaps().get(3).changeMm()).isCloseTo(0, within(NEAR));
        assertThat(c.move().orElseThrow().inPlane().dxMm()).isCloseTo(0.2, within(1e-6));
        assertThat(c.restMm()).as("nothing is left for warmth").isLessThan(1e-6);
        assertThat(c.warmth().toString())
                .contains("20 degC")
                .contains("30 degC")
                .contains("taken out");
    }

    @Test
    void should_say_that_warmth_may_be_among_the_changes_when_nobody_said_how_they_grow() {
        List<FitReading> all = new ArrayList<>(read("dry", COOL, Map.of("A", 3.0, "F", 3.0, "U", 3.0)));
        all.addAll(read("bonded", WARM, Map.of("A", 2.7, "F", 2.7, "U", 2.9)));
        FitResult r = answer(fit(Optional.empty()), all);
        StateChange c = r.now().orElseThrow().since().orElseThrow();
        assertThat(c.gaps().get(0).changeMm()).isCloseTo(-0.3, within(NEAR));
        assertThat(c.warmth().toString()).contains("is not given").contains("warmth may be among these changes");
        assertThat(row(r.advice().orElseThrow(), "A").gapMm()).isEqualTo(2.7);
        assertThat(r.advice().orElseThrow().shop().soughtDegC()).isEmpty();
        assertThat(r.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s)
                        .contains("How part and surround grow is not given")
                        .contains("as they were read at 30 degC")
                        .contains("at which temperature the gaps are wanted"));
    }

    @Test
    void should_shift_nothing_when_the_part_will_be_bonded_all_round_and_tell_its_strain_instead() {
        FitResult r = answer(
                fit(Optional.of(heat(OptionalDouble.of(3)))),
                read("dry", WARM, Map.of("A", 3.0, "F", 3.0, "U", 3.0, "L", 3.0)));
        assertThat(row(r.advice().orElseThrow(), "A").gapMm()).isEqualTo(3.0);
        assertThat(r.advice().orElseThrow().shop().matters()).isFalse();
        assertThat(r.heat()).isEmpty();
        // (72 - 2)e-6 * 450 mm * 60 K / 3 mm, from 30 down to -30
        assertThat(r.bonded().orElseThrow().highestStrain()).isCloseTo(70e-6 * 450 * 60 / 3, within(NEAR));
        assertThat(r.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s)
                        .contains("keeps the gap at which its adhesive sets")
                        .contains("30 degC"));
    }

    @Test
    void should_count_thermometer_and_expansions_as_one_cause_for_all_gaps_and_say_what_was_taken() {
        FitResult r = answer(
                WarmPane.held(Optional.of(heat(FREE))),
                read("dry", WARM, Map.of("A", 2.685, "F", 2.685, "U", 2.86, "L", 2.86)));
        SchemeOutcome o =
                r.advice().orElseThrow().schemes().orElseThrow().schemes().get(0);
        // two ends grow together: their covariance is that of 1 K and of a tenth of 0.315 mm, besides what the spacers
        // bring
        SchemeOutcome cold = answer(
                        WarmPane.held(Optional.empty()),
                        read("dry", WARM, Map.of("A", 2.685, "F", 2.685, "U", 2.86, "L", 2.86)))
                .advice()
                .orElseThrow()
                .schemes()
                .orElseThrow()
                .schemes()
                .get(0);
        double more = o.spread().orElseThrow().covarianceMm2(0, 1)
                - cold.spread().orElseThrow().covarianceMm2(0, 1);
        assertThat(more).isCloseTo(AFT_MM_PER_K * AFT_MM_PER_K * 2, within(1e-6));
        assertThat(r.assumed())
                .extracting(Phrase::toString)
                .anySatisfy(s ->
                        assertThat(s).contains("thermometer").contains("1 K").contains("10 %"));
    }

    @Test
    void should_make_a_chance_better_when_a_station_is_read_again_but_never_better_than_what_readings_share() {
        double before = 1;
        for (int n : List.of(1, 4, 16)) {
            List<FitReading> all = new ArrayList<>();
            for (int k = 0; k < n; k++) {
                for (String id : List.of("A", "F", "U", "L")) {
                    all.add(gap(all.size() + 1, id, "dry", 3, COOL));
                }
            }
            SchemeOutcome o = answer(WarmPane.held(Optional.empty()), all)
                    .advice()
                    .orElseThrow()
                    .schemes()
                    .orElseThrow()
                    .schemes()
                    .get(0);
            double reading = o.spread().orElseThrow().gaps().get(0).independentMm();
            assertThat(reading).isCloseTo(0.06 / Math.sqrt(n), within(NEAR));
            double whole = o.spread().orElseThrow().deviationMm(0);
            assertThat(whole).isLessThan(before).isGreaterThan(0.05);
            before = whole;
        }
    }
}
