package fayline.method.fitup.space;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Phrase;
import fayline.basis.numeric.DenseMatrix;
import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.move.BestMove;
import fayline.method.fitup.move.BestMoveCalculator;
import fayline.method.fitup.move.BestMoveResult;
import fayline.method.fitup.move.LargestMarginCalculator;
import fayline.method.fitup.move.LeastMove;
import fayline.method.fitup.move.LeastMoveCalculator;
import fayline.method.fitup.move.MarginMove;
import fayline.method.fitup.move.Misfit;
import fayline.method.fitup.move.MoveCase;
import fayline.method.fitup.move.MoveFindings;
import fayline.method.fitup.move.MoveReport;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.move.Relaxation;
import fayline.method.fitup.move.RelaxationCalculator;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A flat part put into space, flush all round: every answer about its gaps must be the plane's, in the plane's words. */
class SpaceAsInThePlaneTest {
    /** Gaps in the plane z = 0, and at each station a flush of nought that has room. */
    private static SpaceQuestion lifted(BestMove q) {
        List<SpaceReading> all = new ArrayList<>();
        for (FitRow r : q.rows()) {
            Station s = r.station();
            Vector at = new Vector(s.at().xMm(), s.at().yMm(), 0);
            all.add(new SpaceReading(
                    s.id(),
                    SpaceReading.Kind.GAP,
                    at,
                    new Vector(s.nx(), s.ny(), 0),
                    r.gapMm(),
                    r.lowerMm(),
                    r.nominalMm(),
                    r.upperMm(),
                    r.minimumMm(),
                    r.weight()));
        }
        for (FitRow r : q.rows()) {
            Station s = r.station();
            Vector at = new Vector(s.at().xMm(), s.at().yMm(), 0);
            all.add(SpaceReading.of(s.id(), SpaceReading.Kind.FLUSH, at, new Vector(0, 0, 1), 0, 0)
                    .within(-5, 5));
        }
        MoveLimits l = q.limits();
        return SpaceQuestion.of(
                all,
                new Vector(q.pivot().xMm(), q.pivot().yMm(), 0),
                new SpaceLimits(
                        new SpaceMove(
                                new Vector(l.dxLowMm(), l.dyLowMm(), -5), new Vector(-0.01, -0.01, l.turnLowRad())),
                        new SpaceMove(
                                new Vector(l.dxHighMm(), l.dyHighMm(), 5), new Vector(0.01, 0.01, l.turnHighRad()))));
    }

    private static BestMove plane(String file) {
        return MoveCase.question(FitCase.read("checks/fitup/" + file));
    }

    private static void same(Move plane, SpaceMove space, double within) {
        assertEquals(plane.dxMm(), space.shiftMm().x(), within);
        assertEquals(plane.dyMm(), space.shiftMm().y(), within);
        assertEquals(plane.turnRad(), space.turnRad().z(), within / 300);
        assertEquals(0, space.shiftMm().z(), within);
        assertEquals(0, space.turnRad().x(), within / 300);
        assertEquals(0, space.turnRad().y(), within / 300);
    }

    private static List<String> words(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.sentence().replace("worst reading", "worst gap"))
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "F02-rectangle-uniform-offset",
                "F03-rectangle-pure-rotation",
                "F04-oversize-part",
                "F06-bounds-active",
                "F07-minimum-gap-one-sided",
                "F12-infeasible-hard"
            })
    void should_find_the_move_of_the_plane_and_say_it_in_its_words(String file) {
        BestMove q = plane(file);
        BestMoveResult flat = BestMoveCalculator.calculate(q);
        SpaceMoveResult r = SpaceMoveCalculator.calculate(lifted(q));
        assertEquals(flat.status(), r.status());
        assertEquals(flat.determinacy().rank() + 3, r.determinacy().rank());
        if (flat.minimax().isPresent()) {
            assertEquals(
                    flat.minimax().get().worstDeviation(),
                    r.minimax().orElseThrow().worstDeviation(),
                    1e-8);
            same(
                    flat.leastSquares().orElseThrow().move(),
                    r.leastSquares().orElseThrow().move(),
                    1e-6);
        }
        assertEquals(
                flat.outside().stream().map(BestMoveResult.Outside::station).toList(),
                r.outside().stream().map(SpaceMoveResult.Outside::named).toList());
        assertEquals(
                flat.misfits().stream().map(Misfit::haveMm).toList(),
                r.misfits().stream().map(Misfit::haveMm).toList());
        List<String> told = words(r.findings());
        for (String s : words(flat.findings())) {
            // Which of several equal readings decide is left to the search.
            assertTrue(s.contains("decide") || s.contains("stays the same") || told.contains(s), s + " in " + told);
        }
    }

    @Test
    void should_reach_the_margin_the_least_move_and_the_easing_of_the_plane() {
        BestMove wide = plane("F09-max-margin-asymmetric");
        MarginMove<Move> flat = LargestMarginCalculator.calculate(wide.rows(), wide.pivot(), wide.limits());
        SpaceQuestion q = lifted(wide);
        SpaceRows rows = SpaceRows.of(q.readings(), q.pivot());
        MarginMove<SpaceMove> margin = LargestMarginCalculator.calculate(rows, rows.box(q.limits()));
        assertEquals(flat.marginMm(), margin.marginMm(), 1e-8);
        same(flat.move().orElseThrow(), margin.move().orElseThrow(), 1e-5);

        BestMove nudge = plane("F37-least-move-16");
        LeastMove<Move> small = LeastMoveCalculator.calculate(nudge.rows(), nudge.pivot(), nudge.limits(), 0.1);
        SpaceQuestion lifted = lifted(nudge);
        SpaceRows lines = SpaceRows.of(lifted.readings(), lifted.pivot());
        LeastMove<SpaceMove> least = LeastMoveCalculator.calculate(lines, lines.box(lifted.limits()), 0.1);
        assertEquals(small.normMm(), least.normMm(), 1e-7);
        same(small.move().orElseThrow(), least.move().orElseThrow(), 1e-6);

        BestMove hard = plane("F38-relaxation");
        Relaxation<Move> eased = RelaxationCalculator.calculate(hard.rows(), hard.pivot(), hard.limits());
        Relaxation<SpaceMove> easing =
                SpaceMoveCalculator.calculate(lifted(hard)).relaxation().orElseThrow();
        assertEquals(MoveStatus.INFEASIBLE, easing.status());
        assertEquals(eased.totalMm(), easing.totalMm(), 1e-7);
        assertEquals(
                eased.shares().stream().map(Relaxation.Share::station).toList(),
                easing.shares().stream().map(Relaxation.Share::station).toList());
    }

    /** Readings on a shallow dome, gap and flush at each of eight places. */
    private static List<SpaceReading> dome(SplittableRandom chance) {
        List<SpaceReading> all = new ArrayList<>();
        for (int k = 0; k < 8; k++) {
            double t = 2 * Math.PI * k / 8 + 0.2;
            Vector at = new Vector(300 * Math.cos(t), 200 * Math.sin(t), -60);
            Vector out = new Vector(Math.cos(t) / 300, Math.sin(t) / 200, -0.001);
            all.add(SpaceReading.of("S" + k, SpaceReading.Kind.GAP, at, out, 3 + chance.nextDouble(-0.3, 0.3), 3));
            all.add(SpaceReading.of(
                    "S" + k,
                    SpaceReading.Kind.FLUSH,
                    at,
                    new Vector(0.25 * Math.cos(t), 0.25 * Math.sin(t), 1),
                    chance.nextDouble(-0.2, 0.2),
                    0));
        }
        return all;
    }

    private static double[] numbers(SpaceMove m) {
        Vector s = m.shiftMm();
        Vector t = m.turnRad();
        return new double[] {s.x(), s.y(), s.z(), t.x(), t.y(), t.z()};
    }

    @Test
    void should_know_the_move_as_well_as_readings_changed_one_by_one_tell() {
        // Second calculation: nudge each reading by itself, see how the move follows, and add the squares [jcgm100].
        List<SpaceReading> base = dome(new SplittableRandom(5));
        Vector pivot = new Vector(0, 0, -40);
        List<Double> u = new ArrayList<>();
        for (int i = 0; i < base.size(); i++) {
            u.add(i % 2 == 0 ? 0.06 : 0.1);
        }
        SpaceQuestion q = SpaceQuestion.of(base, pivot, SpaceLimits.WIDEST).withUncertainties(u);
        SpaceMoveResult.Solution s =
                SpaceMoveCalculator.calculate(q).leastSquares().orElseThrow();
        SpaceMoveResult.Known known = s.known().orElseThrow();
        double[][] sum = new double[6][6];
        double[] values = new double[base.size()];
        for (int i = 0; i < base.size(); i++) {
            List<SpaceReading> changed = new ArrayList<>(base);
            changed.set(i, base.get(i).reading(base.get(i).valueMm() + u.get(i)));
            SpaceMoveResult.Solution after = SpaceMoveCalculator.calculate(
                            SpaceQuestion.of(changed, pivot, SpaceLimits.WIDEST))
                    .leastSquares()
                    .orElseThrow();
            double[] a = numbers(after.move());
            double[] b = numbers(s.move());
            for (int p = 0; p < 6; p++) {
                for (int k = 0; k < 6; k++) {
                    sum[p][k] += (a[p] - b[p]) * (a[k] - b[k]);
                }
            }
            for (int k = 0; k < values.length; k++) {
                double own = k == i ? u.get(i) : 0;
                values[k] += Math.pow(after.valuesMm().get(k) - s.valuesMm().get(k) - own, 2);
            }
        }
        DenseMatrix c = known.covariance();
        for (int p = 0; p < 6; p++) {
            for (int k = 0; k < 6; k++) {
                double size = Math.sqrt(c.get(p, p) * c.get(k, k));
                assertEquals(sum[p][k] / size, c.get(p, k) / size, 1e-6);
            }
        }
        for (int k = 0; k < values.length; k++) {
            assertEquals(Math.sqrt(values[k]), known.valueErrorsMm().get(k), 1e-8);
        }
        assertEquals(Math.sqrt(sum[4][4]), known.standardError().turnRad().y(), 1e-10);
    }

    @Test
    void should_say_so_when_a_motion_is_hardly_known_and_give_no_move_when_asked_to_be_strict() {
        // A flat strip 900 by 4 mm with flush on both long edges: the tilt about its length hangs on 4 mm.
        List<SpaceReading> all = new ArrayList<>();
        double[][] at = {{-450, -2}, {450, -2}, {450, 2}, {-450, 2}};
        for (int i = 0; i < at.length; i++) {
            Vector p = new Vector(at[i][0], at[i][1], 0);
            all.add(SpaceReading.of("S" + i, SpaceReading.Kind.FLUSH, p, new Vector(0, 0, 1), 0.1, 0));
            all.add(SpaceReading.of(
                    "S" + i, SpaceReading.Kind.GAP, p, new Vector(0, Math.signum(at[i][1]), 0), 3.1, 3));
            if (i < 2) {
                all.add(SpaceReading.of(
                        "E" + i, SpaceReading.Kind.GAP, p, new Vector(Math.signum(at[i][0]), 0, 0), 3, 3));
            }
        }
        List<Double> u = Collections.nCopies(all.size(), 0.1);
        SpaceQuestion q = SpaceQuestion.of(all, Vector.ZERO, SpaceLimits.WIDEST).withUncertainties(u);
        SpaceMoveResult r = SpaceMoveCalculator.calculate(q);
        SpaceDeterminacy.WeakMotion weak = r.determinacy().weak().orElseThrow();
        assertEquals(0.1 * weak.growth(), r.weakStandardErrorMm().orElseThrow(), 1e-9);
        assertTrue(
                words(r.findings()).stream()
                        .anyMatch(s -> s.startsWith("The turn about a line fore and aft through")
                                && s.contains("is hardly measured")
                                && s.contains("Its standard error is")),
                r.findings().toString());
        assertEquals(6, r.determinacy().rank());
        List<SpaceReading> gaps =
                all.stream().filter(x -> x.kind() == SpaceReading.Kind.GAP).toList();
        SpaceQuestion open = SpaceQuestion.of(gaps, Vector.ZERO, SpaceLimits.WIDEST);
        assertFalse(SpaceMoveCalculator.calculate(open).determinacy().determined());
        SpaceMoveResult strict = SpaceMoveCalculator.calculate(open.strict());
        assertEquals(MoveStatus.UNDETERMINED_MOVE, strict.status());
        assertTrue(strict.minimax().isEmpty());
    }

    @Test
    void should_doubt_the_reading_that_stands_out() {
        List<SpaceReading> all = dome(new SplittableRandom(9));
        all.replaceAll(r -> r.reading(r.nominalMm()));
        all.set(5, all.get(5).reading(1.4));
        List<Double> u = Collections.nCopies(all.size(), 0.06);
        SpaceMoveResult r = SpaceMoveCalculator.calculate(
                SpaceQuestion.of(all, new Vector(0, 0, -40), SpaceLimits.WIDEST).withUncertainties(u));
        assertTrue(
                words(r.findings()).stream().anyMatch(s -> s.contains("suspect, first of all S2 flush")),
                r.findings().toString());
    }

    @Test
    void should_warn_of_a_move_that_did_not_come_to_rest_and_of_flush_that_cannot_be_right() {
        Misfit flush = new Misfit(true, true, List.of("A", "B flush"), List.of(2.0, -1.0), List.of(1.0, 0.5), 1.5, 2);
        List<String> told = words(MoveFindings.of(new MoveReport(
                MoveStatus.OK,
                "reading",
                List.of(),
                List.of(flush),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                Optional.of(new MoveReport.Weak(Phrase.plain("The turn."), 3, OptionalDouble.empty())),
                Optional.of(new MoveReport.Best(false, List.of("A"), 0.2, 0)),
                Optional.empty())));
        assertTrue(
                told.get(0).endsWith("make 1.50 mm, needs 2.00 mm: no move can do it, 0.50 mm is missing."), told + "");
        assertEquals("The turn. An error of 0.1 mm in the readings may become 0.3 mm there.", told.get(1));
        assertTrue(told.get(2).contains("the move did not come to rest"));
        assertTrue(told.get(3).startsWith("Station A decides the worst gap: read it again"));
    }

    @Test
    void should_prove_it_with_gaps_of_a_curved_part() {
        // Two gaps that face away from each other along a line leaning out: 2.1 + 2.7 of 5.0.
        Vector out = new Vector(0.8, 0, -0.6);
        List<SpaceReading> all = new ArrayList<>(List.of(
                SpaceReading.of("A", SpaceReading.Kind.GAP, out.times(300), out, 2.1, 3)
                        .within(2.5, 3.5),
                SpaceReading.of("B", SpaceReading.Kind.GAP, out.times(-300), out.times(-1), 2.7, 3)
                        .within(2.5, 3.5)));
        SpaceMoveResult r = SpaceMoveCalculator.calculate(SpaceQuestion.of(all, Vector.ZERO, SpaceLimits.WIDEST));
        assertEquals(MoveStatus.NO_FIT, r.status());
        assertEquals(4.8, r.misfits().get(0).haveMm(), 1e-9);
        assertTrue(
                words(r.findings()).stream()
                        .anyMatch(s -> s.contains("2.10 + 2.70 = 4.80 mm, needs 5.00 mm: no move can do it")),
                r.findings().toString());
    }

    @Test
    void should_prove_that_a_part_is_twisted() {
        // Corners 0.4 proud and deep by turns: 0.4 - -0.4 + 0.4 - -0.4 is 1.6 whatever the shift and tilt; 4 times 0.1
        // is allowed.
        List<SpaceReading> all = new ArrayList<>();
        double[][] at = {{-300, -200}, {300, -200}, {300, 200}, {-300, 200}};
        for (int i = 0; i < at.length; i++) {
            Vector p = new Vector(at[i][0], at[i][1], 0);
            all.add(SpaceReading.of(
                            "S" + i, SpaceReading.Kind.FLUSH, p, new Vector(0, 0, 1), i % 2 == 0 ? 0.4 : -0.4, 0)
                    .within(-0.1, 0.1));
        }
        SpaceMoveResult r = SpaceMoveCalculator.calculate(SpaceQuestion.of(all, Vector.ZERO, SpaceLimits.WIDEST));
        Misfit m = r.misfits().get(0);
        assertTrue(m.shape());
        assertEquals(1.6 - 0.4, m.missingMm(), 1e-9);
        assertEquals(List.of("S1 flush", "S3 flush"), m.counting(false));
        assertEquals(List.of("S0 flush", "S2 flush"), m.counting(true));
        assertTrue(
                words(r.findings()).stream().anyMatch(s -> s.contains("The shapes differ, or a reading is wrong.")),
                r.findings().toString());
    }
}
