package fayline.method.fitup.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The poor layouts, each with the motion it cannot know, by geometry. */
class DeterminacyTest {
    private static FitRow row(String id, double x, double y, double nx, double ny) {
        return FitRow.of(new Station(id, new Spot(x, y), nx, ny), 3.2, 2.5, 3, 3.5);
    }

    private static Determinacy of(Spot pivot, FitRow... rows) {
        Determinacy d = DeterminacyCalculator.calculate(List.of(rows), pivot);
        MoveRows straight = MoveRows.of(List.of(rows), pivot);
        for (Determinacy.FreeMotion f : d.free()) {
            // A free motion changes no gap.
            for (double g : straight.valuesMm(f.direction())) {
                assertEquals(3.2, g, 1e-9);
            }
        }
        return d;
    }

    @Test
    void should_miss_the_slide_when_two_edges_are_parallel() {
        Determinacy d = of(
                new Spot(0, 0),
                row("A", -300, 200, 0, 1),
                row("B", 300, 200, 0, 1),
                row("C", -300, -200, 0, -1),
                row("D", 300, -200, 0, -1));
        assertEquals(2, d.rank());
        assertEquals(new Move(1, 0, 0), d.free().get(0).direction());
        assertTrue(d.free().get(0).meaning().toString().contains("nothing is measured fore or aft"));
    }

    @Test
    void should_tell_the_slope_when_the_edge_is_neither_level_nor_upright() {
        double a = Math.toRadians(30);
        Determinacy d = of(
                new Spot(0, 0),
                row("A", 0, 0, -Math.sin(a), Math.cos(a)),
                row("B", 100 * Math.cos(a), 100 * Math.sin(a), -Math.sin(a), Math.cos(a)));
        assertEquals(2, d.rank());
        assertTrue(
                d.free().get(0).meaning().toString().contains("30 deg off level"),
                d.free().get(0).meaning().toString());
    }

    @Test
    void should_miss_the_turn_about_the_crossing_when_there_are_two_stations() {
        // Gap lines y = 50 and x = -80 cross at (-80, 50), which must stay where it is.
        Determinacy d = of(new Spot(10, 20), row("A", 300, 50, 1, 0), row("B", -80, 200, 0, 1));
        assertEquals(2, d.rank());
        Move m = d.free().get(0).direction();
        Spot after =
                new Move(m.dxMm() / 1000, m.dyMm() / 1000, m.turnRad() / 1000).of(new Spot(-80, 50), new Spot(10, 20));
        assertEquals(-80, after.xMm(), 1e-6);
        assertEquals(50, after.yMm(), 1e-6);
        assertTrue(
                d.free().get(0).meaning().toString().contains("x -80 mm, y 50 mm"),
                d.free().get(0).meaning().toString());
    }

    @Test
    void should_miss_two_motions_when_there_is_one_station() {
        Determinacy d = of(new Spot(0, 0), row("A", 300, 50, 1, 0));
        assertEquals(1, d.rank());
        assertEquals(2, d.free().size());
        assertEquals(new Move(0, 1, 0), d.free().get(0).direction());
        assertTrue(d.free().get(0).meaning().toString().contains("up or down"));
        assertTrue(d.free().get(1).direction().turnRad() != 0);
    }

    @Test
    void should_leave_the_round_part_alone_when_it_is_round() {
        List<FitRow> rows = new ArrayList<>();
        for (int k = 0; k < 7; k++) {
            double t = 2 * Math.PI * k / 7;
            rows.add(row("S" + k, 40 + 110 * Math.cos(t), 110 * Math.sin(t), Math.cos(t), Math.sin(t)));
        }
        Determinacy d = of(new Spot(0, 0), rows.toArray(FitRow[]::new));
        assertEquals(2, d.rank());
        assertTrue(d.free().get(0).meaning().toString().contains("turn it as you like"));
        assertTrue(d.weak().isEmpty());
    }

    @Test
    void should_warn_of_the_turn_when_the_gaps_lie_close_together() {
        Determinacy d = DeterminacyCalculator.calculate(
                List.of(
                        row("A", 300, 1, 1, 0),
                        row("B", 300, -1, 1, 0),
                        row("C", 0, 200, 0, 1),
                        row("D", 0, -200, 0, -1)),
                new Spot(0, 0));
        assertEquals(3, d.rank());
        assertTrue(d.weak().orElseThrow().meaning().toString().contains("lie farther apart"));
        assertTrue(d.weak().orElseThrow().direction().turnRad() != 0);
    }
}
