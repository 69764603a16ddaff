package fayline.method.fitup.move;

import static fayline.method.fitup.move.MoveCase.holds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference cases of the other aims of a move in the plane: largest margin, least move, least easing of minimum gaps. */
class MoveAimsTest {
    @Test
    void should_match_the_reference_case_when_the_margin_counts() {
        FitCase c = FitCase.read("checks/fitup/F09-max-margin-asymmetric");
        MarginMove<Move> m = LargestMarginCalculator.calculate(
                MoveCase.rows(c.inputs()), MoveCase.pivot(c.inputs()), MoveCase.limits(c.inputs()));
        c.holds("margin", c.expected(), m.marginMm());
        assertEquals(MoveStatus.OK, m.status());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < m.gapsMm().size(); i++) {
            FitRow row = MoveCase.rows(c.inputs()).get(i);
            least = Math.min(
                    least,
                    Math.min(
                            m.gapsMm().get(i) - row.lowerMm(),
                            row.upperMm() - m.gapsMm().get(i)));
        }
        assertEquals(m.marginMm(), least, 1e-8);
        assertFalse(m.deciding().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(strings = {"F36-least-move-hand", "F37-least-move-16"})
    void should_match_the_reference_case_when_the_least_move_is_sought(String file) {
        FitCase c = FitCase.read("checks/fitup/" + file);
        double guard = c.inputs().get("guard").isThere() ? c.inputs().number("guard") : 0;
        LeastMove<Move> m = LeastMoveCalculator.calculate(
                MoveCase.rows(c.inputs()), MoveCase.pivot(c.inputs()), MoveCase.limits(c.inputs()), guard);
        assertEquals(c.expected().text("status"), m.status().name());
        holds(c, c.expected().get("move"), m.move().orElseThrow(), true);
        c.holds("scaledNorm", c.expected(), m.normMm());
        c.holds("scaleLength", c.expected(), m.scaleLengthMm());
        c.holds("gaps", c.expected(), m.gapsMm());
    }

    @Test
    void should_match_the_reference_case_when_minimum_gaps_contradict_each_other() {
        FitCase c = FitCase.read("checks/fitup/F38-relaxation");
        Relaxation<Move> r = RelaxationCalculator.calculate(
                MoveCase.rows(c.inputs()), MoveCase.pivot(c.inputs()), MoveCase.limits(c.inputs()));
        c.holds("totalRelaxation", c.expected(), r.totalMm());
        assertEquals(MoveStatus.INFEASIBLE, r.status());
        assertTrue(r.shares().stream()
                .allMatch(s -> List.of("S3", "S4", "S7", "S8").contains(s.station())));
        FitCase hard = FitCase.read("checks/fitup/F12-infeasible-hard");
        BestMoveResult b = BestMoveCalculator.calculate(MoveCase.question(hard));
        assertEquals(hard.expected().text("status"), b.status().name());
        assertTrue(b.minimax().isEmpty());
        // 2.8 + 2.8 against 2.1 + 2.7 at two heights.
        assertEquals(1.6, b.relaxation().orElseThrow().totalMm(), 1e-9);
    }

    @Test
    void should_say_no_fit_when_no_least_move_is_enough() {
        FitCase c = FitCase.read("checks/fitup/F04-oversize-part");
        BestMove q = MoveCase.question(c);
        LeastMove<Move> m = LeastMoveCalculator.calculate(q.rows(), q.pivot(), q.limits(), 0);
        assertEquals(MoveStatus.NO_FIT, m.status());
        MarginMove<Move> g = LargestMarginCalculator.calculate(q.rows(), q.pivot(), q.limits());
        assertEquals(MoveStatus.NO_FIT, g.status());
        assertEquals(-0.1, g.marginMm(), 1e-9);
        FitCase hard = FitCase.read("checks/fitup/F12-infeasible-hard");
        BestMove h = MoveCase.question(hard);
        assertEquals(
                MoveStatus.INFEASIBLE,
                LeastMoveCalculator.calculate(h.rows(), h.pivot(), h.limits(), 0)
                        .status());
        assertEquals(
                MoveStatus.INFEASIBLE,
                LargestMarginCalculator.calculate(h.rows(), h.pivot(), h.limits())
                        .status());
    }
}
