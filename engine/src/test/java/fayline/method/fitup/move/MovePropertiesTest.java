package fayline.method.fitup.move;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.motion.MoveWords;
import fayline.method.fitup.motion.Side;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** What holds for every part, on seeded random ones. */
class MovePropertiesTest {
    private static final MoveLimits LIMITS = MoveLimits.of(6, 6, Math.toRadians(1.5));

    private static List<FitRow> drawn(SplittableRandom chance, Move wanted, double noise) {
        int n = 6 + chance.nextInt(18);
        double a = chance.nextDouble(200, 600);
        double b = chance.nextDouble(120, 400);
        List<FitRow> rows = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            double t = 2 * Math.PI * (k + chance.nextDouble(-0.3, 0.3)) / n;
            Spot p = new Spot(a * Math.cos(t), b * Math.sin(t));
            Station s = new Station("S" + k, p, Math.cos(t) / a, Math.sin(t) / b);
            Spot q = wanted.of(p, new Spot(0, 0));
            double gap = 3 + s.nx() * (q.xMm() - p.xMm()) + s.ny() * (q.yMm() - p.yMm());
            rows.add(FitRow.of(s, gap + noise * chance.nextDouble(-1, 1), 2.5, 3, 3.5));
        }
        return rows;
    }

    private static Move draw(SplittableRandom chance) {
        return new Move(
                chance.nextDouble(-3, 3), chance.nextDouble(-3, 3), Math.toRadians(chance.nextDouble(-0.8, 0.8)));
    }

    private static BestMove question(List<FitRow> rows, Spot pivot) {
        return new BestMove(rows, pivot, LIMITS, List.of(), BestMove.Policy.MIN_NORM);
    }

    @Test
    void should_undo_a_known_motion_when_it_is_fed_back() {
        SplittableRandom chance = new SplittableRandom(1);
        for (int k = 0; k < 60; k++) {
            Move wanted = draw(chance);
            BestMoveResult r = BestMoveCalculator.calculate(question(drawn(chance, wanted, 0), new Spot(0, 0)));
            // Where the lines were straight enough at once, their error of at most 0.02 mm stays.
            boolean again = r.minimax().orElseThrow().rounds() > 0;
            double close = again ? 1e-5 : 0.15;
            for (Move m : List.of(
                    r.minimax().orElseThrow().move(),
                    r.leastSquares().orElseThrow().move())) {
                assertEquals(wanted.dxMm(), m.dxMm(), close);
                assertEquals(wanted.dyMm(), m.dyMm(), close);
            }
            for (double g : r.minimax().orElseThrow().exactGapsMm()) {
                assertEquals(3, g, again ? 1e-5 : 0.041);
            }
        }
    }

    @Test
    void should_never_be_worse_than_least_squares_when_the_worst_gap_counts() {
        SplittableRandom chance = new SplittableRandom(2);
        for (int k = 0; k < 80; k++) {
            BestMoveResult r = BestMoveCalculator.calculate(question(drawn(chance, draw(chance), 0.4), new Spot(0, 0)));
            MinimaxMove best = r.minimax().orElseThrow();
            LeastSquaresMove even = r.leastSquares().orElseThrow();
            if (best.rounds() == 0 && even.rounds() == 0) {
                assertTrue(best.worstDeviation() <= even.worstDeviation() + 1e-9);
            }
            double worst = best.gapsMm().stream()
                    .mapToDouble(g -> Math.abs(g - 3))
                    .max()
                    .orElseThrow();
            assertEquals(best.worstDeviation(), worst, 1e-8);
        }
    }

    @Test
    void should_be_the_mirror_of_the_answer_when_the_part_is_mirrored() {
        SplittableRandom chance = new SplittableRandom(3);
        MoveWords left = new MoveWords(Side.LEFT, new Spot(0, 0), "the middle");
        MoveWords right = new MoveWords(Side.RIGHT, new Spot(0, 0), "the middle");
        for (int k = 0; k < 40; k++) {
            List<FitRow> rows = drawn(chance, draw(chance), 0.3);
            List<FitRow> other = new ArrayList<>();
            for (FitRow r : rows) {
                Station s = r.station();
                other.add(FitRow.of(
                        new Station(s.id(), new Spot(-s.at().xMm(), s.at().yMm()), -s.nx(), s.ny()),
                        r.gapMm(),
                        r.lowerMm(),
                        r.nominalMm(),
                        r.upperMm()));
            }
            Collections.reverse(other);
            MinimaxMove a = best(rows, new Spot(0, 0));
            MinimaxMove b = best(other, new Spot(0, 0));
            assertEquals(a.worstDeviation(), b.worstDeviation(), 1e-9);
            assertEquals(-a.move().dxMm(), b.move().dxMm(), 1e-6);
            assertEquals(a.move().dyMm(), b.move().dyMm(), 1e-6);
            assertEquals(-a.move().turnRad(), b.move().turnRad(), 1e-8);
            Move exactMirror =
                    new Move(-a.move().dxMm(), a.move().dyMm(), -a.move().turnRad());
            assertEquals(left.sentence(a.move()), right.sentence(exactMirror));
        }
    }

    @Test
    void should_be_the_same_rigid_motion_when_another_pivot_is_named() {
        SplittableRandom chance = new SplittableRandom(4);
        int compared = 0;
        for (int k = 0; k < 40; k++) {
            List<FitRow> rows = drawn(chance, draw(chance), 0.3);
            Spot here = new Spot(0, 0);
            Spot there = new Spot(chance.nextDouble(-300, 300), chance.nextDouble(-300, 300));
            BestMoveResult a = BestMoveCalculator.calculate(question(rows, here));
            BestMoveResult b = BestMoveCalculator.calculate(question(rows, there));
            int first = a.minimax().orElseThrow().rounds();
            int second = b.minimax().orElseThrow().rounds();
            if (first == 0 || second == 0 || first == 5 || second == 5) {
                // Straight lines of a turn about two pivots differ by the square of the turn; after 5 rounds it gives
                // up.
                continue;
            }
            compared++;
            Move told = a.minimax().orElseThrow().move().about(here, there);
            Move found = b.minimax().orElseThrow().move();
            assertEquals(told.dxMm(), found.dxMm(), 1e-6);
            assertEquals(told.dyMm(), found.dyMm(), 1e-6);
            assertEquals(told.turnRad(), found.turnRad(), 1e-9);
        }
        assertTrue(compared >= 8, "only " + compared + " compared");
    }

    @Test
    void should_leave_the_same_gaps_when_another_pivot_is_named_and_turns_are_tiny() {
        SplittableRandom chance = new SplittableRandom(5);
        for (int k = 0; k < 40; k++) {
            Move small = new Move(chance.nextDouble(-1, 1), chance.nextDouble(-1, 1), chance.nextDouble(-1e-3, 1e-3));
            List<FitRow> rows = drawn(chance, small, 0.03);
            BestMoveResult a = BestMoveCalculator.calculate(question(rows, new Spot(0, 0)));
            BestMoveResult b = BestMoveCalculator.calculate(question(rows, new Spot(250, -100)));
            assertEquals(
                    0,
                    a.minimax().orElseThrow().rounds()
                            + b.minimax().orElseThrow().rounds());
            close(a.minimax().orElseThrow().gapsMm(), b.minimax().orElseThrow().gapsMm(), 1e-6);
            close(
                    a.leastSquares().orElseThrow().gapsMm(),
                    b.leastSquares().orElseThrow().gapsMm(),
                    1e-9);
            assertEquals(
                    a.minimax().orElseThrow().worstDeviation(),
                    b.minimax().orElseThrow().worstDeviation(),
                    1e-9);
        }
    }

    private static void close(List<Double> a, List<Double> b, double allowed) {
        for (int i = 0; i < a.size(); i++) {
            assertEquals(a.get(i), b.get(i), allowed);
        }
    }

    private static MinimaxMove best(List<FitRow> rows, Spot pivot) {
        return BestMoveCalculator.calculate(question(rows, pivot)).minimax().orElseThrow();
    }
}
