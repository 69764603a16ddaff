package fayline.flow.result.series;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Limits of readings over time, with a published example. */
class SeriesTest {
    private static final Instant FIRST = Instant.parse("2026-01-05T07:00:00Z");

    private static List<SeriesPoint> points(double... values) {
        List<SeriesPoint> all = new ArrayList<>();
        for (double v : values) {
            all.add(new SeriesPoint(
                    "n" + all.size(), "p", FIRST.plusSeconds(3600L * all.size()), v, String.valueOf(v), 0));
        }
        return all;
    }

    @Test
    void should_give_the_handbooks_limits_whatever_the_order_of_the_points() {
        // NIST/SEMATECH e-Handbook 6.3.2.2: flow rates of ten batches, from memory: mean 50.81, mean moving range
        // 1.8778,
        // limits 50.81 ± 3 × 1.8778 / 1.128 = 55.80 and 45.82; reckoned again by hand from the ten values.
        List<SeriesPoint> batches = points(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);
        Collections.shuffle(batches, new java.util.Random(4));
        Series s = Series.of(SeriesSort.LEAK, "", batches);
        assertThat(s.points().get(0).value()).isEqualTo(49.6);
        assertThat(s.chart().orElseThrow().centre()).isCloseTo(50.81, within(1e-9));
        assertThat(s.chart().orElseThrow().upper()).isCloseTo(55.8041, within(1e-4));
        assertThat(s.chart().orElseThrow().lower()).isCloseTo(45.8159, within(1e-4));
        assertThat(s.beyond()).isEmpty();
        assertThat(s.firm()).isFalse();
    }

    @Test
    void should_tell_no_limits_and_how_many_are_missing_when_there_are_too_few() {
        Series s = Series.of(SeriesSort.GAP_ERROR, "tape", points(0.1, 0.2, 9));
        assertThat(s.chart()).isEmpty();
        assertThat(s.missing()).isEqualTo(5);
        assertThat(s.beyond()).isEmpty();
        assertThat(Series.of(SeriesSort.GAP_ERROR, "", List.of()).missing()).isEqualTo(8);
    }

    @Test
    void should_have_no_lower_limit_where_no_value_can_be() {
        // Mean 0.5, mean moving range 1: 0.5 - 3 / 1.128 lies below nought, where no resin content and no loss of
        // vacuum is.
        double[] values = {0, 1, 0, 1, 0, 1, 0, 1};
        for (SeriesSort sort : List.of(SeriesSort.LEAK, SeriesSort.RESIN)) {
            Series s = Series.of(sort, "", points(values));
            assertThat(s.chart().orElseThrow().lower()).isNegative();
            assertThat(s.lower()).hasValue(0);
            assertThat(s.nothingTooLow()).isTrue();
            assertThat(s.beyond()).isEmpty();
        }
        Series mass = Series.of(SeriesSort.MASS_OVER_TARGET, "", points(values));
        assertThat(mass.lower()).as("a mass is not below nought").hasValue(-1);
        Series error = Series.of(SeriesSort.GAP_ERROR, "", points(values));
        assertThat(error.lower().orElseThrow())
                .isEqualTo(error.chart().orElseThrow().lower());
        assertThat(error.nothingTooLow()).isFalse();
        assertThat(Series.of(SeriesSort.LEAK, "", List.of()).lower()).isEmpty();
    }

    @Test
    void should_name_what_is_beyond_a_limit() {
        double[] values = new double[20];
        for (int i = 0; i < values.length; i++) {
            values[i] = 1 + 0.1 * (i % 2);
        }
        values[12] = 3;
        Series s = Series.of(SeriesSort.RESIN, "", points(values));
        assertThat(s.firm()).isTrue();
        assertThat(s.beyond()).extracting(SeriesPoint::name).containsExactly("n12");
    }
}
