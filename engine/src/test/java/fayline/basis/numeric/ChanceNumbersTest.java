package fayline.basis.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.hipparchus.special.Erf;
import org.junit.jupiter.api.Test;

/** Distributions, streams and even points. */
class ChanceNumbersTest {
    @Test
    void should_agree_with_the_error_function_when_normal_probability_is_asked() {
        RandomStream random = new RandomStream(11, 0);
        for (int k = 0; k < 20_000; k++) {
            double z = 20 * random.nextUnit() - 10;
            double wanted = Erf.erfc(-z / Math.sqrt(2)) / 2;
            assertEquals(wanted, StandardNormal.below(z), 4e-16 + 1e-12 * wanted, "at " + z);
        }
        assertEquals(0, StandardNormal.below(Double.NEGATIVE_INFINITY));
        assertEquals(1, StandardNormal.below(Double.POSITIVE_INFINITY));
    }

    @Test
    void should_keep_digits_when_an_interval_lies_far_out() {
        // Tables of the normal distribution: 2.866516e-7 above 5, 9.865876e-10 above 6.
        assertEquals(2.866516e-7 - 9.865876e-10, StandardNormal.between(5, 6), 1e-13);
        assertEquals(StandardNormal.between(-6, -5), StandardNormal.between(5, 6), 1e-20);
        assertEquals(1.959963984540054, StandardNormal.quantile(0.975), 1e-13);
        assertEquals(-3.090232306167813, StandardNormal.quantile(0.001), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> StandardNormal.quantile(1));
    }

    @Test
    void should_match_printed_tables_when_chi_square_is_asked() {
        // Printed percentage points: 3.841 (1 degree) and 18.307 (10 degrees) leave 5 %, 2 degrees are exp(-x/2).
        assertEquals(0.05, ChiSquare.above(3.841459, 1), 1e-7);
        assertEquals(0.05, ChiSquare.above(18.307038, 10), 1e-7);
        assertEquals(Math.exp(-2.5), ChiSquare.above(5, 2), 1e-14);
        assertThrows(IllegalArgumentException.class, () -> ChiSquare.above(-1, 2));
    }

    @Test
    void should_draw_the_same_when_seed_and_number_are_the_same() {
        RandomStream one = new RandomStream(5, 3);
        RandomStream same = new RandomStream(5, 3);
        RandomStream other = new RandomStream(5, 4);
        for (int k = 0; k < 100; k++) {
            long bits = one.nextBits();
            assertEquals(bits, same.nextBits());
            assertNotEquals(bits, other.nextBits());
        }
    }

    @Test
    void should_have_the_moments_of_a_normal_when_normals_are_drawn() {
        RandomStream random = new RandomStream(1, 1);
        int n = 200_000;
        double sum = 0;
        double squares = 0;
        double fourth = 0;
        for (int k = 0; k < n; k++) {
            double z = random.nextNormal();
            sum += z;
            squares += z * z;
            fourth += z * z * z * z;
        }
        assertEquals(0, sum / n, 0.01);
        assertEquals(1, squares / n, 0.015);
        assertEquals(3, fourth / n, 0.1);
    }

    @Test
    void should_average_better_than_random_when_points_are_even() {
        int n = 4096;
        EvenPoints.Shift points = EvenPoints.of(5, n).shift(7, 0);
        double[] x = new double[5];
        double sum = 0;
        for (int k = 0; k < n; k++) {
            points.point(k, x);
            double product = 1;
            for (double v : x) {
                assertTrue(v > 0 && v < 1);
                product *= 2 * v;
            }
            sum += product;
        }
        // The average is 1; random points would be off by about 0.03.
        assertEquals(1, sum / n, 0.003);
    }

    @Test
    void should_give_the_covariance_back_when_its_factor_is_squared() {
        DenseMatrix common = DenseMatrix.of(new double[][] {{4, 4, 0}, {4, 4, 0}, {0, 0, 9}});
        DenseMatrix f = SemidefiniteFactor.of(common);
        assertEquals(2, f.cols());
        DenseMatrix back = f.times(f.transposed());
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(common.row(i), back.row(i), 1e-12);
        }
        assertEquals(0, SemidefiniteFactor.of(DenseMatrix.zero(2, 2)).cols());
    }

    @Test
    void should_refuse_a_matrix_when_it_is_no_covariance() {
        assertThrows(
                IllegalArgumentException.class,
                () -> SemidefiniteFactor.of(DenseMatrix.of(new double[][] {{1, 2}, {2, 1}})));
        assertThrows(
                IllegalArgumentException.class,
                () -> SemidefiniteFactor.of(DenseMatrix.of(new double[][] {{1, 0.5}, {0.4, 1}})));
    }
}
