package fayline.basis.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** By hand, and by weak duality on random programs. */
class LinearProgramTest {
    private static final double INF = Double.POSITIVE_INFINITY;

    @Test
    void should_find_the_corner_when_it_can_be_drawn() {
        // 3x + 2y at most under x + y <= 4, x + 3y <= 6, 0 <= x <= 3: corner (3, 1), by hand.
        LinearProgram p = LinearProgram.of(2)
                .bound(0, 0, 3)
                .bound(1, 0, INF)
                .row(new double[] {1, 1}, -INF, 4)
                .row(new double[] {1, 3}, -INF, 6)
                .build();
        LinearProgram.Outcome o = p.maximise(3, 2);
        assertEquals(11, o.value(), 1e-12);
        assertEquals(3, o.at(0), 1e-12);
        assertEquals(1, o.at(1), 1e-12);
    }

    @Test
    void should_go_below_zero_when_an_unknown_is_free_or_bounded_above_only() {
        LinearProgram p = LinearProgram.of(2)
                .bound(1, -INF, -2)
                .row(new double[] {1, -1}, -3, INF)
                .build();
        LinearProgram.Outcome o = p.minimise(1, -2);
        assertEquals(LinearProgram.Status.OPTIMAL, o.status());
        assertEquals(-5, o.at(0), 1e-12);
        assertEquals(-2, o.at(1), 1e-12);
        assertEquals(-1, o.value(), 1e-12);
    }

    @Test
    void should_hold_an_equation_when_both_limits_are_one() {
        LinearProgram p = LinearProgram.of(3)
                .bound(0, 0, 10)
                .bound(1, 0, 10)
                .bound(2, 0, 10)
                .row(new double[] {1, 1, 1}, 12, 12)
                .build();
        assertEquals(1 * 10 + 2 * 2, p.minimise(1, 2, 3).value(), 1e-12);
    }

    @Test
    void should_say_so_when_nothing_holds_or_nothing_ends() {
        LinearProgram none =
                LinearProgram.of(1).bound(0, 0, 1).row(new double[] {1}, 2, INF).build();
        assertEquals(LinearProgram.Status.INFEASIBLE, none.minimise(1).status());
        assertThrows(IllegalArgumentException.class, () -> none.minimise(1).at(0));
        LinearProgram crossed = LinearProgram.of(1).row(new double[] {1}, 2, 1).build();
        assertEquals(LinearProgram.Status.INFEASIBLE, crossed.minimise(1).status());
        LinearProgram endless =
                LinearProgram.of(2).row(new double[] {1, 1}, 0, INF).build();
        assertEquals(LinearProgram.Status.UNBOUNDED, endless.minimise(-1, -1).status());
        LinearProgram bare = LinearProgram.of(2).build();
        assertEquals(LinearProgram.Status.UNBOUNDED, bare.minimise(1, 0).status());
        assertEquals(0, bare.minimise(0, 0).value(), 0);
    }

    @Test
    void should_refuse_when_the_caller_is_wrong() {
        assertThrows(IllegalArgumentException.class, () -> LinearProgram.of(0));
        assertThrows(IllegalArgumentException.class, () -> LinearProgram.of(2).row(new double[] {1}, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> LinearProgram.of(1).row(new double[] {Double.NaN}, 0, 1));
        assertThrows(IllegalArgumentException.class, () -> LinearProgram.of(1).bound(0, Double.NaN, 1));
        assertThrows(
                IllegalArgumentException.class,
                () -> LinearProgram.of(1).build().minimise(1, 2));
    }

    @Test
    void should_end_when_every_corner_is_a_tie() {
        // Beale's program, on which the plain largest-gain rule runs in circles (from memory); value -1/20.
        LinearProgram p = LinearProgram.of(4)
                .bound(0, 0, INF)
                .bound(1, 0, INF)
                .bound(2, 0, INF)
                .bound(3, 0, INF)
                .row(new double[] {0.25, -60, -1.0 / 25, 9}, -INF, 0)
                .row(new double[] {0.5, -90, -1.0 / 50, 3}, -INF, 0)
                .row(new double[] {0, 0, 1, 0}, -INF, 1)
                .build();
        assertEquals(-0.05, p.minimise(-0.75, 150, -0.02, 6).value(), 1e-12);
    }

    @Test
    void should_equal_its_dual_when_programs_are_drawn_at_random() {
        SplittableRandom chance = new SplittableRandom(20250301);
        for (int k = 0; k < 60; k++) {
            int n = 2 + chance.nextInt(8);
            int m = 2 + chance.nextInt(12);
            double[][] a = new double[m][n];
            double[] b = new double[m];
            double[] c = new double[n];
            for (int j = 0; j < n; j++) {
                c[j] = chance.nextDouble(0.1, 5) * (j == 0 ? 300 : 1);
            }
            LinearProgram.Builder primal = LinearProgram.of(n);
            for (int j = 0; j < n; j++) {
                primal.bound(j, 0, INF);
            }
            for (int i = 0; i < m; i++) {
                for (int j = 0; j < n; j++) {
                    a[i][j] = chance.nextDouble(0, 2) * (j == 0 ? 300 : 1);
                }
                b[i] = chance.nextInt(5);
                primal.row(a[i], b[i], INF);
            }
            LinearProgram.Builder dual = LinearProgram.of(m);
            for (int i = 0; i < m; i++) {
                dual.bound(i, 0, INF);
            }
            for (int j = 0; j < n; j++) {
                double[] column = new double[m];
                for (int i = 0; i < m; i++) {
                    column[i] = a[i][j];
                }
                dual.row(column, -INF, c[j]);
            }
            LinearProgram.Outcome best = primal.build().minimise(c);
            assertTrue(best.optimal());
            assertEquals(dual.build().maximise(b).value(), best.value(), 1e-9 * Math.max(1, best.value()));
        }
    }
}
