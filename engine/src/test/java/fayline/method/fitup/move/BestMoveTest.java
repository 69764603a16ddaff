package fayline.method.fitup.move;

import static fayline.method.fitup.move.MoveCase.LOOSE;
import static fayline.method.fitup.move.MoveCase.holds;
import static fayline.method.fitup.move.MoveCase.row;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Finding;
import fayline.basis.numeric.LinearProgram;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.Determinacy;
import fayline.method.fitup.motion.DeterminacyCalculator;
import fayline.method.fitup.motion.GapsAfterMove;
import fayline.method.fitup.motion.GapsAfterMoveCalculator;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference cases of the plane move, and cases worked by hand beside them. */
class BestMoveTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "F02-rectangle-uniform-offset",
                "F03-rectangle-pure-rotation",
                "F04-oversize-part",
                "F05-window-16-stations",
                "F06-bounds-active",
                "F07-minimum-gap-one-sided",
                "F08-weighted-by-tolerance"
            })
    void should_match_the_reference_case_when_a_move_is_sought(String file) {
        // Another solver's answers (dual simplex for the worst gap, Lawson-Hanson for least squares), see each case's
        // basis.
        FitCase c = FitCase.read("checks/fitup/" + file);
        Node e = c.expected();
        BestMoveResult r = BestMoveCalculator.calculate(MoveCase.question(c));
        MinimaxMove best = r.minimax().orElseThrow();
        Node m = e.get("minimax");
        boolean unique = m.yes("optimumUnique");
        assertEquals(unique, best.unique());
        c.holds("worstDeviation", m, best.worstDeviation());
        holds(c, m.get("move"), best.move(), unique);
        for (int i = 0; i < best.gapsMm().size(); i++) {
            assertEquals(m.get("gaps").numbers().get(i), best.gapsMm().get(i), unique ? 1e-4 : LOOSE);
        }
        LeastSquaresMove even = r.leastSquares().orElseThrow();
        Node s = e.get("leastSquares");
        holds(c, s.get("move"), even.move(), true);
        c.holds("sumSquares", s, even.sumSquares());
        c.holds("worstDeviation", s, even.worstDeviation());
        c.holds("linearisationError", s, even.straightErrorMm());
        c.holds("gaps", s, even.gapsMm());
        assertEquals(e.number("rank"), r.determinacy().rank());
        assertEquals(e.text("status"), r.status().name());
        if (e.get("outOfTolerance").isThere()) {
            assertEquals(
                    e.get("outOfTolerance").texts(),
                    r.outside().stream().map(BestMoveResult.Outside::station).toList());
        }
    }

    @Test
    void should_match_the_reference_case_when_a_move_is_given() {
        FitCase c = FitCase.read("checks/fitup/F01-gap-forward-rectangle");
        Node m = c.inputs().get("move");
        GapsAfterMove g = GapsAfterMoveCalculator.calculate(
                MoveCase.rows(c.inputs()),
                MoveCase.pivot(c.inputs()),
                new Move(m.number("dx"), m.number("dy"), Math.toRadians(m.number("thetaDeg"))));
        c.holds("gapsLinear", c.expected(), g.straightMm());
        c.holds("gapsExact", c.expected(), g.exactMm());
        c.holds("maxLinearisationError", c.expected(), g.largestErrorMm());
    }

    @ParameterizedTest
    @ValueSource(strings = {"F10-degenerate-one-edge", "F11-degenerate-round-hatch"})
    void should_match_the_reference_case_when_a_motion_is_not_known(String file) {
        FitCase c = FitCase.read("checks/fitup/" + file);
        Node e = c.expected();
        BestMove question = MoveCase.question(c);
        Determinacy d = DeterminacyCalculator.calculate(question.rows(), question.pivot());
        assertEquals(e.number("rank"), d.rank());
        c.holds("singularValuesScaled", e, d.singularValues());
        c.holds("scaleLength", e, d.scaleLengthMm());
        Node free = e.get("undetermined").items().get(0).get("direction");
        assertEquals(1, d.free().size());
        Move direction = d.free().get(0).direction();
        assertEquals(free.number("dx"), direction.dxMm(), 1e-9);
        assertEquals(free.number("dy"), direction.dyMm(), 1e-9);
        assertEquals(free.number("thetaDeg"), direction.turnDeg(), 1e-9);
        Node min = e.get("MIN_NORM");
        holds(c, min.get("leastSquaresMove"), d.minimumNorm(), true);
        c.holds("leastSquaresSumSquares", min, d.minimumNormSumSquares());
        BestMoveResult r = BestMoveCalculator.calculate(question);
        assertEquals(min.text("status"), r.status().name());
        assertTrue(r.undetermined());
        c.holds("minimaxWorstDeviation", min, r.minimax().orElseThrow().worstDeviation());
        holds(c, min.get("leastSquaresMove"), r.leastSquares().orElseThrow().move(), true);
        BestMoveResult strict = BestMoveCalculator.calculate(
                new BestMove(question.rows(), question.pivot(), question.limits(), List.of(), BestMove.Policy.STRICT));
        assertEquals(e.get("STRICT").text("status"), strict.status().name());
        assertTrue(strict.minimax().isEmpty());
    }

    @Test
    void should_share_what_cannot_be_reached_when_a_side_panel_is_too_short() {
        // Common practice, no source: 3 mm wanted; front 3.0 low and 2.3 high, rear 4.0 both. 7.0 shared low, 6.3 high.
        List<FitRow> rows = List.of(
                row("front low", -400, -150, -1, 0, 3.0),
                row("front high", -400, 150, -1, 0, 2.3),
                row("rear low", 400, -150, 1, 0, 4.0),
                row("rear high", 400, 150, 1, 0, 4.0));
        BestMoveResult r = BestMoveCalculator.calculate(BestMove.of(rows, MoveLimits.of(5, 5, Math.toRadians(1))));
        MinimaxMove best = r.minimax().orElseThrow();
        assertEquals(0.5, best.worstDeviation(), 1e-9);
        assertEquals(3.5, best.gapsMm().get(0), 1e-6);
        assertEquals(3.15, best.gapsMm().get(1), 1e-6);
        assertEquals(3.5, best.gapsMm().get(2), 1e-6);
        assertEquals(3.15, best.gapsMm().get(3), 1e-6);
        // Low 0.5 aft, high 0.85 aft over 300 mm of height: the top goes aft by 0.35 in 300, nose-up on the left side.
        assertEquals(-0.35 / 300, best.move().turnRad(), 1e-8);
        assertEquals(0.675, best.move().dxMm(), 1e-6);
        assertEquals(0, best.move().dyMm(), 1e-9);
        assertEquals(2, r.determinacy().rank());
    }

    @Test
    void should_straighten_anew_when_the_turn_is_large() {
        // Fed back from an exact rigid motion of 1.2 deg and 3 mm: the move must bring every exact gap to 3.000.
        Move wanted = new Move(3, -2, Math.toRadians(1.2));
        List<FitRow> rows = rectangle(wanted);
        BestMoveResult r = BestMoveCalculator.calculate(
                new BestMove(rows, new Spot(0, 0), MoveLimits.WIDEST, List.of(), BestMove.Policy.MIN_NORM));
        MinimaxMove best = r.minimax().orElseThrow();
        assertTrue(best.straightErrorMm() > 0.02, "first error " + best.straightErrorMm());
        assertTrue(best.rounds() >= 1 && best.rounds() <= 5);
        assertEquals(3, best.move().dxMm(), 1e-6);
        assertEquals(-2, best.move().dyMm(), 1e-6);
        assertEquals(1.2, best.move().turnDeg(), 1e-7);
        for (double g : best.exactGapsMm()) {
            assertEquals(3, g, 1e-6);
        }
        assertEquals(1.2, r.leastSquares().orElseThrow().move().turnDeg(), 1e-7);
    }

    @Test
    void should_refuse_when_the_move_is_too_large() {
        MoveLimits wide = MoveLimits.of(50, 50, Math.toRadians(10));
        for (Move far : List.of(new Move(8, 8, 0), new Move(0, 0, Math.toRadians(2.5)))) {
            for (MoveLimits limits : List.of(wide, MoveLimits.WIDEST)) {
                boolean stopped = limits.equals(MoveLimits.WIDEST) && far.dxMm() > 0;
                BestMoveResult r = BestMoveCalculator.calculate(
                        new BestMove(rectangle(far), new Spot(0, 0), limits, List.of(), BestMove.Policy.MIN_NORM));
                assertEquals(MoveStatus.MOVE_TOO_LARGE, r.status(), far + " " + stopped);
                assertTrue(r.minimax().isEmpty());
                assertTrue(r.refused().isPresent());
                assertTrue(r.findings().get(0).sentence().contains("wrong place"));
            }
        }
        assertEquals(
                MoveStatus.OK,
                BestMoveCalculator.calculate(new BestMove(
                                rectangle(new Move(6, 6, 0)),
                                new Spot(0, 0),
                                wide,
                                List.of(),
                                BestMove.Policy.MIN_NORM))
                        .status());
    }

    @Test
    void should_say_so_when_a_motion_is_hardly_known() {
        // Four gaps face up and down, one leans 1 degree: dx is known only through sin 1 deg = 0.01745.
        double lean = Math.toRadians(1);
        List<FitRow> rows = List.of(
                row("A", -300, 200, 0, 1, 3.2),
                row("B", 300, 200, 0, 1, 3.1),
                row("C", -300, -200, 0, -1, 2.9),
                row("D", 300, -200, 0, -1, 2.8),
                row("E", 0, 200, Math.sin(lean), Math.cos(lean), 3.1));
        BestMove q = BestMove.of(rows, MoveLimits.WIDEST).withUncertainties(List.of(0.1, 0.1, 0.1, 0.1, 0.1));
        BestMoveResult r = BestMoveCalculator.calculate(q);
        Determinacy.WeakMotion w = r.determinacy().weak().orElseThrow();
        assertTrue(w.ratio() < 0.02);
        assertTrue(w.meaning().toString().contains("fore or aft"), w.meaning().toString());
        // The standard error along dx is u over sin(lean) and a little more for what E shares with the others.
        double s = r.weakStandardErrorMm().orElseThrow();
        assertTrue(s > 0.1 / Math.sin(lean) && s < 0.13 / Math.sin(lean), "standard error " + s);
        assertEquals(
                s,
                0.1 * w.growth(),
                1e-9,
                "all readings alike: the error grows by one over the smallest singular value");
        assertFalse(r.undetermined());
    }

    @Test
    void should_name_the_suspect_when_one_reading_stands_out() {
        List<FitRow> rows = new ArrayList<>(rectangle(Move.NONE));
        rows.set(2, rows.get(2).withGap(4.6));
        List<Double> u = rows.stream().map(x -> 0.06).toList();
        BestMoveResult r = BestMoveCalculator.calculate(
                BestMove.of(rows, MoveLimits.WIDEST).withUncertainties(u));
        assertTrue(
                r.findings().stream()
                        .map(Finding::sentence)
                        .anyMatch(s -> s.contains("suspect")
                                && s.contains(rows.get(2).station().id())),
                r.findings().toString());
        BestMoveResult calm = BestMoveCalculator.calculate(
                BestMove.of(rectangle(new Move(0.4, 0.1, 0)), MoveLimits.WIDEST).withUncertainties(u));
        assertTrue(calm.findings().stream().map(Finding::sentence).noneMatch(s -> s.contains("suspect")));
    }

    @Test
    void should_be_the_inverse_normal_matrix_when_weights_are_one_over_the_uncertainty() {
        // Two gaps on x, two pairs on y at ±300: Cov(dx) = u²/2, Cov(dy) = u²/4, Cov(turn) = u²/(4 · 300²).
        double u = 0.1;
        List<FitRow> rows = new ArrayList<>();
        for (FitRow r : List.of(
                row("a", 400, 0, 1, 0, 3),
                row("b", -400, 0, -1, 0, 3),
                row("c", 300, 200, 0, 1, 3),
                row("d", -300, 200, 0, 1, 3),
                row("e", 300, -200, 0, -1, 3),
                row("f", -300, -200, 0, -1, 3))) {
            rows.add(new FitRow(
                    r.station(), r.gapMm(), r.lowerMm(), r.nominalMm(), r.upperMm(), r.minimumMm(), 1 / u, ""));
        }
        List<Double> all = rows.stream().map(r -> u).toList();
        Move e = BestMoveCalculator.calculate(
                        BestMove.of(rows, MoveLimits.WIDEST).withUncertainties(all))
                .leastSquares()
                .orElseThrow()
                .standardError()
                .orElseThrow();
        assertEquals(u / Math.sqrt(2), e.dxMm(), 1e-9);
        assertEquals(u / 2, e.dyMm(), 1e-9);
        assertEquals(u / 600, e.turnRad(), 1e-12);
    }

    @Test
    void should_name_what_decides_when_the_worst_gap_is_looked_at() {
        BestMoveResult r =
                BestMoveCalculator.calculate(MoveCase.question(FitCase.read("checks/fitup/F05-window-16-stations")));
        List<MinimaxMove.Deciding> d = r.minimax().orElseThrow().deciding();
        assertEquals(
                List.of("S1", "S3", "S5"),
                d.stream().map(MinimaxMove.Deciding::station).toList());
        assertEquals(
                List.of(true, false, true),
                d.stream().map(MinimaxMove.Deciding::tight).toList());
        assertEquals(1, d.stream().mapToDouble(MinimaxMove.Deciding::share).sum(), 1e-9);
        assertTrue(r.minimax().orElseThrow().play().dxMm() > 0.1);
        BestMoveResult held =
                BestMoveCalculator.calculate(MoveCase.question(FitCase.read("checks/fitup/F06-bounds-active")));
        assertTrue(held.minimax().orElseThrow().holding().stream()
                .anyMatch(h -> h.what() == MinimaxMove.Limit.SHIFT_X && h.most()));
    }

    @Test
    void should_agree_with_the_other_solver_when_there_are_two_thousand_stations() {
        // A superellipse of 2000 stations by formula; the answer of a general simplex on the rows that decide must be
        // no better.
        List<FitRow> rows = new ArrayList<>();
        SplittableRandom chance = new SplittableRandom(2000);
        for (int k = 0; k < 2000; k++) {
            double t = 2 * Math.PI * k / 2000;
            double c = Math.cos(t);
            double s = Math.sin(t);
            double x = 520 * Math.signum(c) * Math.sqrt(Math.abs(c));
            double y = 330 * Math.signum(s) * Math.sqrt(Math.abs(s));
            double nx = Math.pow(Math.abs(x) / 520, 3) * Math.signum(x) / 520;
            double ny = Math.pow(Math.abs(y) / 330, 3) * Math.signum(y) / 330;
            rows.add(row(
                    String.format(Locale.ROOT, "S%d", k), x, y, nx, ny, 3 + 0.6 * c + chance.nextDouble(-0.25, 0.25)));
        }
        BestMoveResult r = BestMoveCalculator.calculate(BestMove.of(rows, MoveLimits.of(5, 5, Math.toRadians(1))));
        MinimaxMove best = r.minimax().orElseThrow();
        List<FitRow> few = rows.stream()
                .filter(x -> best.deciding().stream()
                        .anyMatch(d -> d.station().equals(x.station().id())))
                .toList();
        assertTrue(few.size() <= 4);
        LinearProgram.Builder p = LinearProgram.of(4);
        Spot pivot = Station.middle(rows.stream().map(FitRow::station).toList());
        for (FitRow f : few) {
            double[] a = {f.station().nx(), f.station().ny(), f.station().leverMm(pivot), 1};
            p.row(a.clone(), f.gapMm() - f.nominalMm(), Double.POSITIVE_INFINITY);
            a[3] = -1;
            p.row(a, Double.NEGATIVE_INFINITY, f.gapMm() - f.nominalMm());
        }
        assertEquals(best.worstDeviation(), p.build().minimise(0, 0, 0, 1).value(), 1e-9);
        assertTrue(best.worstDeviation() <= r.leastSquares().orElseThrow().worstDeviation());
        assertTrue(best.unique());
    }

    @Test
    void should_refuse_when_the_caller_is_wrong() {
        assertThrows(IllegalArgumentException.class, () -> BestMove.of(List.of(), MoveLimits.WIDEST));
        FitRow r = row("A", 0, 0, 1, 0, 3);
        assertThrows(
                IllegalArgumentException.class,
                () -> BestMoveCalculator.calculate(BestMove.of(List.of(r, r), MoveLimits.WIDEST)));
        assertThrows(
                IllegalArgumentException.class,
                () -> BestMove.of(List.of(r), MoveLimits.WIDEST).withUncertainties(List.of(0.1, 0.1)));
        assertThrows(
                IllegalArgumentException.class,
                () -> BestMove.of(List.of(r), MoveLimits.WIDEST).withUncertainties(List.of(-0.1)));
    }

    /** Eight stations on a rectangle, read so that a rigid motion brings every gap to 3 exactly. */
    private static List<FitRow> rectangle(Move wanted) {
        List<FitRow> rows = new ArrayList<>();
        double[][] at = {
            {-192, -210, 0, -1}, {192, -210, 0, -1}, {320, -105, 1, 0}, {320, 105, 1, 0},
            {192, 210, 0, 1}, {-192, 210, 0, 1}, {-320, 105, -1, 0}, {-320, -105, -1, 0}
        };
        for (int i = 0; i < at.length; i++) {
            Spot p = new Spot(at[i][0], at[i][1]);
            Spot q = wanted.of(p, new Spot(0, 0));
            double gap = 3 + at[i][2] * (q.xMm() - p.xMm()) + at[i][3] * (q.yMm() - p.yMm());
            rows.add(row("S" + (i + 1), at[i][0], at[i][1], at[i][2], at[i][3], gap));
        }
        return rows;
    }
}
