package fayline.method.fitup.trim.cut;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.outline.DepthAt;
import fayline.method.fitup.outline.EdgeRun;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Four edges of a 700 by 460 loop; depths by hand, and properties over seeded random cuts. */
class CornerRunsTest {
    private static final double ROUND_MM = 2320;
    private static final List<EdgeRun> EDGES = List.of(
            new EdgeRun("lower", 0, 700),
            new EdgeRun("aft", 700, 460),
            new EdgeRun("upper", 1160, 700),
            new EdgeRun("front", 1860, 460));

    private static CutPlanResult plan(Set<String> uncut, List<CutStation> stations) {
        return CutPlanCalculator.calculate(
                new CutPlan(stations, EDGES, ROUND_MM, Map.of(), OptionalDouble.of(0), uncut));
    }

    private static CutStation at(String edge, double s, double depth) {
        return new CutStation(edge + s, edge, s, depth, 0.03);
    }

    /** The deepest cut at a place of the edge, from all lines; s may be looked for a round later too. */
    private static double depth(CutPlanResult r, double s, String edge) {
        double most = 0;
        for (CutLine line : r.lines()) {
            if (line.edge().equals(edge)) {
                List<DepthAt> at = line.finished();
                for (int i = 1; i < at.size(); i++) {
                    DepthAt a = at.get(i - 1);
                    DepthAt b = at.get(i);
                    if (s >= a.sMm() - 1e-9 && s <= b.sMm() + 1e-9) {
                        most = Math.max(
                                most, a.depthMm() + (b.depthMm() - a.depthMm()) * (s - a.sMm()) / (b.sMm() - a.sMm()));
                    }
                }
            }
        }
        return most;
    }

    @Test
    void should_run_out_one_in_ten_on_the_next_edge_when_only_one_is_cut() {
        CutPlanResult r = plan(Set.of(), List.of(at("aft", 760, 0.6), at("aft", 1100, 0.6), at("upper", 1400, 0)));
        // 0.6 mm runs out over 6 mm on the lower edge before 700 and on the upper edge after 1160
        assertEquals(0.6, depth(r, 700, "lower"), 1e-12);
        assertEquals(0.3, depth(r, 697, "lower"), 1e-9);
        assertEquals(0, depth(r, 694, "lower"), 1e-9);
        assertEquals(0.3, depth(r, 1163, "upper"), 1e-9);
        assertEquals(460 * 0.6 + 2 * 0.5 * 6 * 0.6, r.areaMm2(), 1e-9);
        assertEquals(
                "0.6 mm from the start of the aft edge to the end of the aft edge, aft edge only, run out round the"
                        + " corner; 280 mm² in all",
                r.words().toString());
    }

    @Test
    void should_take_the_deeper_at_the_corner_when_both_edges_are_cut() {
        CutPlanResult r = plan(Set.of(), List.of(at("aft", 1100, 0.8), at("upper", 1260, 0.2)));
        assertEquals(0.8, depth(r, 1160, "aft"), 1e-12);
        assertEquals(0.8, depth(r, 1160, "upper"), 1e-12);
        // from the corner down to what station 1260 asks for
        assertEquals(0.5, depth(r, 1210, "upper"), 1e-9);
    }

    @Test
    void should_keep_the_depth_and_say_so_when_the_next_edge_must_not_be_touched() {
        CutPlanResult r = plan(Set.of("upper", "lower"), List.of(at("aft", 760, 0.6), at("aft", 1100, 0.6)));
        assertEquals(1, r.lines().size());
        assertEquals(0.6, depth(r, 1160, "aft"), 1e-12);
        assertTrue(r.findings().stream().anyMatch(f -> f.sentence().contains("up to the upper edge")));
    }

    @Test
    void should_tell_of_both_cuts_when_they_meet_at_one_depth_on_two_sides_of_the_joint() {
        CutPlanResult r = CutPlanCalculator.calculate(new CutPlan(
                List.of(at("aft", 760, 0), at("aft", 1100, 0.6), at("upper", 1400, 0.6), at("upper", 1800, 0)),
                EDGES,
                ROUND_MM,
                Map.of("upper", CutSide.NEIGHBOUR),
                OptionalDouble.of(0)));
        assertEquals(2, r.lines().size());
        assertTrue(r.findings().stream()
                .anyMatch(f -> f.sentence().contains("cut of the aft edge keeps its depth up to the upper edge")));
        assertTrue(r.findings().stream()
                .anyMatch(f -> f.sentence().contains("cut of the upper edge keeps its depth up to the aft edge")));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void should_never_cut_less_than_asked_nor_step_at_a_corner_when_cuts_are_random(long seed) {
        Random random = new Random(seed);
        List<CutStation> stations = new ArrayList<>();
        for (EdgeRun e : EDGES) {
            int n = 1 + random.nextInt(5);
            for (int i = 0; i < n; i++) {
                double s = e.fromMm() + e.lengthMm() * (i + random.nextDouble()) / n;
                stations.add(at(e.name(), s, random.nextInt(3) == 0 ? 0 : 1.5 * random.nextDouble()));
            }
        }
        CutPlanResult r = plan(Set.of(), stations);
        for (CutStation s : stations) {
            assertTrue(depth(r, s.sMm(), s.edge()) >= s.depthMm() - 1e-9, s.id());
        }
        for (int i = 0; i < EDGES.size(); i++) {
            EdgeRun e = EDGES.get(i);
            EdgeRun next = EDGES.get((i + 1) % EDGES.size());
            assertEquals(
                    depth(r, e.toMm(), e.name()), depth(r, next.fromMm(), next.name()), 1e-9, e.name() + next.name());
        }
        r.lines().forEach(l -> l.stops().forEach(s -> assertTrue(s.depthMm() >= 0)));
    }
}
