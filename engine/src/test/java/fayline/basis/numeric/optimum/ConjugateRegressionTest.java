package fayline.basis.numeric.optimum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.numeric.StudentT;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class ConjugateRegressionTest {
    // NIST Statistical Reference Datasets, linear regression, "Norris": data and certified values as published.
    private static final double[][] NORRIS = {
        {0.2, 0.1}, {337.4, 338.8}, {118.2, 118.1}, {884.6, 888.0}, {10.1, 9.2}, {226.5, 228.1}, {666.3, 668.5},
        {996.3, 998.5}, {448.6, 449.1}, {777.0, 778.9}, {558.2, 559.2}, {0.4, 0.3}, {0.6, 0.1}, {775.5, 778.1},
        {666.9, 668.8}, {338.0, 339.3}, {447.5, 448.9}, {11.6, 10.8}, {556.0, 557.7}, {228.1, 228.3}, {995.8, 998.0},
        {887.6, 888.8}, {120.2, 119.6}, {0.3, 0.3}, {0.3, 0.6}, {556.8, 557.6}, {339.1, 339.3}, {887.2, 888.0},
        {999.0, 998.5}, {779.0, 778.9}, {11.1, 10.2}, {118.3, 117.6}, {229.2, 228.9}, {669.1, 668.4}, {448.9, 449.2},
        {0.5, 0.2}
    };

    private static List<double[]> rows() {
        List<double[]> rows = new ArrayList<>();
        for (double[] p : NORRIS) {
            rows.add(new double[] {1, p[0]});
        }
        return rows;
    }

    private static double[] values() {
        double[] y = new double[NORRIS.length];
        for (int i = 0; i < y.length; i++) {
            y[i] = NORRIS[i][1];
        }
        return y;
    }

    @Test
    void should_meet_the_certified_line_and_residual_when_nothing_is_known_beforehand() {
        // With a flat prior the posterior is least squares; weight -2 takes the two coefficients off the degrees of
        // freedom.
        ConjugateRegression fit = ConjugateRegression.of(rows(), values(), new double[] {0, 0}, 1, -2);
        assertThat(fit.mean().get(0)).isCloseTo(-0.262323073774029, within(1e-9));
        assertThat(fit.mean().get(1)).isCloseTo(1.00211681802045, within(1e-12));
        assertThat(Math.sqrt(fit.variance())).isCloseTo(0.884796396144373, within(1e-7));
        assertThat(fit.deviation(new double[] {1, 0})).isCloseTo(0.232818234301152, within(1e-7));
        assertThat(fit.deviation(new double[] {0, 1})).isCloseTo(0.429796848199937e-03, within(1e-9));
        assertThat(fit.degreesOfFreedom()).isEqualTo(34);
    }

    @Test
    void should_draw_a_mean_towards_the_prior_by_the_weights_when_one_value_is_learned() {
        // Four values of mean 3 against a prior that counts as two values of zero: 4 x 3 / 6.
        List<double[]> rows = List.of(new double[] {1}, new double[] {1}, new double[] {1}, new double[] {1});
        ConjugateRegression fit = ConjugateRegression.of(rows, new double[] {2, 4, 3, 3}, new double[] {2}, 0.5, 3);
        assertThat(fit.mean().get(0)).isCloseTo(2, within(1e-12));
        // (3 x 0.5 + 38 - 2 x 12) / (3 + 4)
        assertThat(fit.variance()).isCloseTo(15.5 / 7, within(1e-12));
        assertThat(fit.deviation(new double[] {1})).isCloseTo(Math.sqrt(15.5 / 7 / 6), within(1e-12));
    }

    @Test
    void should_leave_the_prior_alone_when_nothing_was_seen() {
        ConjugateRegression fit = ConjugateRegression.of(List.of(), new double[0], new double[] {4, 1}, 0.09, 5);
        assertThat(fit.mean()).containsExactly(0.0, 0.0);
        assertThat(fit.variance()).isCloseTo(0.09, within(1e-15));
        assertThat(fit.deviation(new double[] {1, 0})).isCloseTo(0.15, within(1e-12));
    }

    @Test
    void should_refuse_when_rows_and_prior_leave_something_open() {
        List<double[]> rows = List.of(new double[] {1, 2}, new double[] {2, 4});
        assertThatThrownBy(() -> ConjugateRegression.of(rows, new double[] {1, 2}, new double[] {0, 0}, 1, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("left open");
    }

    @Test
    void should_meet_the_table_of_student_when_a_quantile_is_asked() {
        // Two-sided 95 % points as printed in any table of Student's t (recalled): 2.776 at 4, 2.228 at 10, 2.042 at
        // 30.
        assertThat(StudentT.quantile(0.975, 4)).isCloseTo(2.776, within(5e-4));
        assertThat(StudentT.quantile(0.975, 10)).isCloseTo(2.228, within(5e-4));
        assertThat(StudentT.quantile(0.975, 30)).isCloseTo(2.042, within(5e-4));
        assertThat(StudentT.below(StudentT.quantile(0.2, 7), 7)).isCloseTo(0.2, within(1e-9));
    }
}
