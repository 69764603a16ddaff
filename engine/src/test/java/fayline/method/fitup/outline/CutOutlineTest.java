package fayline.method.fitup.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import fayline.method.fitup.Spot;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cut lines checked by hand on rectangles, and by area on seeded outlines. */
class CutOutlineTest {
    private static final double NEAR = 1e-9;

    private static PartOutline rectangle(double radius) {
        return OutlineCalculator.calculate(new RoundedPolygon(
                        List.of(new Spot(0, 0), new Spot(100, 0), new Spot(100, 60), new Spot(0, 60)),
                        List.of(radius, radius, radius, radius)))
                .outline()
                .orElseThrow();
    }

    private static double area(List<Spot> ring) {
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Spot a = ring.get(i);
            Spot b = ring.get((i + 1) % ring.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        return twice / 2;
    }

    private static void same(List<Spot> line, double... xy) {
        assertEquals(xy.length / 2, line.size(), line.toString());
        for (int i = 0; i < line.size(); i++) {
            assertEquals(xy[2 * i], line.get(i).xMm(), NEAR, line.toString());
            assertEquals(xy[2 * i + 1], line.get(i).yMm(), NEAR, line.toString());
        }
    }

    @Test
    void should_taper_linearly_when_the_depth_does() {
        same(
                CutOutline.line(
                        rectangle(0), List.of(new DepthAt(110, 0.8), new DepthAt(130, 0.4), new DepthAt(150, 0)), 0.1),
                99.2,
                10,
                99.6,
                30,
                100,
                50);
    }

    @Test
    void should_meet_at_the_corner_when_both_sides_are_cut() {
        same(
                CutOutline.line(rectangle(0), List.of(new DepthAt(90, 2), new DepthAt(120, 2)), 0.1),
                90,
                2,
                98,
                2,
                98,
                20);
    }

    @Test
    void should_cut_one_whole_side_when_the_cut_ends_at_sharp_corners() {
        List<Spot> ring =
                CutOutline.whole(rectangle(0), List.of(List.of(new DepthAt(100, 2), new DepthAt(160, 2))), 0.1);
        assertEquals(98 * 60, area(ring), NEAR);
        same(ring, 98, 0, 98, 60, 0, 60, 0, 0);
    }

    @Test
    void should_go_past_the_start_when_the_cut_does() {
        List<Spot> ring = CutOutline.whole(
                rectangle(0), List.of(List.of(new DepthAt(310, 1), new DepthAt(330, 1)), plateau(120)), 0.1);
        // 1 mm off the last 10 mm of the left side and the first 10 mm of the bottom, and a 10 mm plateau of 1 mm on
        // the right
        assertEquals(6000 - 10 - 10 + 1 - 10, area(ring), NEAR);
    }

    private static List<DepthAt> plateau(double at) {
        return List.of(new DepthAt(at, 1), new DepthAt(at + 10, 1));
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34, 35})
    void should_lose_perimeter_times_depth_when_cut_all_round(long seed) {
        PartOutline outline = OutlineTest.seeded(seed);
        double p = outline.perimeterMm();
        double d = 0.5;
        List<Spot> ring = CutOutline.whole(outline, List.of(List.of(new DepthAt(13, d), new DepthAt(13 + p, d))), 1e-5);
        // Steiner: the area of a line moved inwards by d falls by P d − π d² for one turn of the direction
        assertEquals(outline.areaMm2() - p * d + Math.PI * d * d, area(ring), 2e-2);
    }

    @Test
    void should_refuse_when_cuts_overlap_or_run_backwards() {
        PartOutline r = rectangle(5);
        assertThrows(IllegalArgumentException.class, () -> CutOutline.whole(r, List.of(plateau(10), plateau(15)), 0.1));
        assertThrows(
                IllegalArgumentException.class,
                () -> CutOutline.line(r, List.of(new DepthAt(10, 1), new DepthAt(5, 1)), 0.1));
        assertThrows(
                IllegalArgumentException.class,
                () -> CutOutline.line(r, List.of(new DepthAt(0, 1), new DepthAt(400, 1)), 0.1));
        assertEquals(r.drawn(0.1), CutOutline.whole(r, List.of(), 0.1));
    }
}
