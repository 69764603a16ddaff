package fayline.method.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;

/** Charts, quantiles and trends against printed tables and the properties that define them. */
class ChartTest {
    private static final List<Integer> SIZES = List.of(2, 3, 4, 5, 6, 7, 11, 12);

    /** Table headed "AIAG SPC manual" on a tool page (secondary): three or four digits. */
    private static final Map<String, List<Double>> TABLE = Map.of(
            "d2", List.of(1.128, 1.693, 2.059, 2.326, 2.534, 2.704, 3.173, 3.258),
            "d3", List.of(0.853, 0.888, 0.88, 0.864, 0.848, 0.833, 0.787, 0.778),
            "c4", List.of(0.7979, 0.8862, 0.9213, 0.94, 0.9515, 0.9594, 0.9754, 0.9776),
            "A2", List.of(1.88, 1.023, 0.729, 0.577, 0.483, 0.419, 0.285, 0.266),
            "A3", List.of(2.659, 1.954, 1.628, 1.427, 1.287, 1.182, 0.927, 0.886),
            "D3", List.of(0.0, 0.0, 0.0, 0.0, 0.0, 0.076, 0.256, 0.284),
            "D4", List.of(3.267, 2.575, 2.282, 2.115, 2.004, 1.924, 1.744, 1.716),
            "B3", List.of(0.0, 0.0, 0.0, 0.0, 0.03, 0.118, 0.321, 0.354),
            "B4", List.of(3.267, 2.568, 2.266, 2.089, 1.97, 1.882, 1.679, 1.646));

    private static final Map<String, ToDoubleFunction<GroupFactors>> FACTORS = Map.of(
            "d2", GroupFactors::d2,
            "d3", GroupFactors::d3,
            "c4", GroupFactors::c4,
            "A2", GroupFactors::a2,
            "A3", GroupFactors::a3,
            "D3", GroupFactors::lowerRange,
            "D4", GroupFactors::upperRange,
            "B3", GroupFactors::lowerDeviation,
            "B4", GroupFactors::upperDeviation);

    /** NIST/SEMATECH e-Handbook, 6.3.2.2, figures as carried in public test data that cites the section. */
    private static final List<Double> SINGLE = List.of(49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1);

    @Test
    void should_give_the_printed_factors_by_group_size() {
        TABLE.forEach((name, printed) -> {
            for (int i = 0; i < SIZES.size(); i++) {
                double found = FACTORS.getOrDefault(name, g -> Double.NaN).applyAsDouble(GroupFactors.of(SIZES.get(i)));
                assertThat(found)
                        .as(name + " of " + SIZES.get(i))
                        .isCloseTo(printed.get(i), within("c4".equals(name) ? 8e-5 : 1.6e-3));
            }
        });
    }

    /** Exact for two: d2 = 2 / sqrt(pi), d3 = sqrt(2 - 4 / pi), c4 = sqrt(2 / pi); d2 of three is 3 / sqrt(pi). */
    @Test
    void should_give_the_exact_factors_of_two_and_three() {
        GroupFactors two = GroupFactors.of(2);
        assertThat(two.d2()).isCloseTo(2 / Math.sqrt(Math.PI), within(1e-12));
        assertThat(two.d3()).isCloseTo(Math.sqrt(2 - 4 / Math.PI), within(1e-7));
        assertThat(two.c4()).isCloseTo(Math.sqrt(2 / Math.PI), within(1e-12));
        assertThat(GroupFactors.of(3).d2()).isCloseTo(3 / Math.sqrt(Math.PI), within(1e-12));
        assertThatThrownBy(() -> GroupFactors.of(1)).hasMessageContaining("expected 2 to 100");
    }

    @Test
    void should_give_the_handbooks_limits_of_single_readings() {
        IndividualsChart chart = IndividualsChart.of(SINGLE);

        assertThat(chart.centre()).isCloseTo(50.81, within(0.005));
        assertThat(chart.meanRange()).isCloseTo(1.8778, within(6e-5));
        assertThat(chart.upper()).isCloseTo(55.8041, within(2e-4));
        assertThat(chart.lower()).isCloseTo(45.8159, within(2e-4));
        assertThat(chart.beyond()).isEmpty();
        assertThat(IndividualsChart.of(List.of(5.0, 5.1, 4.9, 5.0, 5.1, 4.9, 5.0, 7.0))
                        .beyond())
                .containsExactly(7);
        assertThatThrownBy(() -> IndividualsChart.of(List.of(1.0))).hasMessageContaining("at least 2");
    }

    /** NIST/SEMATECH e-Handbook, 6.3.2.4, as above; its lower limit is cut, not rounded. */
    @Test
    void should_give_the_handbooks_moving_averages() {
        List<Double> values = List.of(
                52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6,
                52.4, 53.6, 52.1);
        List<Double> printed = List.of(
                50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38,
                49.92, 50.73, 51.23, 51.94, 51.99);

        MovingAverageChart chart = MovingAverageChart.of(values, 0.3, 50, 2.0539, 3);

        for (int i = 0; i < printed.size(); i++) {
            assertThat(chart.averages().get(i)).isCloseTo(printed.get(i), within(0.0051));
        }
        assertThat(chart.upper()).isCloseTo(52.5884, within(2e-4));
        assertThat(chart.lower()).isCloseTo(47.4115, within(2e-4));
        assertThat(chart.beyond()).isEmpty();
        assertThatThrownBy(() -> MovingAverageChart.of(values, 0, 50, 1, 3)).hasMessageContaining("expected above 0");
        assertThatThrownBy(() -> MovingAverageChart.of(values, 0.3, 50, 0, 3)).hasMessageContaining("sigma 0.0 and");
        assertThatThrownBy(() -> MovingAverageChart.of(values, 0.3, 50, 1, -3)).hasMessageContaining("width -3.0");
    }

    /** NIST/SEMATECH e-Handbook, 7.2.6.2, 90th percentile of twelve resistivities. */
    @Test
    void should_give_the_handbooks_percentiles() {
        List<Double> values = List.of(
                95.1772, 95.1567, 95.1937, 95.1959, 95.1442, 95.061, 95.1591, 95.1195, 95.1065, 95.0925, 95.199,
                95.1682);

        assertThat(Quantile.SIX.of(values, 0.9)).isCloseTo(95.1981, within(6e-5));
        assertThat(Quantile.SEVEN.of(values, 0.9)).isCloseTo(95.1957, within(6e-5));
        assertThat(Quantile.EIGHT.of(values, 0.9)).isCloseTo(95.1972, within(6e-5));
        for (Quantile q : Quantile.values()) {
            assertThat(q.of(values, 0)).isEqualTo(95.061);
            assertThat(q.of(values, 1)).isEqualTo(95.199);
            assertThat(q.of(List.of(3.0, 1.0, 2.0), 0.5)).isEqualTo(2.0);
        }
        assertThatThrownBy(() -> Quantile.SIX.of(List.of(), 0.5)).hasMessageContaining("expected some");
    }

    /** NIST StRD, data set Longley: certified values, secondary. The causes grow together; a careless fit loses most digits. */
    @Test
    void should_give_the_certified_trend_of_Longley() {
        double[][] data = {
            {60323, 83.0, 234289, 2356, 1590, 107608, 1947},
            {61122, 88.5, 259426, 2325, 1456, 108632, 1948},
            {60171, 88.2, 258054, 3682, 1616, 109773, 1949},
            {61187, 89.5, 284599, 3351, 1650, 110929, 1950},
            {63221, 96.2, 328975, 2099, 3099, 112075, 1951},
            {63639, 98.1, 346999, 1932, 3594, 113270, 1952},
            {64989, 99.0, 365385, 1870, 3547, 115094, 1953},
            {63761, 100.0, 363112, 3578, 3350, 116219, 1954},
            {66019, 101.2, 397469, 2904, 3048, 117388, 1955},
            {67857, 104.6, 419180, 2822, 2857, 118734, 1956},
            {68169, 108.4, 442769, 2936, 2798, 120445, 1957},
            {66513, 110.8, 444546, 4681, 2637, 121950, 1958},
            {68655, 112.6, 482704, 3813, 2552, 123366, 1959},
            {69564, 114.2, 502601, 3931, 2514, 125368, 1960},
            {69331, 115.7, 518173, 4806, 2572, 127852, 1961},
            {70551, 116.9, 554894, 4007, 2827, 130081, 1962}
        };
        double[] values = new double[data.length];
        double[][] causes = new double[data.length][];
        for (int i = 0; i < data.length; i++) {
            values[i] = data[i][0];
            causes[i] = java.util.Arrays.copyOfRange(data[i], 1, data[i].length);
        }
        double[] certified = {
            -3482258.63459582,
            15.0618722713733,
            -0.035819179292591,
            -2.02022980381683,
            -1.03322686717359,
            -0.0511041056535807,
            1829.15146461355
        };
        double[] errors = {
            890420.383607373,
            84.9149257747669,
            0.0334910077722432,
            0.488399681651699,
            0.214274163161675,
            0.22607320006937,
            455.478499142212
        };

        Trend trend = Trend.of(values, causes).orElseThrow();

        for (int j = 0; j < certified.length; j++) {
            assertThat(trend.coefficients().get(j, 0)).isCloseTo(certified[j], Percentage.withPercentage(1e-4));
            assertThat(trend.standardErrors().get(j, 0)).isCloseTo(errors[j], Percentage.withPercentage(1e-4));
        }
        assertThat(trend.residualDeviation()).isCloseTo(304.854073561965, Percentage.withPercentage(1e-4));
        assertThat(trend.explained()).isCloseTo(0.995479004577296, within(1e-9));
    }

    @Test
    void should_find_a_known_trend_again_and_refuse_causes_that_cannot_be_told_apart() {
        Random seeded = new Random(7);
        int n = 40;
        double[][] causes = new double[n][2];
        double[] values = new double[n];
        for (int i = 0; i < n; i++) {
            causes[i] = new double[] {seeded.nextDouble() * 1000, seeded.nextDouble()};
            values[i] = 3 - 0.02 * causes[i][0] + 5 * causes[i][1];
        }

        Trend trend = Trend.of(values, causes).orElseThrow();

        assertThat(trend.coefficients().get(0, 0)).isCloseTo(3, within(1e-10));
        assertThat(trend.coefficients().get(1, 0)).isCloseTo(-0.02, within(1e-12));
        assertThat(trend.coefficients().get(2, 0)).isCloseTo(5, within(1e-10));
        assertThat(trend.explained()).isCloseTo(1, within(1e-12));
        for (double[] c : causes) {
            c[1] = 2 * c[0];
        }
        assertThat(Trend.of(values, causes)).isEmpty();
        for (double[] c : causes) {
            c[1] = 4;
        }
        assertThat(Trend.of(values, causes)).isEmpty();
        assertThat(Trend.of(new double[] {1, 2, 3}, new double[][] {{1, 2}, {2, 1}, {3, 3}}))
                .isEmpty();
    }

    /** Seeded: the mean moving range over 1.128 estimates the spread of independent readings. */
    @Test
    void should_estimate_the_spread_of_independent_readings() {
        Random seeded = new Random(11);
        List<Double> values = new ArrayList<>();
        IntStream.range(0, 4000).forEach(i -> values.add(10 + 0.5 * seeded.nextGaussian()));

        assertThat(IndividualsChart.of(values).sigma()).isCloseTo(0.5, within(0.02));
    }
}
