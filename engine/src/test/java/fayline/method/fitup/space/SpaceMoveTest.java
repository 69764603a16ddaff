package fayline.method.fitup.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Vector;
import fayline.method.fitup.move.MoveStatus;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Six unknowns, and the flush of a flat part. */
class SpaceMoveTest {
    private static Vector vector(Node n) {
        List<Double> v = n.numbers();
        return new Vector(v.get(0), v.get(1), v.get(2));
    }

    private static List<SpaceReading> readings(Node in) {
        List<SpaceReading> all = new ArrayList<>();
        for (Node n : in.get("stations").items()) {
            all.add(SpaceReading.of(
                    n.text("id"),
                    SpaceReading.Kind.GAP,
                    vector(n.get("p")),
                    vector(n.get("gapNormal")),
                    n.number("gap"),
                    in.number("nominalGap")));
            all.add(SpaceReading.of(
                    n.text("id"),
                    SpaceReading.Kind.FLUSH,
                    vector(n.get("p")),
                    vector(n.get("surfaceNormal")),
                    n.number("flush"),
                    in.number("nominalFlush")));
        }
        return all;
    }

    private static List<Double> every(List<Double> values, int from) {
        List<Double> all = new ArrayList<>();
        for (int i = from; i < values.size(); i += 2) {
            all.add(values.get(i));
        }
        return all;
    }

    @Test
    void should_match_the_reference_case_when_a_canopy_is_bulged() {
        FitCase c = FitCase.read("checks/fitup/F41-bulged-canopy-six-unknowns");
        SpaceMoveResult r = SpaceMoveCalculator.calculate(
                SpaceQuestion.of(readings(c.inputs()), vector(c.inputs().get("pivot")), SpaceLimits.WIDEST));
        Node e = c.expected();
        assertEquals(e.number("rank"), r.determinacy().rank());
        SpaceMoveResult.Solution s = r.leastSquares().orElseThrow();
        Node w = e.get("leastSquares");
        Vector d = s.move().shiftMm();
        c.holds("d", w, List.of(d.x(), d.y(), d.z()));
        Vector t = s.move().turnDeg();
        c.holds("rotDeg", w, List.of(t.x(), t.y(), t.z()));
        c.holds("gaps", w, every(s.valuesMm(), 0));
        c.holds("flush", w, every(s.valuesMm(), 1));
        c.holds("sumSquares", w, s.sumSquares());
        c.holds("worstDeviation", e.get("minimax"), r.minimax().orElseThrow().worstDeviation());
        assertEquals(MoveStatus.OK, r.status());
        assertTrue(r.minimax().orElseThrow().deciding().size() >= 2);
    }

    @Test
    void should_undo_a_known_motion_when_it_is_fed_back() {
        List<SpaceReading> base = readings(
                FitCase.read("checks/fitup/F41-bulged-canopy-six-unknowns").inputs());
        Vector pivot = new Vector(0, 0, -40);
        SplittableRandom chance = new SplittableRandom(6);
        for (int k = 0; k < 20; k++) {
            SpaceMove m = new SpaceMove(draw(chance, 3), draw(chance, 0.015));
            List<SpaceReading> fed = new ArrayList<>();
            for (SpaceReading r : base) {
                Vector arm = r.at().minus(pivot);
                double went = r.normal().dot(arm.turned(m.turnRad()).minus(arm).plus(m.shiftMm()));
                fed.add(r.reading(r.nominalMm() + (r.kind() == SpaceReading.Kind.GAP ? went : -went)));
            }
            SpaceMoveResult.Solution s = SpaceMoveCalculator.calculate(SpaceQuestion.of(fed, pivot, SpaceLimits.WIDEST))
                    .minimax()
                    .orElseThrow();
            if (s.straightErrorMm() > 0.02) {
                assertEquals(0, s.move().shiftMm().minus(m.shiftMm()).length(), 1e-4);
                assertEquals(0, s.move().turnRad().minus(m.turnRad()).length(), 1e-6);
                assertEquals(0, s.worstDeviation(), 1e-4);
            } else {
                assertEquals(0, s.move().shiftMm().minus(m.shiftMm()).length(), 0.1);
            }
        }
    }

    private static Vector draw(SplittableRandom chance, double size) {
        return new Vector(
                chance.nextDouble(-size, size), chance.nextDouble(-size, size), chance.nextDouble(-size, size));
    }

    @Test
    void should_keep_limits_and_minimum_gaps_when_they_bind() {
        FitCase c = FitCase.read("checks/fitup/F41-bulged-canopy-six-unknowns");
        List<SpaceReading> rows = new ArrayList<>(readings(c.inputs()));
        rows.replaceAll(
                r -> r.kind() == SpaceReading.Kind.GAP ? r.within(2.8, 3.2).atLeast(2.96) : r);
        Vector pivot = vector(c.inputs().get("pivot"));
        SpaceMoveResult r = SpaceMoveCalculator.calculate(SpaceQuestion.of(rows, pivot, SpaceLimits.of(5, 0.02)));
        if (r.minimax().isPresent()) {
            for (double g : every(r.minimax().get().valuesMm(), 0)) {
                assertTrue(g >= 2.96 - 1e-9);
            }
        }
        assertEquals(MoveStatus.OK, r.status());
        SpaceMoveResult held = SpaceMoveCalculator.calculate(SpaceQuestion.of(rows, pivot, SpaceLimits.of(0.2, 0.02)));
        assertEquals(MoveStatus.INFEASIBLE, held.status());
        rows.replaceAll(x -> x.kind() == SpaceReading.Kind.GAP
                ? SpaceReading.of(x.station(), x.kind(), x.at(), x.normal(), x.valueMm(), 3)
                        .within(2.99, 3.01)
                : x);
        SpaceMoveResult tight = SpaceMoveCalculator.calculate(SpaceQuestion.of(rows, pivot, SpaceLimits.of(5, 0.02)));
        assertEquals(MoveStatus.NO_FIT, tight.status());
        assertTrue(!tight.outside().isEmpty());
    }

    @Test
    void should_refuse_when_the_part_lies_far_off() {
        List<SpaceReading> rows = new ArrayList<>(readings(
                FitCase.read("checks/fitup/F41-bulged-canopy-six-unknowns").inputs()));
        rows.replaceAll(r -> r.kind() == SpaceReading.Kind.FLUSH ? r.reading(-14) : r.reading(3));
        SpaceMoveResult r = SpaceMoveCalculator.calculate(SpaceQuestion.of(rows, Vector.ZERO, SpaceLimits.of(50, 0.3)));
        assertEquals(MoveStatus.MOVE_TOO_LARGE, r.status());
        assertTrue(r.leastSquares().isEmpty());
    }

    @Test
    void should_say_what_is_not_known_when_only_gaps_in_a_plane_are_read() {
        List<SpaceReading> rows = new ArrayList<>();
        for (int k = 0; k < 8; k++) {
            double t = 2 * Math.PI * k / 8;
            rows.add(SpaceReading.of(
                    "S" + k,
                    SpaceReading.Kind.GAP,
                    new Vector(400 * Math.cos(t), 250 * Math.sin(t), 0),
                    new Vector(Math.cos(t) / 400, Math.sin(t) / 250, 0),
                    3.1,
                    3));
        }
        SpaceMoveResult r = SpaceMoveCalculator.calculate(SpaceQuestion.of(rows, Vector.ZERO, SpaceLimits.WIDEST));
        assertEquals(3, r.determinacy().rank());
        assertEquals(3, r.determinacy().free().size());
        assertEquals(0, r.leastSquares().orElseThrow().move().shiftMm().z(), 1e-12);
        assertThrows(
                IllegalArgumentException.class,
                () -> SpaceMoveCalculator.calculate(SpaceQuestion.of(List.of(), Vector.ZERO, SpaceLimits.WIDEST)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"F14-flush-plane", "F15-flush-hand"})
    void should_match_the_reference_case_when_a_flat_part_is_brought_flush(String file) {
        FitCase c = FitCase.read("checks/fitup/" + file);
        List<FlushReading> readings = c.inputs().get("stations").items().stream()
                .map(n -> FlushReading.of(
                        n.text("id"),
                        new Spot(n.number("x"), n.number("y")),
                        n.number("flush"),
                        c.inputs().number("nominal")))
                .toList();
        FlushPlaneResult r = FlushPlaneCalculator.calculate(readings, new Spot(0, 0));
        Node w = c.expected().get("leastSquares");
        FlushPlaneResult.Solution s = r.leastSquares();
        c.holds("dz", w, s.move().dzMm());
        c.holds("rxDeg", w, Math.toDegrees(s.move().rxRad()));
        c.holds("ryDeg", w, Math.toDegrees(s.move().ryRad()));
        c.holds("flush", w, s.flushMm());
        c.holds("sumSquares", w, s.sumSquares());
        c.holds("worstDeviation", c.expected().get("minimax"), r.minimax().worstDeviation());
        assertEquals(3, r.rank());
        assertTrue(r.findings().isEmpty());
    }

    @Test
    void should_miss_the_tilt_when_the_stations_lie_in_one_line() {
        List<FlushReading> line = List.of(
                FlushReading.of("A", new Spot(-300, 0), 0.2, 0),
                FlushReading.of("B", new Spot(0, 0), 0.3, 0),
                FlushReading.of("C", new Spot(300, 0), 0.4, 0));
        FlushPlaneResult r = FlushPlaneCalculator.calculate(line, new Spot(0, 0));
        assertEquals(2, r.rank());
        assertEquals(0, r.leastSquares().move().rxRad(), 1e-12);
        assertEquals(0.1 / 300, r.leastSquares().move().ryRad(), 1e-9);
        assertEquals(-0.3, r.leastSquares().move().dzMm(), 1e-9);
        assertTrue(r.findings().get(0).sentence().contains("tilt about this line"));
    }
}
