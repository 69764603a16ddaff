package fayline.method.fitup.trim.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.Spot;
import fayline.method.fitup.outline.CutOutline;
import fayline.method.fitup.outline.EdgeRun;
import fayline.method.fitup.outline.OutlineCalculator;
import fayline.method.fitup.outline.PartOutline;
import fayline.method.fitup.outline.RoundedPolygon;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Cut lines on the aft edge of a 700 by 460 rectangle, as in the tapering reference trim, checked by hand. */
class CutPlanTest {
    private static final EdgeRun LOWER = new EdgeRun("lower", 0, 700);
    private static final EdgeRun AFT = new EdgeRun("aft", 700, 460);

    private static CutStation at(String id, double up, double depth) {
        return new CutStation(id, "aft", 700 + up, depth, 0.03);
    }

    private static CutPlanResult plan(OptionalDouble leaveOn, CutStation... stations) {
        return CutPlanCalculator.calculate(
                new CutPlan(List.of(stations), List.of(LOWER, AFT), 2320, Map.of("lower", CutSide.NEIGHBOUR), leaveOn));
    }

    @Test
    void should_taper_to_the_station_that_is_not_cut() {
        CutPlanResult r =
                plan(OptionalDouble.empty(), at("5", 0, 0.8), at("6", 100, 0.4), at("8", 200, 0), at("9", 300, 0));
        assertEquals(1, r.lines().size());
        CutLine line = r.lines().get(0);
        assertEquals(
                List.of("5", "6", "8"),
                line.stops().stream().map(CutLine.Stop::name).toList());
        assertEquals(60 + 20, r.areaMm2(), 1e-9);
        assertEquals(
                "0.8 mm at station 5, 0.4 mm at station 6 tapering to 0 at station 8, aft edge only; 80 mm² in all",
                r.words().toString());
        assertEquals(0.5, line.stops().get(0).firstMm(), 1e-12);
        assertEquals(0.1, line.stops().get(1).firstMm(), 1e-12);
        assertEquals(0, line.stops().get(2).firstMm(), 1e-12);
        assertTrue(r.findings().get(0).sentence().contains("Leave up to 0.3 mm on"));
    }

    @Test
    void should_hold_the_depth_to_the_end_of_the_edge_and_no_farther() {
        CutPlanResult r = plan(OptionalDouble.of(0), at("6", 69, 0.6), at("7", 230, 0.25), at("8", 391, 0));
        CutLine line = r.lines().get(0);
        assertEquals("the start of the aft edge", line.stops().get(0).name());
        assertEquals(700, line.stops().get(0).sMm(), 1e-9);
        assertEquals(0.6, line.stops().get(0).depthMm(), 1e-12);
        assertEquals(0.6 * 69 + 161 * 0.425 + 161 * 0.125, r.areaMm2(), 1e-9);
        assertEquals(line.finished(), line.first());
        CutPlanResult whole = plan(OptionalDouble.of(0.2), at("6", 69, 0.8), at("8", 391, 0.8));
        assertEquals(460 * 0.8, whole.areaMm2(), 1e-9);
        assertEquals(
                "0.8 mm from the start of the aft edge to the end of the aft edge, aft edge only; 368 mm² in all",
                whole.words().toString());
        assertEquals(0.6, whole.lines().get(0).stops().get(1).firstMm(), 1e-12);
    }

    @Test
    void should_make_two_cuts_when_a_station_between_them_stays() {
        CutPlanResult r =
                plan(OptionalDouble.empty(), at("5", 0, 0.5), at("6", 150, 0), at("7", 300, 0), at("8", 460, 0.5));
        assertEquals(2, r.lines().size());
        assertEquals("7", r.lines().get(1).stops().get(0).name());
        assertTrue(
                r.words().toString().contains("from 0 at station 7 to 0.5 mm at station 8"),
                r.words().toString());
    }

    @Test
    void should_say_edge_and_side_when_two_edges_are_cut() {
        CutPlanResult r = plan(
                OptionalDouble.empty(),
                at("5", 0, 0.5),
                at("6", 150, 0),
                new CutStation("1", "lower", 100, 0.2, 0.2),
                new CutStation("2", "lower", 400, 0, 0.2));
        assertEquals(
                "0.2 mm at the start of the lower edge, 0.2 mm at station 1 tapering to 0 at station 2 off the neighbour,"
                        + " lower edge; 0.5 mm at station 5 tapering to 0 at station 6, aft edge; 88 mm² in all",
                r.words().toString());
        assertEquals(CutSide.NEIGHBOUR, r.lines().get(0).side());
        assertEquals(0, r.lines().get(0).stops().get(1).firstMm());
        assertEquals(
                "Nothing to cut.",
                plan(OptionalDouble.empty(), at("5", 0, 0)).words().toString());
    }

    @Test
    void should_take_its_area_off_the_outline() {
        PartOutline part = OutlineCalculator.calculate(new RoundedPolygon(
                        List.of(new Spot(0, 0), new Spot(700, 0), new Spot(700, 460), new Spot(0, 460)),
                        List.of(0.0, 0.0, 0.0, 0.0)))
                .outline()
                .orElseThrow();
        CutPlanResult r = plan(OptionalDouble.of(0), at("6", 69, 0.6), at("7", 230, 0.25), at("8", 391, 0));
        List<Spot> ring = CutOutline.whole(part, List.of(r.lines().get(0).finished()), 0.1);
        double twice = 0;
        for (int i = 0; i < ring.size(); i++) {
            Spot a = ring.get(i);
            Spot b = ring.get((i + 1) % ring.size());
            twice += a.xMm() * b.yMm() - b.xMm() * a.yMm();
        }
        assertEquals(part.areaMm2() - r.areaMm2(), twice / 2, 1e-6);
    }

    @Test
    void should_refuse_a_station_on_an_edge_that_is_not_there() {
        assertThrows(
                IllegalArgumentException.class,
                () -> plan(OptionalDouble.empty(), new CutStation("1", "nowhere", 0, 0.2, 0)));
    }
}
