package fayline.basis.numeric.optimum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.LinearProgram;
import fayline.checks.FitCase;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Against the general simplex, and against every set of held rows tried in turn. */
class OptimumTest {
    private static final double INF = Double.POSITIVE_INFINITY;

    @Test
    void should_find_the_corner_of_the_general_simplex_when_programs_are_drawn_at_random() {
        SplittableRandom chance = new SplittableRandom(11);
        int feasible = 0;
        for (int k = 0; k < 300; k++) {
            int n = 2 + chance.nextInt(5);
            int m = 1 + chance.nextInt(25);
            boolean ties = k % 3 == 0;
            double[] low = new double[n];
            double[] high = new double[n];
            Arrays.fill(low, -5);
            Arrays.fill(high, 5);
            LinearRows.Builder rows = LinearRows.within(low, high);
            LinearProgram.Builder same = LinearProgram.of(n);
            for (int j = 0; j < n; j++) {
                same.bound(j, -5, 5);
            }
            for (int i = 0; i < m; i++) {
                double[] a = new double[n];
                for (int j = 0; j < n; j++) {
                    a[j] = ties ? chance.nextInt(3) - 1 : chance.nextDouble(-1, 1);
                }
                double from = ties ? -chance.nextInt(3) : chance.nextDouble(-3, 0.8);
                double to = chance.nextInt(4) == 0 ? from : chance.nextInt(2) == 0 ? INF : from + 1;
                rows.row(a, from, to);
                same.row(a, from, to);
            }
            double[] cost = new double[n];
            for (int j = 0; j < n; j++) {
                cost[j] = ties ? chance.nextInt(3) - 1 : chance.nextDouble(-1, 1);
            }
            Optional<CornerSearch.Corner> corner = CornerSearch.least(cost, rows.build());
            LinearProgram.Outcome other = same.build().minimise(cost);
            assertEquals(other.optimal(), corner.isPresent(), "program " + k);
            if (corner.isPresent()) {
                feasible++;
                assertEquals(other.value(), corner.get().value(), 1e-8, "program " + k);
                assertTrue(rows.build().holdAt(LeastSquares.array(corner.get().point()), 1e-10));
            }
        }
        assertTrue(feasible > 60, "only " + feasible + " programs had an answer");
    }

    @Test
    void should_refuse_when_an_unknown_has_no_bounds() {
        assertThrows(
                IllegalArgumentException.class,
                () -> CornerSearch.least(new double[] {1}, LinearRows.free(1).build()));
    }

    @Test
    void should_price_the_rows_that_hold_when_a_limit_is_eased() {
        // Least x + y over x + 2y >= 4 and -9 <= x <= 1: x at -9, y at 6.5; easing the row by 1 saves 1/2 at y.
        LinearRows rows = LinearRows.within(new double[] {-9, -9}, new double[] {1, 9})
                .row(new double[] {1, 2}, 4, INF)
                .build();
        CornerSearch.Corner c = CornerSearch.least(new double[] {1, 1}, rows).orElseThrow();
        assertEquals(-2.5, c.value(), 1e-12);
        assertEquals(
                List.of(0, 2), c.holds().stream().map(CornerSearch.Hold::row).toList());
        assertEquals(0.5, c.holds().get(1).price(), 1e-12);
    }

    @Test
    void should_find_the_nearest_point_when_every_set_of_held_rows_is_tried() {
        SplittableRandom chance = new SplittableRandom(12);
        for (int k = 0; k < 200; k++) {
            int n = 2 + k % 2;
            LinearRows.Builder rows = LinearRows.free(n);
            for (int i = 0; i < 7; i++) {
                double[] a = draw(chance, n);
                double from = chance.nextDouble(-1, 1.2);
                rows.row(a, from, from + chance.nextDouble(0, 1.5));
            }
            Equations.Builder e = Equations.of(n);
            for (int i = 0; i < n + 3; i++) {
                e.row(draw(chance, n), chance.nextDouble(-2, 2), chance.nextDouble(0.3, 3));
            }
            Optional<List<Double>> found = LeastSquares.within(e.build(), rows.build());
            Optional<double[]> tried = tryAll(e.build(), rows.build());
            assertEquals(tried.isPresent(), found.isPresent(), "problem " + k);
            for (int j = 0; j < n && found.isPresent(); j++) {
                assertEquals(tried.orElseThrow()[j], found.get().get(j), 1e-7, "problem " + k);
            }
        }
    }

    @Test
    void should_be_no_worse_than_the_general_simplex_when_the_worst_deviation_counts() {
        SplittableRandom chance = new SplittableRandom(13);
        for (int k = 0; k < 60; k++) {
            int n = 3 + 3 * (k % 2);
            int m = n + 1 + chance.nextInt(30);
            Equations.Builder e = Equations.of(n);
            LinearProgram.Builder same = LinearProgram.of(n + 1).bound(n, 0, INF);
            for (int i = 0; i < m; i++) {
                double[] a = draw(chance, n);
                double b = chance.nextDouble(-1, 1);
                double w = chance.nextDouble(0.5, 2);
                e.row(a, b, w);
                double[] up = Arrays.copyOf(a, n + 1);
                up[n] = 1 / w;
                double[] down = Arrays.copyOf(a, n + 1);
                down[n] = -1 / w;
                same.row(up, b, INF).row(down, -INF, b);
            }
            MinimaxFit.Fit fit =
                    MinimaxFit.fit(e.build(), LinearRows.free(n).build()).orElseThrow();
            double[] cost = new double[n + 1];
            cost[n] = 1;
            assertEquals(same.build().minimise(cost).value(), fit.worst(), 1e-8);
            assertEquals(fit.worst(), e.build().worst(fit.point()), 1e-8);
            double prices = fit.equations().stream()
                    .mapToDouble(MinimaxFit.Decider::price)
                    .sum();
            assertEquals(1, prices, 1e-9);
        }
    }

    @Test
    void should_take_the_balanced_point_when_the_worst_deviation_leaves_room() {
        // Along x two rows pull apart by 1; along y anything within 0.5 is as good: least squares takes the middle,
        // 0.2.
        Equations e = Equations.of(2)
                .row(new double[] {1, 0}, 0.5, 1)
                .row(new double[] {1, 0}, -0.5, 1)
                .row(new double[] {0, 1}, 0.2, 1)
                .build();
        MinimaxFit.Fit fit = MinimaxFit.fit(e, LinearRows.free(2).build()).orElseThrow();
        assertEquals(0.5, fit.worst(), 1e-12);
        assertEquals(0, fit.point().get(0), 1e-8);
        assertEquals(0.2, fit.point().get(1), 1e-9);
        assertEquals(0, fit.extents().get(0), 1e-8);
        assertEquals(1, fit.extents().get(1), 1e-8);
    }

    @Test
    void should_take_the_least_norm_when_a_direction_is_free() {
        Equations e = Equations.of(3)
                .row(new double[] {1, 1, 0}, 2, 1)
                .row(new double[] {1, 1, 0}, 2, 1)
                .build();
        LeastSquares.Fit fit = LeastSquares.fit(e);
        assertEquals(1, fit.rank());
        assertEquals(1, fit.point().get(0), 1e-12);
        assertEquals(1, fit.point().get(1), 1e-12);
        assertEquals(0, fit.point().get(2), 0);
        assertTrue(fit.covariance().isEmpty());
        // With x at most 0.5, y must take the rest; z stays.
        LinearRows rows = LinearRows.within(new double[] {-9, -9, -9}, new double[] {0.5, 9, 9})
                .build();
        List<Double> limited = LeastSquares.within(e, rows).orElseThrow();
        assertEquals(0.5, limited.get(0), 1e-9);
        assertEquals(1.5, limited.get(1), 1e-9);
        assertEquals(0, limited.get(2), 1e-9);
    }

    @Test
    void should_give_the_inverse_normal_matrix_when_all_is_determined() {
        Equations e = Equations.of(2)
                .row(new double[] {1, 0}, 1, 2)
                .row(new double[] {0, 1}, 1, 4)
                .build();
        assertEquals(0.25, LeastSquares.fit(e).covariance().orElseThrow().get(0, 0), 1e-12);
        assertEquals(0.0625, LeastSquares.fit(e).covariance().orElseThrow().get(1, 1), 1e-12);
    }

    @Test
    void should_match_the_certified_values_when_a_line_is_fitted() {
        // NIST StRD, data set Norris: certified values; the worst deviation by enumeration of all triples.
        FitCase c = FitCase.read("checks/fitup/F43-kernel-norris");
        StraightLine l = StraightLine.through(
                c.inputs().get("x").numbers(), c.inputs().get("y").numbers());
        c.holds("b0", c.expected().get("leastSquares"), l.b0());
        c.holds("b1", c.expected().get("leastSquares"), l.b1());
        c.holds("stdB0", c.expected().get("leastSquares"), l.stdB0());
        c.holds("stdB1", c.expected().get("leastSquares"), l.stdB1());
        c.holds("worstDeviation", c.expected().get("minimax"), l.worstDeviation());
        assertThrows(
                IllegalArgumentException.class,
                () -> StraightLine.through(List.of(1.0, 1.0, 1.0), List.of(1.0, 2.0, 3.0)));
        assertThrows(IllegalArgumentException.class, () -> StraightLine.through(List.of(1.0, 2.0), List.of(1.0, 2.0)));
    }

    private static double[] draw(SplittableRandom chance, int n) {
        double[] a = new double[n];
        for (int j = 0; j < n; j++) {
            a[j] = chance.nextDouble(-1, 1);
        }
        return a;
    }

    /** Solves every set of up to n held rows and keeps the best that breaks nothing. */
    private static Optional<double[]> tryAll(Equations e, LinearRows rows) {
        int n = e.unknowns();
        List<double[]> sides = new ArrayList<>();
        for (int i = n; i < rows.count(); i++) {
            double[] low = Arrays.copyOf(rows.coefficients(i), n + 1);
            low[n] = rows.low(i);
            double[] high = Arrays.copyOf(rows.coefficients(i), n + 1);
            high[n] = rows.high(i);
            sides.add(low);
            sides.add(high);
        }
        double best = INF;
        double[] point = {};
        for (int set = 0; set < (1 << sides.size()); set++) {
            if (Integer.bitCount(set) > n) {
                continue;
            }
            double[] x = held(e, sides, set);
            if (x.length == n && rows.holdAt(x, 1e-8)) {
                double value = e.sumSquares(LeastSquares.list(x));
                if (value < best) {
                    best = value;
                    point = x;
                }
            }
        }
        return point.length == 0 ? Optional.empty() : Optional.of(point);
    }

    /** Least squares with some rows as equations, by the full system of multipliers. */
    private static double[] held(Equations e, List<double[]> sides, int set) {
        int n = e.unknowns();
        int k = Integer.bitCount(set);
        double[][] m = new double[n + k][n + k];
        double[] b = new double[n + k];
        for (int i = 0; i < e.count(); i++) {
            double[] a = e.coefficients(i);
            double w = e.weight(i) * e.weight(i);
            for (int p = 0; p < n; p++) {
                b[p] += w * a[p] * e.wanted(i);
                for (int q = 0; q < n; q++) {
                    m[p][q] += w * a[p] * a[q];
                }
            }
        }
        int at = n;
        for (int i = 0; i < sides.size(); i++) {
            if (((set >> i) & 1) == 1) {
                for (int p = 0; p < n; p++) {
                    m[p][at] = sides.get(i)[p];
                    m[at][p] = sides.get(i)[p];
                }
                b[at++] = sides.get(i)[n];
            }
        }
        int[] order = Small.factor(m);
        return order.length == 0 ? new double[0] : Arrays.copyOf(Small.solve(m, order, b), n);
    }
}
