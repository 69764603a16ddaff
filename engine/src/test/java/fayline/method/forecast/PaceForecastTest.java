package fayline.method.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.method.forecast.PaceForecast.Finished;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PaceForecastTest {
    /** 410 h booked on thirteen steps estimated at 20 h each, 260 h in all. */
    private static List<Finished> works() {
        double[] booked = {30, 25, 42, 33, 28, 36, 22, 40, 31, 27, 35, 29, 32};
        List<Finished> works = new ArrayList<>();
        for (double b : booked) {
            works.add(new Finished(20, b));
        }
        return works;
    }

    private static final List<Double> MONTHS = List.of(35.0, 48.0, 40.0, 39.0, 52.0, 30.0, 44.0, 41.0, 38.0, 43.0);

    private static PaceForecastResult of(List<Finished> works, List<Double> months, List<Double> changes) {
        return PaceForecastCalculator.calculate(new PaceForecast(1200, works, months, 70, changes, 1));
    }

    @Test
    void should_show_both_causes_apart_and_the_end_of_both_in_the_range() {
        // By hand: 410 / 260 = 1.577; 410 h in ten months = 41 h; 410 + 1.577 x 940 = 1892 h; 1892 / 41 = 46.2 months.
        PaceForecastResult r = of(works(), MONTHS, List.of());
        assertThat(r.rateFactor()).isCloseTo(1.58, within(0.005));
        assertThat(r.paceH()).isCloseTo(41, within(1e-9));
        assertThat(r.totalH()).isCloseTo(1890, within(5.0));
        assertThat(r.months()).isCloseTo(46, within(0.2));
        assertThat(r.monthsPlanned()).isCloseTo(1200.0 / 70, within(1e-9));
        assertThat(r.monthsIfPaceHeld()).isCloseTo(1892.3 / 70, within(0.01));
        assertThat(r.monthsIfEstimatesHeld()).isCloseTo(1200.0 / 41, within(1e-6));
        var spread = r.spread().orElseThrow();
        assertThat(spread.p10()).isLessThan(46);
        assertThat(spread.p90()).isGreaterThan(46);
        assertThat(spread.p80()).isGreaterThan(spread.p50()).isLessThan(spread.p90());
        assertThat(r.missing()).isEmpty();
    }

    @Test
    void should_give_no_spread_and_say_what_is_missing_when_history_is_too_short() {
        PaceForecastResult r = of(List.of(new Finished(20, 30)), List.of(41.0), List.of());
        assertThat(r.spread()).isEmpty();
        assertThat(r.missing()).hasSize(2).allSatisfy(m -> assertThat(m).contains("at least", "found 1"));
    }

    @Test
    void should_refuse_when_nothing_is_finished() {
        assertThatThrownBy(() -> of(List.of(), MONTHS, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("history says nothing yet");
    }

    @Test
    void should_follow_a_change_of_pace_that_somebody_entered() {
        // Half the pace from now on: what is left takes twice as long.
        PaceForecastResult half = of(works(), MONTHS, List.of(0.5));
        assertThat(half.months() - 10)
                .isCloseTo(2 * (of(works(), MONTHS, List.of()).months() - 10), within(1e-6));
        // Half in the first two months only: one month's work is lost.
        PaceForecastResult winter = of(works(), MONTHS, List.of(0.5, 0.5, 1.0));
        assertThat(winter.months()).isCloseTo(of(works(), MONTHS, List.of()).months() + 1, within(1e-6));
    }

    @Test
    void should_meet_the_standard_error_of_a_ratio_worked_by_hand() {
        // Works 10/12, 20/18, 30/36: factor 1.1; residuals 1, -4, 3; sqrt(3 x 26 / 2) / 60.
        PaceForecastResult r =
                of(List.of(new Finished(10, 12), new Finished(20, 18), new Finished(30, 36)), MONTHS, List.of());
        assertThat(r.rateFactor()).isCloseTo(1.1, within(1e-12));
        assertThat(r.rateDeviation().orElseThrow()).isCloseTo(Math.sqrt(39) / 60, within(1e-12));
    }

    @Test
    void should_widen_with_the_scatter_of_the_months() {
        List<Double> wild = List.of(0.0, 95.0, 20.0, 70.0, 41.0, 5.0, 60.0, 30.0, 49.0, 40.0);
        var calm = of(works(), MONTHS, List.of()).spread().orElseThrow();
        var rough = of(works(), wild, List.of()).spread().orElseThrow();
        assertThat(rough.p90() - rough.p10()).isGreaterThan(calm.p90() - calm.p10());
        assertThat(rough.p80Rates()).isCloseTo(calm.p80Rates(), within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void should_answer_alike_for_an_equal_seed_and_nearly_alike_for_another(long seed) {
        PaceForecast q = new PaceForecast(1200, works(), MONTHS, 70, List.of(), seed);
        var a = PaceForecastCalculator.calculate(q).spread().orElseThrow();
        assertThat(PaceForecastCalculator.calculate(q).spread().orElseThrow()).isEqualTo(a);
        var b = of(works(), MONTHS, List.of()).spread().orElseThrow();
        assertThat(a.p80()).isCloseTo(b.p80(), within(0.3));
    }

    @Test
    void should_not_depend_on_the_order_of_months() {
        List<Double> turned = new ArrayList<>(MONTHS);
        Collections.reverse(turned);
        assertThat(of(works(), turned, List.of()).months())
                .isEqualTo(of(works(), MONTHS, List.of()).months());
    }
}
