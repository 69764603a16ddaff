package fayline.method.fitup.outline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference outline, hand-checked corners, traced lines, and properties over seeded polygons. */
class OutlineTest {
    private static final double NEAR = 1e-9;

    private static PartOutline drawn(OutlineShape shape) {
        return OutlineCalculator.calculate(shape).outline().orElseThrow();
    }

    private static List<Spot> spots(double... xy) {
        return IntStream.range(0, xy.length / 2)
                .mapToObj(i -> new Spot(xy[2 * i], xy[2 * i + 1]))
                .toList();
    }

    private static PartOutline rectangle(double radius) {
        return drawn(new RoundedPolygon(spots(0, 0, 100, 0, 100, 60, 0, 60), List.of(radius, radius, radius, radius)));
    }

    @Test
    void should_hold_the_reference_outline() {
        FitCase c = FitCase.read("checks/fitup/F16-outline-normals");
        PartOutline outline = drawn(new RoundedPolygon(
                c.inputs().get("corners").items().stream()
                        .map(FitCase.Node::numbers)
                        .map(p -> new Spot(p.get(0), p.get(1)))
                        .toList(),
                c.inputs().get("radii").numbers()));
        c.holds("perimeter", c.expected(), outline.perimeterMm());
        for (FitCase.Node wanted : c.expected().get("points").items()) {
            EdgePoint p = outline.at(wanted.number("s"));
            c.holds("x", wanted, p.at().xMm());
            c.holds("y", wanted, p.at().yMm());
            c.holds("nx", wanted, p.nx());
            c.holds("ny", wanted, p.ny());
            assertEquals(wanted.text("segment"), p.run());
        }
    }

    @Test
    void should_turn_normals_to_the_centre_when_a_corner_is_reflex() {
        // an L: reflex corner 4 at (50, 40), radius 10; its centre lies outside the part at (60, 50)
        PartOutline l = drawn(new RoundedPolygon(
                spots(0, 0, 100, 0, 100, 40, 50, 40, 50, 90, 0, 90), List.of(0.0, 0.0, 0.0, 10.0, 0.0, 0.0)));
        assertEquals(2 * (100 + 90) - 20 + 10 * Math.PI / 2, l.perimeterMm(), NEAR);
        assertEquals(100 * 40 + 50 * 50 + 100 - 25 * Math.PI, l.areaMm2(), NEAR);
        EdgePoint middle = l.at(100 + 40 + 40 + 10 * Math.PI / 4);
        assertEquals("C4", middle.run());
        double root = Math.sqrt(0.5);
        assertEquals(60 - 10 * root, middle.at().xMm(), NEAR);
        assertEquals(50 - 10 * root, middle.at().yMm(), NEAR);
        assertEquals(root, middle.nx(), NEAR);
        assertEquals(root, middle.ny(), NEAR);
    }

    @Test
    void should_name_the_corner_when_its_blend_is_too_large() {
        List<Spot> corners = spots(0, 0, 100, 0, 100, 60, 0, 60);
        OutlineResult r = OutlineCalculator.calculate(new RoundedPolygon(corners, List.of(10.0, 10.0, 55.0, 5.0)));
        assertEquals(OutlineStatus.BLEND_TOO_LARGE, r.status());
        assertEquals(3, r.corner().orElseThrow());
        assertTrue(r.outline().isEmpty());
        assertTrue(r.findings().get(0).sentence().contains("corner 3"));
        OutlineResult clockwise = OutlineCalculator.calculate(
                new RoundedPolygon(spots(0, 0, 0, 60, 100, 60, 100, 0), List.of(10.0, 5.0, 55.0, 10.0)));
        assertEquals(3, clockwise.corner().orElseThrow());
    }

    @Test
    void should_ask_for_the_edge_when_a_station_lies_on_a_sharp_corner() {
        PartOutline r = rectangle(0);
        assertTrue(r.at(100).sharp());
        assertEquals("E2", r.at(100).run());
        assertTrue(r.station("S1", 100, "").isEmpty());
        Station below = r.station("S1", 100, "E1").orElseThrow();
        assertEquals(-1, below.ny(), NEAR);
        Station aft = r.station("S1", 100 + 4 * 320.0, "E2").orElseThrow();
        assertEquals(1, aft.nx(), NEAR);
        assertEquals(100, aft.at().xMm(), NEAR);
        assertTrue(r.at(0).sharp());
        assertEquals(-1, r.station("S2", 0, "E4").orElseThrow().nx(), NEAR);
        assertFalse(r.at(50).sharp());
        assertFalse(rectangle(10).at(80).sharp());
    }

    @Test
    void should_turn_the_line_round_and_say_so_when_it_runs_clockwise() {
        OutlineResult r = OutlineCalculator.calculate(
                new RoundedPolygon(spots(0, 0, 0, 60, 100, 60, 100, 0), List.of(0.0, 5.0, 10.0, 15.0)));
        assertTrue(r.reversed());
        assertTrue(r.findings().get(0).sentence().contains("clockwise"));
        PartOutline there =
                drawn(new RoundedPolygon(spots(0, 0, 100, 0, 100, 60, 0, 60), List.of(0.0, 15.0, 10.0, 5.0)));
        assertEquals(there.drawn(0.1), r.outline().orElseThrow().drawn(0.1));
    }

    @Test
    void should_refuse_when_the_line_crosses_itself_or_encloses_nothing() {
        List<OutlineShape> bad = List.of(
                new RoundedPolygon(spots(0, 0, 100, 60, 100, 0, 0, 60), List.of(0.0, 0.0, 0.0, 0.0)),
                new RoundedPolygon(spots(0, 0, 50, 0, 100, 0), List.of(0.0, 0.0, 0.0)),
                TracedLine.smooth(spots(0, 0, 100, 60, 100, 0, 0, 60)),
                TracedLine.smooth(spots(0, 0, 0, 0, 0, 0)));
        for (OutlineShape shape : bad) {
            OutlineResult r = OutlineCalculator.calculate(shape);
            assertEquals(OutlineStatus.SELF_CROSSING, r.status());
            assertTrue(r.outline().isEmpty());
        }
    }

    @Test
    void should_refuse_shapes_that_are_none() {
        assertThrows(IllegalArgumentException.class, () -> new RoundedPolygon(spots(0, 0, 1, 0), List.of(0.0, 0.0)));
        assertThrows(
                IllegalArgumentException.class,
                () -> new RoundedPolygon(spots(0, 0, 1, 0, 0, 1), List.of(0.0, 0.0, -1.0)));
        assertThrows(IllegalArgumentException.class, () -> new TracedLine(spots(0, 0, 1, 0, 0, 1), List.of(2, 1)));
    }

    @Test
    void should_find_the_radial_normal_when_a_circle_was_traced() {
        int n = 90;
        List<Spot> points = IntStream.range(0, n)
                .mapToObj(i -> new Spot(200 * Math.cos(2 * Math.PI * i / n), 200 * Math.sin(2 * Math.PI * i / n)))
                .toList();
        PartOutline circle = drawn(TracedLine.smooth(points));
        assertEquals(2 * n * 200 * Math.sin(Math.PI / n), circle.perimeterMm(), 1e-6);
        for (double s = 0; s < circle.perimeterMm(); s += 7.3) {
            EdgePoint p = circle.at(s);
            double across = p.nx() * p.at().yMm() - p.ny() * p.at().xMm();
            assertEquals(0, across / 200, 1e-3);
            assertTrue(p.nx() * p.at().xMm() + p.ny() * p.at().yMm() > 0);
        }
        assertTrue(circle.at(1).turnsMuch());
    }

    @Test
    void should_look_through_jitter_but_not_across_a_corner_when_a_line_was_traced() {
        Random random = new Random(42);
        List<Spot> points = new ArrayList<>();
        DoubleStream.iterate(0, x -> x < 100, x -> x + 1).forEach(x -> points.add(new Spot(x, jitter(random))));
        DoubleStream.iterate(0, y -> y < 60, y -> y + 1).forEach(y -> points.add(new Spot(100 + jitter(random), y)));
        DoubleStream.iterate(0, x -> x < 100, x -> x + 1)
                .forEach(x -> points.add(new Spot(100 - x, 60 + jitter(random))));
        DoubleStream.iterate(0, y -> y < 60, y -> y + 1).forEach(y -> points.add(new Spot(jitter(random), 60 - y)));
        PartOutline line = drawn(new TracedLine(points, List.of(0, 100, 160, 260)));
        assertEquals(
                List.of("E1", "E2", "E3", "E4"),
                line.runs().stream().map(EdgeRun::name).toList());
        EdgePoint nearCorner = line.at(line.runs().get(0).lengthMm() - 1);
        assertEquals(-1, nearCorner.ny(), 5e-3);
        assertEquals(0, nearCorner.nx(), 0.05);
        EdgePoint middle = line.nearest(new Spot(103, 30));
        assertEquals("E2", middle.run());
        assertEquals(1, middle.nx(), 1e-3);
        assertTrue(line.station("A", line.runs().get(1).fromMm(), "").isEmpty());
        assertEquals(
                0,
                line.station("A", line.runs().get(1).fromMm(), "E1")
                        .orElseThrow()
                        .nx(),
                0.05);
    }

    private static double jitter(Random random) {
        return 0.02 * (random.nextDouble() - 0.5);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void should_come_back_to_the_arc_length_when_asked_for_the_nearest(long seed) {
        PartOutline outline = seeded(seed);
        Random random = new Random(seed);
        for (int i = 0; i < 200; i++) {
            double s = random.nextDouble() * outline.perimeterMm();
            EdgePoint p = outline.at(s);
            double off = 3 * random.nextDouble();
            EdgePoint back = outline.nearest(p.at().plus(off * p.nx(), off * p.ny()));
            assertEquals(s, back.sMm(), 1e-6, "seed " + seed);
            assertEquals(1, Math.hypot(p.nx(), p.ny()), NEAR);
            EdgePoint on = outline.at(s + 1e-4);
            double along =
                    -p.ny() * (on.at().xMm() - p.at().xMm()) + p.nx() * (on.at().yMm() - p.at().yMm());
            assertEquals(1e-4, along, 1e-8, "the line keeps the part on its left");
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void should_reflect_place_and_normal_when_the_hand_changes(long seed) {
        PartOutline here = seeded(seed);
        PartOutline there = OutlineCalculator.mirrored(here);
        Random random = new Random(seed);
        for (int i = 0; i < 100; i++) {
            double s = random.nextDouble() * here.perimeterMm();
            EdgePoint p = here.at(s);
            EdgePoint q = there.at(here.mirroredMm(s));
            assertEquals(-p.at().xMm(), q.at().xMm(), 1e-8);
            assertEquals(p.at().yMm(), q.at().yMm(), 1e-8);
            assertEquals(-p.nx(), q.nx(), 1e-8);
            assertEquals(p.ny(), q.ny(), 1e-8);
            assertEquals(s, there.mirroredMm(here.mirroredMm(s)), 1e-8);
        }
        assertEquals(
                here.drawn(0.1).size(),
                OutlineCalculator.mirrored(there).drawn(0.1).size());
    }

    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1, 0.01})
    void should_stay_within_the_chord_error_when_drawn(double error) {
        PartOutline outline = seeded(21);
        List<Spot> points = outline.drawn(error);
        double worst = 0;
        for (int i = 0; i < points.size(); i++) {
            Spot a = points.get(i);
            Spot b = points.get((i + 1) % points.size());
            Spot mid = new Spot((a.xMm() + b.xMm()) / 2, (a.yMm() + b.yMm()) / 2);
            worst = Math.max(worst, outline.nearest(mid).at().distanceMm(mid));
        }
        assertTrue(worst <= error + NEAR && worst > 0, "worst " + worst);
    }

    @Test
    void should_share_the_edge_out_when_stations_stand_on_it() {
        PartOutline r = rectangle(10);
        // run E2 begins at 80 + 5π and is 40 long
        double e2 = 80 + 5 * Math.PI;
        List<Double> all = TributaryLengths.of(r, r.runs(), List.of(e2 + 30, e2 + 4, 20.0, e2 + 14));
        assertEquals(18, all.get(0), NEAR);
        assertEquals(9, all.get(1), NEAR);
        assertEquals(80, all.get(2), NEAR);
        assertEquals(13, all.get(3), NEAR);
        List<Double> whole = TributaryLengths.of(r, r.edges(), List.of(20.0, e2 + 4, e2 + 70, e2 + 150));
        assertEquals(r.perimeterMm(), whole.stream().mapToDouble(d -> d).sum(), NEAR);
        assertEquals(80 + 5 * Math.PI, whole.get(0), NEAR);
        List<Double> closed =
                TributaryLengths.of(r, List.of(new EdgeRun("rim", 0, r.perimeterMm())), List.of(10.0, 30.0, 100.0));
        assertEquals((r.perimeterMm() - 90) / 2 + 10, closed.get(0), NEAR);
        assertEquals(45, closed.get(1), NEAR);
    }

    @Test
    void should_warn_when_most_normals_point_inwards() {
        List<Station> out = List.of(
                new Station("A", new Spot(0, -10), 0, -1),
                new Station("B", new Spot(10, 0), 1, 0),
                new Station("C", new Spot(0, 10), 0, 1));
        assertTrue(StationNormals.inwards(out).isEmpty());
        List<Station> in = out.stream()
                .map(s -> new Station(s.id(), s.at(), -s.nx(), -s.ny()))
                .toList();
        assertTrue(StationNormals.inwards(in).orElseThrow().sentence().contains("inwards at 3 of 3"));
    }

    /** A star-shaped polygon with outward and reflex corners and radii that fit. */
    static PartOutline seeded(long seed) {
        Random random = new Random(seed);
        int n = 5 + random.nextInt(4);
        List<Spot> corners = new ArrayList<>();
        List<Double> radii = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double a = 2 * Math.PI * (i + 0.3 * random.nextDouble()) / n;
            double r = 200 + 200 * random.nextDouble();
            corners.add(new Spot(r * Math.cos(a), r * Math.sin(a)));
            radii.add(8 + 12 * random.nextDouble());
        }
        return drawn(new RoundedPolygon(corners, radii));
    }
}
