package fayline.basis.numeric.optimum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Rows taken in as they are broken: a regular polygon by its sides, and sums of distances by their tangents. */
class GrowingRowsTest {
    private static final double[] LOW = {-50, -50};
    private static final double[] HIGH = {50, 50};

    /** The sides of a regular polygon about the origin, the most broken one at a time. */
    private static GrowingRows polygon(int sides, double inner) {
        return new GrowingRows(2, x -> {
            int worst = 0;
            for (int k = 1; k < sides; k++) {
                worst = side(k, sides, x) > side(worst, sides, x) ? k : worst;
            }
            double turn = 2 * Math.PI * worst / sides;
            return side(worst, sides, x) > inner + 1e-10
                    ? List.of(new GrowingRows.Row(new double[] {Math.cos(turn), Math.sin(turn)}, inner))
                    : List.of();
        });
    }

    private static double side(int k, int sides, double[] x) {
        double turn = 2 * Math.PI * k / sides;
        return Math.cos(turn) * x[0] + Math.sin(turn) * x[1];
    }

    @Test
    void should_find_the_corner_and_the_nearest_point_of_a_polygon_of_a_thousand_sides() {
        GrowingRows rows = polygon(1000, 3);
        double out = 3 / Math.cos(Math.PI / 1000);
        double turn = Math.PI / 1000;
        double[] cost = {-Math.cos(turn), -Math.sin(turn)};
        assertEquals(-out, rows.least(cost, LOW, HIGH).orElseThrow().value(), 1e-9);
        List<Double> near = rows.nearest(new double[] {0, 8}, LOW, HIGH).orElseThrow();
        assertEquals(0, near.get(0), 1e-9);
        assertEquals(3, near.get(1), 1e-9);
        assertEquals(
                List.of(1.0, 1.0), rows.nearest(new double[] {1, 1}, LOW, HIGH).orElseThrow());
    }

    @Test
    void should_hold_an_unknown_whose_bounds_are_equal_and_find_nothing_where_there_is_nothing() {
        GrowingRows rows = polygon(4, 3);
        List<Double> near = rows.nearest(new double[] {9, 9}, new double[] {-50, 2}, new double[] {50, 2})
                .orElseThrow();
        assertEquals(List.of(3.0, 2.0), near);
        assertEquals(Optional.empty(), rows.nearest(new double[] {0, 0}, new double[] {5, -1}, new double[] {9, 1}));
        assertEquals(Optional.empty(), rows.least(new double[] {1, 0}, new double[] {5, -1}, new double[] {9, 1}));
    }

    @Test
    void should_find_the_least_sum_of_distances_whatever_was_asked_before() {
        SplittableRandom random = new SplittableRandom(8);
        double[] at = random.doubles(31, -10, 10).sorted().toArray();
        // x, t with t no less than the sum of |x - a|: least at the median
        GrowingRows.Watch watch = x -> {
            double slope = 0;
            double level = 0;
            for (double a : at) {
                double sign = x[0] >= a ? 1 : -1;
                slope += sign;
                level -= sign * a;
            }
            return slope * x[0] + level > x[1] + 1e-9
                    ? List.of(new GrowingRows.Row(new double[] {slope, -1}, -level))
                    : List.of();
        };
        double[] low = {-40, 0};
        double[] high = {40, 1e5};
        GrowingRows fresh = new GrowingRows(2, watch);
        CornerSearch.Corner least = fresh.least(new double[] {0, 1}, low, high).orElseThrow();
        assertEquals(at[15], least.point().get(0), 1e-7);
        GrowingRows used = new GrowingRows(2, watch);
        assertTrue(used.least(new double[] {1, 0}, low, new double[] {40, 200}).isPresent());
        assertEquals(
                least.value(),
                used.least(new double[] {0, 1}, low, high).orElseThrow().value(),
                1e-9);
    }
}
