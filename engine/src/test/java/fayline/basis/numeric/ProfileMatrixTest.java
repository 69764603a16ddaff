package fayline.basis.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the dense matrices, and chains of springs whose free motions are known. */
class ProfileMatrixTest {
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void should_solve_as_a_dense_matrix_when_rows_are_gappy(long seed) {
        Random random = new Random(seed);
        int n = 12;
        double[][] dense = new double[n][n];
        ProfileMatrix.Builder builder = ProfileMatrix.builder(n);
        for (int spring = 0; spring < 40; spring++) {
            int a = random.nextInt(n);
            int b = random.nextInt(n);
            double k = 0.5 + random.nextDouble();
            builder.add(a, a, k);
            dense[a][a] += k;
            if (a != b) {
                builder.add(b, b, k).add(a, b, -k / 2);
                dense[b][b] += k;
                dense[a][b] -= k / 2;
                dense[b][a] -= k / 2;
            }
        }
        for (int i = 0; i < n; i++) {
            builder.add(i, i, 0.1);
            dense[i][i] += 0.1;
        }
        ProfileMatrix m = builder.build();
        double[] right = random.doubles(n, -1, 1).toArray();
        assertArrayEquals(DenseMatrix.of(dense).times(right), m.times(right), 1e-12);
        ProfileFactor factor = m.factor(new BitSet());
        assertTrue(factor.isRegular());
        assertArrayEquals(DenseMatrix.of(dense).solve(right).orElseThrow(), factor.solve(right), 1e-10);
        assertEquals(dense[3][7], m.get(7, 3), 1e-15);
    }

    @Test
    void should_leave_held_unknowns_at_zero_and_solve_the_others_when_some_are_held() {
        ProfileMatrix chain = chain(5);
        BitSet held = new BitSet();
        held.set(0);
        held.set(4);
        double[] x = chain.factor(held).solve(new double[] {9, 0, 1, 0, 9});
        assertArrayEquals(new double[] {0, 0.5, 1, 0.5, 0}, x, 1e-14);
    }

    @Test
    void should_show_what_moves_freely_when_nothing_holds_a_chain() {
        ProfileFactor factor = chain(200).factor(new BitSet());
        assertFalse(factor.isRegular());
        assertEquals(1, factor.freeMotions().size());
        for (double x : factor.freeMotions().get(0)) {
            assertEquals(1, x, 1e-9);
        }
    }

    @Test
    void should_refuse_when_a_place_or_a_column_does_not_fit() {
        assertThrows(
                IllegalArgumentException.class, () -> ProfileMatrix.builder(2).add(2, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> chain(3).times(new double[2]));
        ProfileFactor factor = chain(3).factor(new BitSet());
        assertThrows(IllegalArgumentException.class, () -> factor.solve(new double[4]));
    }

    private static ProfileMatrix chain(int n) {
        ProfileMatrix.Builder builder = ProfileMatrix.builder(n);
        for (int i = 0; i + 1 < n; i++) {
            builder.add(i, i, 1).add(i + 1, i + 1, 1).add(i, i + 1, -1);
        }
        return builder.build();
    }
}
