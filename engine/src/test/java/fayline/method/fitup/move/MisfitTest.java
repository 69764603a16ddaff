package fayline.method.fitup.move;

import static fayline.method.fitup.move.MoveCase.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Finding;
import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Proofs that no move can do it, worked by hand. */
class MisfitTest {
    @Test
    void should_prove_it_when_a_part_is_too_long() {
        BestMoveResult r =
                BestMoveCalculator.calculate(MoveCase.question(FitCase.read("checks/fitup/F04-oversize-part")));
        Misfit m = r.misfits().get(0);
        assertTrue(m.partTooLarge());
        assertEquals(4.8, m.haveMm(), 1e-9);
        assertEquals(5.0, m.needMm(), 1e-9);
        assertEquals(List.of("S3", "S8"), m.stations());
        assertTrue(
                r.findings().stream()
                        .map(Finding::sentence)
                        .anyMatch(s -> s.contains("2.10 + 2.70 = 4.80 mm, needs 5.00 mm: no move can do it")),
                r.findings().toString());
    }

    @Test
    void should_prove_it_by_a_weighed_sum_when_no_two_gaps_face_each_other() {
        // A triangle: three gaps along normals 120 degrees apart, 300 mm out. Their sum never changes: 6.3, needs 7.5.
        List<FitRow> rows = new ArrayList<>();
        for (int k = 0; k < 3; k++) {
            double a = Math.toRadians(90 + 120 * k);
            rows.add(row("S" + k, 300 * Math.cos(a), 300 * Math.sin(a), Math.cos(a), Math.sin(a), 2.0 + 0.1 * k));
        }
        Misfit m = BestMoveCalculator.calculate(BestMove.of(rows, MoveLimits.of(5, 5, 0.01)))
                .misfits()
                .get(0);
        assertEquals(6.3, m.haveMm(), 1e-9);
        assertEquals(7.5, m.needMm(), 1e-9);
        assertEquals(1.2, m.missingMm(), 1e-9);
    }

    @Test
    void should_prove_that_the_shapes_differ_when_neither_size_is_wrong() {
        // One straight edge, hollow in the middle: half of 2.8 and 2.8 less 4.2 is -1.4, and no move changes it; with
        // ends of at least 2.5 and a middle of at most 3.5 it may be no less than -1.0.
        List<FitRow> rows = List.of(
                row("left", -300, 200, 0, 1, 2.8), row("middle", 0, 200, 0, 1, 4.2), row("right", 300, 200, 0, 1, 2.8));
        BestMoveResult r = BestMoveCalculator.calculate(BestMove.of(rows, MoveLimits.of(5, 5, 0.01)));
        assertEquals(MoveStatus.NO_FIT, r.status());
        Misfit m = r.misfits().get(0);
        assertTrue(m.shape());
        assertEquals(-1.4, m.haveMm(), 1e-9);
        assertEquals(-1.0, m.needMm(), 1e-9);
        assertEquals(List.of("left", "right"), m.counting(false));
        assertEquals(List.of("middle"), m.counting(true));
        assertTrue(
                r.findings().stream()
                        .map(Finding::sentence)
                        .anyMatch(s ->
                                s.startsWith("left, right too small beside middle too large: 0.40 mm between them")),
                r.findings().toString());
    }
}
