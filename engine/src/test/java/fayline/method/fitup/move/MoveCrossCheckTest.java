package fayline.method.fitup.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.Move;
import fayline.method.fitup.motion.Determinacy;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Our own cases, each solved once by other programs; what solved it stands in the case. */
class MoveCrossCheckTest {
    private static FitCase read(String name) {
        return FitCase.read("crosscheck/fitup/" + name);
    }

    private static void holds(FitCase c, Node wanted, Move m) {
        c.holds("dx", wanted, m.dxMm());
        c.holds("dy", wanted, m.dyMm());
        c.holds("thetaDeg", wanted, m.turnDeg());
    }

    @Test
    void should_warn_with_its_standard_error_when_a_motion_is_weak() {
        FitCase c = read("M01-weak-move");
        List<Double> u = c.inputs().get("stations").items().stream()
                .map(s -> s.number("uReading"))
                .toList();
        BestMoveResult r = BestMoveCalculator.calculate(MoveCase.question(c).withUncertainties(u));
        Node e = c.expected();
        Determinacy d = r.determinacy();
        assertEquals(e.number("rank"), d.rank());
        c.holds("singularValuesScaled", e, d.singularValues());
        c.holds("scaleLength", e, d.scaleLengthMm());
        Determinacy.WeakMotion w = d.weak().orElseThrow();
        Node weak = e.get("weak");
        c.holds("ratio", weak, w.ratio());
        holds(c, weak.get("direction"), w.direction());
        c.holds("standardError", weak, r.weakStandardErrorMm().orElseThrow());
        assertTrue(r.findings().stream().anyMatch(f -> f.sentence().contains("standard error is 4.02 mm")));
    }

    @Test
    void should_refuse_when_the_part_lies_too_far_forward() {
        FitCase c = read("M02-move-too-large");
        BestMoveResult r = BestMoveCalculator.calculate(MoveCase.question(c));
        assertEquals(c.expected().text("status"), r.status().name());
        assertEquals(c.expected().number("rank"), r.determinacy().rank());
        c.holds("dx", c.expected().get("refusedMove"), r.refused().orElseThrow().dxMm());
    }

    @Test
    void should_find_the_best_of_the_rigid_part_when_straight_lines_are_too_far_off() {
        FitCase c = read("M03-relinearisation");
        BestMoveResult r = BestMoveCalculator.calculate(MoveCase.question(c));
        MinimaxMove best = r.minimax().orElseThrow();
        assertTrue(best.straightErrorMm() > 0.02);
        assertTrue(best.rounds() > 0);
        Node m = c.expected().get("minimax");
        c.holds("worstDeviation", m, best.worstDeviation());
        holds(c, m.get("move"), best.move());
        c.holds("gaps", m, best.gapsMm());
        c.holds("gaps", m, best.exactGapsMm());
        LeastSquaresMove even = r.leastSquares().orElseThrow();
        Node s = c.expected().get("leastSquares");
        holds(c, s.get("move"), even.move());
        c.holds("sumSquares", s, even.sumSquares());
        c.holds("gaps", s, even.gapsMm());
    }

    @ParameterizedTest
    @ValueSource(strings = {"M04-two-parallel-edges", "M05-normals-through-one-point"})
    void should_leave_the_unknown_motion_alone_when_the_layout_is_poor(String name) {
        FitCase c = read(name);
        Node e = c.expected();
        BestMoveResult r = BestMoveCalculator.calculate(MoveCase.question(c));
        Determinacy d = r.determinacy();
        assertEquals(e.number("rank"), d.rank());
        c.holds("singularValuesScaled", e, d.singularValues());
        c.holds("scaleLength", e, d.scaleLengthMm());
        holds(
                c,
                e.get("undetermined").items().get(0).get("direction"),
                d.free().get(0).direction());
        Node min = e.get("MIN_NORM");
        holds(c, min.get("leastSquaresMove"), d.minimumNorm());
        holds(c, min.get("leastSquaresMove"), r.leastSquares().orElseThrow().move());
        c.holds("leastSquaresSumSquares", min, d.minimumNormSumSquares());
        c.holds("minimaxWorstDeviation", min, r.minimax().orElseThrow().worstDeviation());
        assertEquals(min.text("status"), r.status().name());
    }
}
