package fayline.method.fitup.after;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.ChiSquare;
import fayline.basis.numeric.RandomStream;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.after.AsBuiltResult.Deviation;
import fayline.method.fitup.after.AsBuiltResult.Motion;
import fayline.method.fitup.after.AsBuiltResult.Reading;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** As-built gaps against predicted ones. */
class AsBuiltTest {
    private static final FitCase CASE = FitCase.read("checks/fitup/F34-as-built-compare");

    private static List<BuiltGap> gaps() {
        return CASE.inputs().get("stations").items().stream()
                .map(n -> new BuiltGap(
                        new Station(
                                n.text("id"), new Spot(n.number("x"), n.number("y")), n.number("nx"), n.number("ny")),
                        n.number("predicted"),
                        n.number("uPredicted"),
                        n.number("measured"),
                        n.number("uMeasured")))
                .toList();
    }

    private static void holds(Node wanted, Move m) {
        CASE.holds("dx", wanted, m.dxMm());
        CASE.holds("dy", wanted, m.dyMm());
        CASE.holds("thetaDeg", wanted, m.turnDeg());
    }

    @Test
    void should_match_the_reference_case_when_uncertainties_are_independent() {
        AsBuiltResult r = AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), gaps(), List.of()));
        Node e = CASE.expected();
        CASE.holds(
                "residual", e, r.stations().stream().map(Deviation::residualMm).toList());
        CASE.holds("z", e, r.stations().stream().map(Deviation::z).toList());
        assertEquals(e.get("flagged").texts(), r.flagged());
        CASE.holds("chiSquare", e, r.chiSquare());
        CASE.holds("pValue", e, r.pValue());
        Motion m = r.motion().orElseThrow();
        holds(e.get("fittedMove"), m.fitted().move());
        holds(e.get("stdMove"), m.fitted().covariance().deviations());
        CASE.holds("chiSquareAfter", e, m.chiSquare());
        CASE.holds("pValueAfter", e, m.pValue());
        assertEquals(Reading.MOVED, r.reading());

        Node prior = CASE.inputs().get("priorStdBias");
        Lesson lesson = LessonCalculator.calculate(
                List.of(m.fitted()),
                MoveCovariance.ofDeviations(
                        prior.number("dx"), prior.number("dy"), Math.toRadians(prior.number("thetaDeg"))));
        holds(e.get("lessonMove"), lesson.move());
        holds(
                e.get("oppositeHandLesson"),
                lesson.forOppositeHand(Lesson.Cause.MIRRORED_TOOL).orElseThrow().move());
        for (Lesson.Cause c : Lesson.Cause.values()) {
            assertEquals(
                    c == Lesson.Cause.MIRRORED_TOOL, lesson.forOppositeHand(c).isPresent(), c.name());
        }
    }

    /**
     * Two stations whose predictions share a part: C = [[1.25, 1], [1, 1.25]] times 0.01, inverse by hand
     * [[1.25, -1], [-1, 1.25]] / 0.5625 times 100. Residuals (0.2, 0.2): 0.04 (1.25 - 2 + 1.25) 100 / 0.5625 = 3.5556;
     * residuals (0.2, -0.2): 0.04 (1.25 + 2 + 1.25) 100 / 0.5625 = 32.
     */
    @Test
    void should_count_a_shared_error_once_when_the_covariance_is_given() {
        List<List<Double>> shared = List.of(List.of(0.01, 0.01), List.of(0.01, 0.01));
        assertEquals(3.5555556, pair(0.2, 0.2, shared).chiSquare(), 1e-6);
        assertEquals(32, pair(0.2, -0.2, shared).chiSquare(), 1e-9);
        assertEquals(2 * 0.04 / 0.0125, pair(0.2, 0.2, List.of()).chiSquare(), 1e-9);
        assertEquals(ChiSquare.above(32, 2), pair(0.2, -0.2, shared).pValue(), 1e-15);
        assertEquals(Reading.UNTOLD, pair(0.2, -0.2, shared).reading());
    }

    private static AsBuiltResult pair(double one, double other, List<List<Double>> covariance) {
        return AsBuiltCalculator.calculate(new AsBuilt(
                new Spot(0, 0),
                List.of(
                        new BuiltGap(new Station("A", new Spot(-100, 0), 0, 1), 3, 0.1, 3 + one, 0.05),
                        new BuiltGap(new Station("B", new Spot(100, 0), 0, 1), 3, 0.1, 3 + other, 0.05)),
                covariance));
    }

    @Test
    void should_agree_with_independent_uncertainties_when_the_covariance_is_diagonal() {
        List<List<Double>> diagonal = new ArrayList<>();
        for (int i = 0; i < gaps().size(); i++) {
            List<Double> row = new ArrayList<>();
            for (int j = 0; j < gaps().size(); j++) {
                row.add(i == j ? 0.0144 : 0.0);
            }
            diagonal.add(row);
        }
        AsBuiltResult one = AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), gaps(), List.of()));
        AsBuiltResult other = AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), gaps(), diagonal));
        assertEquals(one.chiSquare(), other.chiSquare(), 1e-9);
        Move a = one.motion().orElseThrow().fitted().move();
        Move b = other.motion().orElseThrow().fitted().move();
        assertEquals(a.dxMm(), b.dxMm(), 1e-9);
        assertEquals(a.turnRad(), b.turnRad(), 1e-12);
    }

    /** A known motion is found again about any pivot, and what is left is nothing. */
    @Test
    void should_find_a_known_motion_again() {
        RandomStream random = new RandomStream(3, 0);
        for (int k = 0; k < 50; k++) {
            Move m = new Move(random.nextNormal(), random.nextNormal(), 0.003 * random.nextNormal());
            Spot pivot = new Spot(100 * random.nextNormal(), 100 * random.nextNormal());
            List<BuiltGap> moved = gaps().stream()
                    .map(g -> new BuiltGap(
                            g.station(),
                            g.predictedMm(),
                            0.1,
                            g.predictedMm()
                                    - g.station().nx() * m.dxMm()
                                    - g.station().ny() * m.dyMm()
                                    - g.station().leverMm(pivot) * m.turnRad(),
                            0.05))
                    .toList();
            Motion found = AsBuiltCalculator.calculate(new AsBuilt(pivot, moved, List.of()))
                    .motion()
                    .orElseThrow();
            assertEquals(m.dxMm(), found.fitted().move().dxMm(), 1e-9);
            assertEquals(m.dyMm(), found.fitted().move().dyMm(), 1e-9);
            assertEquals(m.turnRad(), found.fitted().move().turnRad(), 1e-12);
            assertEquals(0, found.chiSquare(), 1e-15);
        }
    }

    @Test
    void should_look_at_single_stations_when_one_is_off() {
        List<BuiltGap> bump = new ArrayList<>();
        for (BuiltGap g : gaps()) {
            double m = g.station().id().equals("S9") ? g.predictedMm() - 1.2 : g.predictedMm() + 0.05;
            bump.add(new BuiltGap(g.station(), g.predictedMm(), 0.12, m, 0.06));
        }
        AsBuiltResult r = AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), bump, List.of()));
        assertEquals(Reading.LOCAL, r.reading());
        assertEquals(List.of("S9"), r.flagged());
    }

    @Test
    void should_doubt_the_uncertainties_when_it_agrees_too_well() {
        List<BuiltGap> close = gaps().stream()
                .map(g -> new BuiltGap(g.station(), g.predictedMm(), 0.5, g.predictedMm() + 0.02, 0.5))
                .toList();
        assertEquals(
                Reading.TOO_GOOD,
                AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), close, List.of()))
                        .reading());
    }

    @Test
    void should_trust_more_when_more_builds_say_the_same() {
        FittedMove build = AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), gaps(), List.of()))
                .motion()
                .orElseThrow()
                .fitted();
        MoveCovariance prior = MoveCovariance.ofDeviations(0.05, 0.05, 1e-4);
        double last = 0;
        for (int k = 1; k <= 16; k *= 2) {
            Lesson l = LessonCalculator.calculate(java.util.Collections.nCopies(k, build), prior);
            assertTrue(l.move().dxMm() > last && l.move().dxMm() < build.move().dxMm());
            last = l.move().dxMm();
            assertEquals(k, l.builds());
            assertTrue(l.covariance().deviations().dxMm() < 0.05);
        }
        assertThrows(IllegalArgumentException.class, () -> LessonCalculator.calculate(List.of(), prior));
    }

    /** Learning on one hand and mirroring is the same as mirroring the part and learning there. */
    @Test
    void should_learn_the_mirror_when_the_part_is_mirrored() {
        MoveCovariance prior = MoveCovariance.ofDeviations(0.15, 0.1, 5e-4);
        List<BuiltGap> mirrored = gaps().stream()
                .map(g -> new BuiltGap(
                        new Station(
                                g.station().id(),
                                new Spot(
                                        -g.station().at().xMm(),
                                        g.station().at().yMm()),
                                -g.station().nx(),
                                g.station().ny()),
                        g.predictedMm(),
                        g.predictedUncertaintyMm(),
                        g.measuredMm(),
                        g.measuredUncertaintyMm()))
                .toList();
        Lesson here = learn(gaps(), prior).mirrored();
        Lesson there = learn(mirrored, prior);
        assertEquals(here.move().dxMm(), there.move().dxMm(), 1e-12);
        assertEquals(here.move().dyMm(), there.move().dyMm(), 1e-12);
        assertEquals(here.move().turnRad(), there.move().turnRad(), 1e-15);
        assertEquals(
                here.covariance().rows().get(0).get(1),
                there.covariance().rows().get(0).get(1),
                1e-15);
    }

    private static Lesson learn(List<BuiltGap> gaps, MoveCovariance prior) {
        return LessonCalculator.calculate(
                List.of(AsBuiltCalculator.calculate(new AsBuilt(new Spot(0, 0), gaps, List.of()))
                        .motion()
                        .orElseThrow()
                        .fitted()),
                prior);
    }
}
