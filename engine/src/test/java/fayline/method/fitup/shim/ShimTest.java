package fayline.method.fitup.shim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference shims, hand-made faults, and the joint search against rounding over seeded gaps. */
class ShimTest {
    private static final Spot MIDDLE = new Spot(0, 0);

    private static Station station(FitCase.Node s) {
        return new Station(s.text("id"), new Spot(s.number("x"), s.number("y")), s.number("nx"), s.number("ny"));
    }

    private static ShimQuestion of(FitCase c) {
        FitCase.Node in = c.inputs();
        FitCase.Node m = in.get("move");
        Optional<ShimStock> stock = in.get("stock").isThere()
                ? Optional.of(new ShimStock(in.get("stock").numbers(), (int) in.number("maxLayers"), 0))
                : Optional.empty();
        return new ShimQuestion(
                in.get("indexPoints").items().stream()
                        .map(p -> IndexPoint.shim(station(p), p.number("clearance")))
                        .toList(),
                new Move(m.number("dx"), m.number("dy"), Math.toRadians(m.number("thetaDeg"))),
                MIDDLE,
                stock,
                in.get("stations").items().stream()
                        .map(s -> FitRow.of(station(s), s.number("gap"), 2.5, s.number("nominal"), 3.5))
                        .toList());
    }

    @ParameterizedTest
    @ValueSource(strings = {"F20-shims-three-points", "F21-shims-from-stock"})
    void should_hold_the_reference_shims(String name) {
        FitCase c = FitCase.read("checks/fitup/" + name);
        ShimResult r = ShimCalculator.calculate(of(c));
        c.holds("exactShims", c.expected(), r.exactMm());
        c.holds("conditionNumberScaled", c.expected(), r.condition());
        assertEquals(Set.of(), r.flags());
        FitCase.Node discrete = c.expected().get("discrete");
        assertEquals(discrete.isThere(), r.best().isPresent());
        if (discrete.isThere()) {
            ShimResult.Choice best = r.best().orElseThrow();
            c.holds("shims", discrete, heights(best));
            c.holds("worstDeviation", discrete, best.worstDeviation());
            c.holds("dx", discrete.get("move"), best.move().dxMm());
            c.holds("dy", discrete.get("move"), best.move().dyMm());
            c.holds("thetaDeg", discrete.get("move"), best.move().turnDeg());
            assertTrue(best.unique() && best.complete());
            ShimResult.Choice rounded = r.rounded().orElseThrow();
            c.holds("shims", c.expected().get("rounded"), heights(rounded));
            c.holds("worstDeviation", c.expected().get("rounded"), rounded.worstDeviation());
            assertEquals(
                    "3.70 = 2.00 + 1.00 + 0.50 + 0.20", best.stacks().get(2).words());
        }
    }

    private static List<Double> heights(ShimResult.Choice c) {
        return c.stacks().stream().map(ShimStack::heightMm).toList();
    }

    private static IndexPoint point(String id, double x, double y, double nx, double ny, double clearance) {
        return IndexPoint.shim(new Station(id, new Spot(x, y), nx, ny), clearance);
    }

    @Test
    void should_name_the_free_motion_when_the_points_do_not_hold() {
        ShimResult r = ShimCalculator.calculate(new ShimQuestion(
                List.of(
                        point("J1", -200, -100, 0, -1, 3),
                        point("J2", 200, -100, 0, -1, 3),
                        point("J3", 0, 100, 0, 1, 3)),
                Move.NONE,
                MIDDLE,
                Optional.of(new ShimStock(List.of(1.0), 4, 0)),
                List.of()));
        assertEquals(Set.of(ShimFlag.INDEX_UNDETERMINED), r.flags());
        Move free = r.free().orElseThrow();
        assertEquals(1, Math.abs(free.dxMm()), 1e-9);
        assertEquals(0, free.dyMm(), 1e-9);
        assertEquals(0, free.turnRad(), 1e-9);
        assertTrue(r.best().isEmpty());
        assertEquals(List.of(3.0, 3.0, 3.0), r.exactMm());
    }

    @Test
    void should_warn_when_the_points_hold_poorly() {
        ShimResult r = ShimCalculator.calculate(new ShimQuestion(
                List.of(
                        point("J1", -2, -100, 0, -1, 3),
                        point("J2", 2, -100, 0, -1, 3),
                        point("J3", -100, 0, -1, 0, 3)),
                Move.NONE,
                MIDDLE,
                Optional.empty(),
                List.of()));
        assertEquals(Set.of(ShimFlag.POOR_INDEXING), r.flags());
        assertTrue(r.condition() > 50);
    }

    @Test
    void should_say_how_far_a_stop_is_in_the_way() {
        ShimResult r = ShimCalculator.calculate(new ShimQuestion(
                List.of(
                        point("J1", -200, -100, 0, -1, 3),
                        point("J2", 200, -100, 0, -1, 3),
                        point("J3", -250, 0, -1, 0, 0.2)),
                new Move(-0.6, 0, 0),
                MIDDLE,
                Optional.of(new ShimStock(List.of(0.5, 1.0), 3, 0)),
                List.of()));
        assertEquals(Set.of(ShimFlag.STOP_IN_THE_WAY), r.flags());
        assertEquals(-0.4, r.exactMm().get(2), 1e-12);
        assertEquals(
                "Stop J3 is 0.40 mm in the way: relieve it.",
                r.findings().get(0).sentence());
        assertEquals(ShimStack.NONE, r.best().orElseThrow().stacks().get(2));
    }

    @Test
    void should_count_the_tape_with_the_stack() {
        ShimQuestion q = new ShimQuestion(
                List.of(
                        point("J1", -200, -100, 0, -1, 1.05),
                        point("J2", 200, -100, 0, -1, 1.55),
                        point("J3", -250, 0, -1, 0, 0)),
                Move.NONE,
                MIDDLE,
                Optional.of(new ShimStock(List.of(0.5, 1.0), 3, 0.05)),
                List.of(
                        FitRow.of(new Station("A", new Spot(-100, -100), 0, -1), 3, 2.5, 3, 3.5),
                        FitRow.of(new Station("B", new Spot(100, -100), 0, -1), 3, 2.5, 3, 3.5),
                        FitRow.of(new Station("C", new Spot(-250, 0), -1, 0), 3, 2.5, 3, 3.5)));
        ShimResult.Choice best = ShimCalculator.calculate(q).best().orElseThrow();
        assertEquals(List.of(1.05, 1.55, 0.0), heights(best));
        assertEquals(List.of(1.0), best.stacks().get(0).piecesMm());
        assertEquals("1.05 = 1.00 + tape 0.05", best.stacks().get(0).words());
        assertEquals("none", best.stacks().get(2).words());
        assertEquals(0, best.worstDeviation(), 1e-12);
    }

    @Test
    void should_take_the_fewest_pieces_when_choices_are_equally_good() {
        // no station feels J3, so any height there is as good
        ShimQuestion q = new ShimQuestion(
                List.of(
                        point("J1", -200, -100, 0, -1, 1),
                        point("J2", 200, -100, 0, -1, 1),
                        point("J3", -250, 0, -1, 0, 1.2)),
                Move.NONE,
                MIDDLE,
                Optional.of(new ShimStock(List.of(0.5, 1.0), 3, 0)),
                List.of(
                        FitRow.of(new Station("A", new Spot(-100, -100), 0, -1), 3, 2.5, 3, 3.5),
                        FitRow.of(new Station("B", new Spot(100, -100), 0, -1), 3, 2.5, 3, 3.5)));
        ShimResult.Choice best = ShimCalculator.calculate(q).best().orElseThrow();
        assertFalse(best.unique());
        assertEquals(List.of(1.0, 1.0, 0.0), heights(best));
    }

    @Test
    void should_hold_by_two_pins_and_leave_them_without_shims() {
        List<IndexPoint> pins = IndexPoint.pins("pin", new Spot(-100, 0), new Spot(100, 0));
        ShimResult r = ShimCalculator.calculate(new ShimQuestion(
                pins,
                Move.NONE,
                MIDDLE,
                Optional.of(new ShimStock(List.of(0.5), 3, 0)),
                List.of(FitRow.of(new Station("A", new Spot(0, 100), 0, 1), 3.2, 2.5, 3, 3.5))));
        assertEquals(Set.of(), r.flags());
        assertEquals(1, pins.get(2).contact().ny(), 1e-12);
        assertEquals(List.of(0.0, 0.0, 0.0), heights(r.best().orElseThrow()));
        assertEquals(0.2, r.best().orElseThrow().worstDeviation(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> IndexPoint.pins("pin", MIDDLE, MIDDLE));
    }

    private static ShimQuestion seeded(long seed, int points) {
        Random random = new Random(seed);
        List<IndexPoint> all = new ArrayList<>();
        for (int j = 0; j < points; j++) {
            double a = 2 * Math.PI * (j + 0.6 * random.nextDouble()) / points;
            double skew = a + 0.8 * (random.nextDouble() - 0.5);
            all.add(point(
                    "J" + (j + 1),
                    250 * Math.cos(a),
                    250 * Math.sin(a),
                    Math.cos(skew),
                    Math.sin(skew),
                    1 + 3 * random.nextDouble()));
        }
        List<FitRow> rows = new ArrayList<>();
        for (int i = 0; i < 12; i++) {
            double a = 2 * Math.PI * i / 12;
            rows.add(FitRow.of(
                    new Station("S" + i, new Spot(300 * Math.cos(a), 200 * Math.sin(a)), Math.cos(a), Math.sin(a)),
                    3 + 0.4 * random.nextGaussian(),
                    2.5,
                    3,
                    3.5));
        }
        return new ShimQuestion(
                all,
                new Move(random.nextDouble() - 0.5, random.nextDouble() - 0.5, 0.002 * (random.nextDouble() - 0.5)),
                MIDDLE,
                Optional.of(new ShimStock(List.of(0.1, 0.2, 0.5, 1.0, 2.0), 4, 0)),
                rows);
    }

    @ParameterizedTest
    @ValueSource(ints = {3, 4, 5, 7})
    void should_never_be_worse_than_rounding(int points) {
        for (long seed = 1; seed <= 12; seed++) {
            ShimQuestion q = seeded(seed, points);
            ShimResult r = ShimCalculator.calculate(q);
            ShimResult.Choice best = r.best().orElseThrow();
            assertTrue(best.worstDeviation() <= r.rounded().orElseThrow().worstDeviation() + 1e-9);
            assertEquals(points <= 6, best.complete());
            for (int i = 0; i < q.rows().size(); i++) {
                assertEquals(
                        q.rows().get(i).gapAfterMm(best.move(), MIDDLE),
                        best.gapsMm().get(i),
                        1e-9,
                        "seed " + seed);
            }
        }
    }

    @Test
    void should_come_back_to_the_move_when_the_exact_shims_are_put_in() {
        for (long seed = 1; seed <= 8; seed++) {
            ShimQuestion q = seeded(seed, 3);
            List<Double> exact = ShimCalculator.calculate(q).exactMm();
            if (exact.stream().anyMatch(s -> s <= 0)) {
                continue;
            }
            ShimResult.Choice best = ShimCalculator.calculate(new ShimQuestion(
                            q.points(), q.move(), MIDDLE, Optional.of(new ShimStock(exact, 1, 0)), q.rows()))
                    .rounded()
                    .orElseThrow();
            assertEquals(q.move().dxMm(), best.move().dxMm(), 1e-9);
            assertEquals(q.move().dyMm(), best.move().dyMm(), 1e-9);
            assertEquals(q.move().turnRad(), best.move().turnRad(), 1e-12);
        }
    }
}
