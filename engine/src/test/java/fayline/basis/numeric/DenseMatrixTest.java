package fayline.basis.numeric;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DenseMatrixTest {
    private static DenseMatrix random(long seed, int rows, int cols) {
        SplittableRandom r = new SplittableRandom(seed);
        double[][] a = new double[rows][cols];
        for (double[] row : a) {
            for (int j = 0; j < cols; j++) {
                row[j] = r.nextDouble() - 0.5;
            }
        }
        return DenseMatrix.of(a);
    }

    private static void same(DenseMatrix a, DenseMatrix b) {
        assertThat(a.rows()).isEqualTo(b.rows());
        assertThat(a.cols()).isEqualTo(b.cols());
        for (int i = 0; i < a.rows(); i++) {
            for (int j = 0; j < a.cols(); j++) {
                assertThat(a.get(i, j)).isCloseTo(b.get(i, j), within(1e-9));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void should_give_back_the_matrix_when_its_parts_are_multiplied(long seed) {
        DenseMatrix a = random(seed, 7, 4);
        DenseMatrix.Singular s = a.svd();
        double[] w = s.values().col(0);
        assertThat(w).isSortedAccordingTo((x, y) -> Double.compare(y, x));
        DenseMatrix u = s.u().part(new int[] {0, 1, 2, 3, 4, 5, 6}, new int[] {0, 1, 2, 3});
        same(u.times(DenseMatrix.diagonal(w)).times(s.v().transposed()), a);
        DenseMatrix p = a.pseudoInverse(1e-12);
        same(a.times(p).times(a), a);
        DenseMatrix square = a.transposed().times(a);
        same(square.times(square.inverse().orElseThrow()), DenseMatrix.identity(4));
        DenseMatrix l = square.cholesky().orElseThrow();
        same(l.times(l.transposed()), square);
        DenseMatrix.Eigen e = square.symmetricEigen();
        same(
                square.times(e.vectors()),
                e.vectors().times(DenseMatrix.diagonal(e.values().col(0))));
        assertThat(Math.sqrt(e.values().get(3, 0))).isCloseTo(w[0], within(1e-10));
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5})
    void should_keep_the_directions_of_no_singular_value_when_wide(long seed) {
        DenseMatrix a = random(seed, 2, 3);
        DenseMatrix v = a.svd().v();
        assertThat(v.cols()).isEqualTo(3);
        for (double x : a.times(v.col(2))) {
            assertThat(x).isCloseTo(0, within(1e-12));
        }
        same(a.times(a.pseudoInverse(1e-12)), DenseMatrix.identity(2));
    }

    @Test
    void should_say_so_when_there_is_no_answer() {
        DenseMatrix singular = DenseMatrix.of(new double[][] {{1, 2}, {2, 4}});
        assertThat(singular.inverse()).isEmpty();
        assertThat(singular.solve(new double[] {1, 1})).isEmpty();
        assertThat(singular.svd().rank(1e-9)).isEqualTo(1);
        assertThat(DenseMatrix.diagonal(1, -1).cholesky()).isEmpty();
        assertThatThrownBy(() -> random(1, 2, 3).inverse()).hasMessageContaining("square");
        assertThatThrownBy(() -> DenseMatrix.of(new double[][] {{1}, {1, 2}})).hasMessageContaining("row 1");
    }

    @Test
    void should_stay_as_it_is_when_what_was_given_or_taken_changes() {
        double[][] given = {{1, 2}, {3, 5}};
        DenseMatrix a = DenseMatrix.of(given);
        given[0][0] = 9;
        a.row(0)[0] = 9;
        a.toRows()[0][0] = 9;
        assertThat(a.get(0, 0)).isEqualTo(1);
        assertThat(a.solve(new double[] {3, 8}).orElseThrow()).containsExactly(new double[] {1, 1}, within(1e-12));
        assertThat(a.scaled(2).minus(a).plus(a).get(1, 1)).isEqualTo(10);
    }
}
