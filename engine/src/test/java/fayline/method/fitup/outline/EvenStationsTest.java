package fayline.method.fitup.outline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import fayline.method.fitup.Spot;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Stations spread along squares and seeded rectangles; where they must lie is reckoned by hand. */
class EvenStationsTest {
    private static PartOutline rectangle(double width, double height, double radius) {
        return OutlineCalculator.calculate(new RoundedPolygon(
                        List.of(new Spot(0, 0), new Spot(width, 0), new Spot(width, height), new Spot(0, height)),
                        List.of(radius, radius, radius, radius)))
                .outline()
                .orElseThrow();
    }

    @Test
    void should_lie_half_a_step_from_the_corners_when_steps_divide_the_sides() {
        // 400 mm round, eight steps of 50 mm: at 25, 75, 125 ...
        List<EdgePoint> all = EvenStations.along(rectangle(100, 100, 0), 8);
        assertThat(all)
                .extracting(EdgePoint::sMm)
                .containsExactly(25.0, 75.0, 125.0, 175.0, 225.0, 275.0, 325.0, 375.0);
        assertThat(all.get(2).at().xMm()).isCloseTo(100, within(1e-9));
        assertThat(all.get(2).nx()).isCloseTo(1, within(1e-12));
        assertThat(all.get(5).ny()).isCloseTo(1, within(1e-12));
    }

    @Test
    void should_move_off_a_sharp_corner_when_a_step_ends_there() {
        // five steps of 80 mm: the third falls on the corner at 200 mm and goes min(20, 80/4) = 20 mm past it
        assertThat(EvenStations.along(rectangle(100, 100, 0), 5))
                .extracting(EdgePoint::sMm)
                .containsExactly(40.0, 120.0, 220.0, 280.0, 360.0);
    }

    @Test
    void should_keep_every_direction_and_the_order_when_rectangles_are_of_any_size() {
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            double width = random.nextDouble(50, 2000);
            double height = random.nextDouble(50, 2000);
            double radius = random.nextBoolean() ? 0 : random.nextDouble(1, 20);
            int n = random.nextInt(1, 40);
            PartOutline outline = rectangle(width, height, radius);
            List<EdgePoint> all = EvenStations.along(outline, n);
            double step = outline.perimeterMm() / n;
            assertThat(all).hasSize(n).noneMatch(EdgePoint::sharp);
            for (int k = 0; k < n; k++) {
                EdgePoint p = all.get(k);
                assertThat(Math.abs(p.sMm() - (k + 0.5) * step)).isLessThanOrEqualTo(step / 2);
                assertThat(Math.hypot(p.nx(), p.ny())).isCloseTo(1, within(1e-12));
                assertThat(k == 0 || p.sMm() > all.get(k - 1).sMm()).isTrue();
            }
        }
    }

    @Test
    void should_refuse_when_the_number_is_out_of_range() {
        PartOutline outline = rectangle(100, 100, 0);
        assertThatThrownBy(() -> EvenStations.along(outline, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> EvenStations.along(outline, 201)).isInstanceOf(IllegalArgumentException.class);
    }
}
