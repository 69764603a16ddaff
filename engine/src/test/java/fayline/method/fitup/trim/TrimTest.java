package fayline.method.fitup.trim;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference trims, hand-checkable choices of edges, and properties over seeded openings. */
class TrimTest {
    private static final List<String> ALL = List.of("lower", "aft", "upper", "fwd");

    private static TrimQuestion of(FitCase c, boolean everything) {
        FitCase.Node in = c.inputs();
        List<Double> pivot = in.get("pivot").numbers();
        FitCase.Node limits = in.get("moveLimits");
        List<TrimRow> rows = in.get("stations").items().stream()
                .map(s -> new TrimRow(
                        new FitRow(
                                new Station(
                                        s.text("id"),
                                        new Spot(s.number("x"), s.number("y")),
                                        s.number("nx"),
                                        s.number("ny")),
                                s.number("gap"),
                                s.number("lower"),
                                3,
                                s.number("upper"),
                                OptionalDouble.empty(),
                                1,
                                s.text("edge")),
                        s.number("tributary"),
                        everything ? Double.POSITIVE_INFINITY : s.number("trimMax"),
                        0))
                .toList();
        List<NeighbourPair> pairs = !in.get("adjacent").isThere()
                ? List.of()
                : List.of(new NeighbourPair("S6", "S7", 161), new NeighbourPair("S7", "S8", 161));
        List<String> edges = everything ? ALL : in.get("trimmableEdges").texts();
        return new TrimQuestion(
                rows,
                pairs,
                new Spot(pivot.get(0), pivot.get(1)),
                new MoveLimits(
                        low(limits, "dx"),
                        high(limits, "dx"),
                        low(limits, "dy"),
                        high(limits, "dy"),
                        Math.toRadians(low(limits, "thetaDeg")),
                        Math.toRadians(high(limits, "thetaDeg"))),
                new TrimRules(edges, TrimRules.SLOPE, 0, TrimGoal.LEAST_AREA));
    }

    private static double low(FitCase.Node limits, String name) {
        return limits.get(name).numbers().get(0);
    }

    private static double high(FitCase.Node limits, String name) {
        return limits.get(name).numbers().get(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"F17-trim-hand", "F18-trim-taper"})
    void should_hold_the_reference_trim(String name) {
        FitCase c = FitCase.read("checks/fitup/" + name);
        TrimResult r = TrimCalculator.calculate(of(c, false));
        assertEquals(c.expected().text("status"), r.status().name());
        TrimResult.Cut cut = r.cut().orElseThrow();
        c.holds("trimArea", c.expected(), cut.areaMm2());
        c.holds("trim", c.expected(), cut.depthsMm());
        assertTrue(cut.unique());
        assertEquals(List.of("aft"), cut.edges());
        assertTrue(r.findings().get(0).sentence().contains("aft edge only"));
    }

    @Test
    void should_be_infeasible_and_name_what_to_add_when_the_opening_is_too_large() {
        TrimResult r = TrimCalculator.calculate(of(FitCase.read("checks/fitup/F19-trim-infeasible-too-loose"), false));
        assertEquals(TrimStatus.INFEASIBLE, r.status());
        assertTrue(r.withoutCaps().isEmpty());
        assertEquals(280, r.buildUp().orElseThrow().areaMm2(), 1e-3);
        assertTrue(r.findings().get(0).sentence().contains("Add 280 mm²"));
    }

    @Test
    void should_hold_the_reference_build_up() {
        FitCase c = FitCase.read("checks/fitup/F39-build-up");
        TrimQuestion q = of(c, true);
        assertEquals(
                c.expected().text("status"),
                TrimCalculator.calculate(q).status().name());
        TrimResult.BuildUp b = TrimCalculator.buildUp(q).orElseThrow();
        c.holds("buildUpArea", c.expected(), b.areaMm2());
        c.holds("trimAreaAfterBuildUp", c.expected(), b.trimAreaMm2());
        assertEquals(280, sum(q, b.heightsMm()), 1e-3);
    }

    @Test
    void should_add_on_the_first_named_edge_and_move_no_farther_than_that_asks() {
        double[] gaps = {3, 3, 3.8, 3.8, 3, 3, 3.7, 3.7};
        for (String first : List.of("aft", "fwd")) {
            TrimResult.BuildUp b = TrimCalculator.buildUp(
                            rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, first, "upper")))
                    .orElseThrow();
            assertEquals(200, b.areaMm2(), 1e-3);
            int at = first.equals("aft") ? 2 : 6;
            assertEquals(0.5, b.heightsMm().get(at), 1e-6);
            assertEquals(0.5, b.heightsMm().get(at + 1), 1e-6);
            // the other end is brought to its 3.5 by the move: 0.2 forward, or 0.3 aft
            assertEquals(first.equals("aft") ? -0.2 : 0.3, b.move().inPlane().dxMm(), 1e-6);
            assertEquals(0, b.move().inPlane().dyMm(), 1e-6);
        }
    }

    private static double sum(TrimQuestion q, List<Double> depths) {
        double area = 0;
        for (int i = 0; i < depths.size(); i++) {
            area += depths.get(i) * q.rows().get(i).tributaryMm();
        }
        return area;
    }

    /** A rectangle of 600 by 400 with two stations on each edge, as in the reference trim. */
    static TrimQuestion rectangle(double[] gaps, double[] tributaries, TrimRules rules) {
        double[][] places = {
            {-150, -200, 0, -1}, {150, -200, 0, -1}, {300, -100, 1, 0}, {300, 100, 1, 0},
            {150, 200, 0, 1}, {-150, 200, 0, 1}, {-300, 100, -1, 0}, {-300, -100, -1, 0}
        };
        List<TrimRow> rows = new ArrayList<>();
        for (int i = 0; i < places.length; i++) {
            double[] p = places[i];
            rows.add(new TrimRow(
                    new FitRow(
                            new Station("S" + (i + 1), new Spot(p[0], p[1]), p[2], p[3]),
                            gaps[i],
                            2.5,
                            3,
                            3.5,
                            OptionalDouble.empty(),
                            1,
                            ALL.get(i / 2)),
                    tributaries[i],
                    3,
                    0));
        }
        return new TrimQuestion(rows, List.of(), new Spot(0, 0), MoveLimits.of(5, 5, Math.toRadians(1)), rules);
    }

    private static final double[] EVEN = {300, 300, 200, 200, 300, 300, 200, 200};

    private static TrimRules rules(TrimGoal goal, String... edges) {
        return new TrimRules(List.of(edges), TrimRules.SLOPE, 0, goal);
    }

    @Test
    void should_take_the_first_named_edge_when_either_end_would_do() {
        double[] gaps = {3, 3, 2.2, 2.2, 3, 3, 2.0, 2.0};
        TrimResult.Cut aft = TrimCalculator.calculate(rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "aft", "fwd")))
                .cut()
                .orElseThrow();
        assertEquals(List.of("aft"), aft.edges());
        assertEquals(320, aft.areaMm2(), 1e-3);
        assertFalse(aft.unique());
        TrimResult.Cut fwd = TrimCalculator.calculate(rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "fwd", "aft")))
                .cut()
                .orElseThrow();
        assertEquals(List.of("fwd"), fwd.edges());
        assertEquals(320, fwd.areaMm2(), 1e-3);
        assertEquals(0.8, fwd.deepestMm(), 1e-4);
    }

    @Test
    void should_cut_one_edge_when_fewest_edges_matter_more_than_area() {
        // S3 faces S8 and S4 faces S7, each pair 0.8 short; S3 and S7 are cheap, S4 and S8 dear. A turn moves the need
        // to the cheap
        // ones until lower and upper edge end it at 1/300 rad, 1/3 mm at these levers: 0.4 + 1/3 off the cheap, 0.4 -
        // 1/3 off the dear.
        double[] gaps = {3, 3, 2.1, 2.1, 3, 3, 2.1, 2.1};
        double[] tributaries = {300, 300, 100, 300, 300, 300, 100, 300};
        TrimQuestion both = rectangle(gaps, tributaries, rules(TrimGoal.LEAST_AREA, "aft", "fwd"));
        TrimResult.Cut least = TrimCalculator.calculate(both).cut().orElseThrow();
        TrimResult.Cut few = TrimCalculator.calculate(
                        rectangle(gaps, tributaries, rules(TrimGoal.FEWEST_EDGES, "fwd", "aft")))
                .cut()
                .orElseThrow();
        assertEquals(2 * (100 * (0.4 + 1 / 3.0) + 300 * (0.4 - 1 / 3.0)), least.areaMm2(), 1e-3);
        assertEquals(2, least.edges().size());
        assertEquals(List.of("fwd"), few.edges());
        assertEquals(320, few.areaMm2(), 1e-3);
    }

    @Test
    void should_say_what_is_in_the_way_when_the_edge_may_not_be_cut() {
        double[] gaps = {3, 3, 2.2, 2.2, 3, 3, 2.0, 2.0};
        TrimResult r = TrimCalculator.calculate(rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "upper")));
        assertEquals(TrimStatus.INFEASIBLE, r.status());
        assertEquals(320, r.withoutCaps().orElseThrow().areaMm2(), 1e-3);
        assertTrue(r.findings().get(0).sentence().contains("not enough"));
    }

    @Test
    void should_need_no_trim_when_a_move_is_enough() {
        double[] gaps = {3, 3, 3.6, 3.6, 3, 3, 2.4, 2.4};
        TrimResult.Cut cut = TrimCalculator.calculate(rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "aft", "fwd")))
                .cut()
                .orElseThrow();
        assertEquals(0, cut.areaMm2(), 1e-9);
        assertEquals(List.of(), cut.edges());
        assertTrue(cut.unique());
        // shortest move: 0.1 aft brings both ends to their limits
        assertEquals(0.1, cut.move().inPlane().dxMm(), 1e-5);
        assertEquals(0, cut.move().inPlane().dyMm(), 2e-4);
        assertEquals(0, cut.move().inPlane().turnRad(), 1e-6);
    }

    @Test
    void should_aim_higher_when_readings_are_uncertain_and_keep_a_hard_minimum() {
        double[] gaps = {3, 3, 2.2, 2.2, 3, 3, 2.0, 2.0};
        TrimQuestion sure = rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "aft"));
        List<TrimRow> unsure = sure.rows().stream()
                .map(r -> new TrimRow(r.row(), r.tributaryMm(), r.mostMm(), 0.1))
                .toList();
        TrimResult.Cut guarded = TrimCalculator.calculate(new TrimQuestion(
                        unsure, List.of(), sure.pivot(), sure.limits(), TrimRules.usual(List.of("aft"))))
                .cut()
                .orElseThrow();
        assertEquals(400 * (5.2 - 4.2), guarded.areaMm2(), 1e-3);
        List<TrimRow> hard = sure.rows().stream()
                .map(r -> new TrimRow(
                        new FitRow(
                                r.row().station(),
                                r.row().gapMm(),
                                2.5,
                                3,
                                3.5,
                                OptionalDouble.of(r.row().edge().equals("aft") ? 2.8 : 0),
                                1,
                                r.row().edge()),
                        r.tributaryMm(),
                        r.mostMm(),
                        0))
                .toList();
        TrimResult.Cut kept = TrimCalculator.calculate(
                        new TrimQuestion(hard, List.of(), sure.pivot(), sure.limits(), sure.rules()))
                .cut()
                .orElseThrow();
        assertEquals(400 * (2.5 + 2.8 - 4.2), kept.areaMm2(), 1e-3);
    }

    @Test
    void should_refuse_questions_that_are_none() {
        TrimQuestion q = rectangle(new double[] {3, 3, 3, 3, 3, 3, 3, 3}, EVEN, TrimRules.usual(ALL));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TrimQuestion(
                        q.rows(), List.of(new NeighbourPair("S1", "S99", 10)), q.pivot(), q.limits(), q.rules()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TrimQuestion(List.of(), List.of(), q.pivot(), q.limits(), q.rules()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TrimRow(q.rows().get(0).row(), -1, 1, 0));
    }

    private static double[] seeded(long seed) {
        Random random = new Random(seed);
        double[] gaps = new double[8];
        for (int i = 0; i < gaps.length; i++) {
            gaps[i] = 1.6 + 1.6 * random.nextDouble();
        }
        return gaps;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void should_never_cut_less_than_nothing_and_end_inside(long seed) {
        TrimQuestion q = rectangle(seeded(seed), EVEN, rules(TrimGoal.LEAST_AREA, "aft", "fwd", "upper", "lower"));
        TrimResult.Cut cut = TrimCalculator.calculate(q).cut().orElseThrow();
        assertTrue(cut.depthsMm().stream().allMatch(d -> d >= 0 && d <= 3));
        assertEquals(cut.areaMm2(), sum(q, cut.depthsMm()), 1e-3);
        assertTrue(
                cut.gapsMm().stream().allMatch(g -> g > 2.5 - 0.025 && g < 3.5 + 0.025),
                cut.gapsMm().toString());
        Move m = cut.move().inPlane();
        assertTrue(m.shiftMm() <= 8 && Math.abs(m.turnDeg()) <= 1 + 1e-9);
    }

    @ParameterizedTest
    @ValueSource(longs = {21, 22, 23, 24, 25})
    void should_cut_no_more_when_limits_are_wider_or_more_edges_may_be_cut(long seed) {
        double[] gaps = seeded(seed);
        TrimQuestion tight = rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, ALL.toArray(String[]::new)));
        List<TrimRow> wider = tight.rows().stream()
                .map(r -> new TrimRow(FitRowWide.of(r.row()), r.tributaryMm(), r.mostMm(), 0))
                .toList();
        double area = TrimCalculator.calculate(tight).cut().orElseThrow().areaMm2();
        double less = TrimCalculator.calculate(
                        new TrimQuestion(wider, List.of(), tight.pivot(), tight.limits(), tight.rules()))
                .cut()
                .orElseThrow()
                .areaMm2();
        assertTrue(less <= area + 1e-6, less + " > " + area);
        TrimResult three =
                TrimCalculator.calculate(rectangle(gaps, EVEN, rules(TrimGoal.LEAST_AREA, "aft", "fwd", "upper")));
        three.cut().ifPresent(c -> assertTrue(c.areaMm2() >= area - 1e-3));
    }

    /** Wider limits. */
    private static final class FitRowWide {
        private FitRowWide() {}

        static FitRow of(FitRow r) {
            return new FitRow(
                    r.station(),
                    r.gapMm(),
                    r.lowerMm() - 0.2,
                    r.nominalMm(),
                    r.upperMm() + 0.1,
                    OptionalDouble.empty(),
                    1,
                    r.edge());
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33, 34})
    void should_not_depend_on_the_pivot(long seed) {
        TrimQuestion q = rectangle(seeded(seed), EVEN, rules(TrimGoal.LEAST_AREA, ALL.toArray(String[]::new)));
        TrimQuestion elsewhere = new TrimQuestion(
                q.rows(), q.pairs(), new Spot(40, -30), MoveLimits.of(9, 9, Math.toRadians(1)), q.rules());
        TrimQuestion roomy =
                new TrimQuestion(q.rows(), q.pairs(), q.pivot(), MoveLimits.of(9, 9, Math.toRadians(1)), q.rules());
        assertEquals(
                TrimCalculator.calculate(roomy).cut().orElseThrow().areaMm2(),
                TrimCalculator.calculate(elsewhere).cut().orElseThrow().areaMm2(),
                1.0);
    }
}
