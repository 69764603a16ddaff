package fayline.method.fitup.scheme;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.RandomStream;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapOdds.StationOdds;
import fayline.method.fitup.odds.GapTrials;
import fayline.method.fitup.odds.GapTrialsCalculator;
import fayline.method.fitup.odds.GapTrialsResult;
import fayline.method.uncertainty.Distribution;
import fayline.method.uncertainty.Distribution.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Schemes against reference cases, trials and each other. */
class SchemeTest {
    private static final long SEED = 20_240_101;

    private static Spot spot(Node n) {
        return new Spot(n.numbers().get(0), n.numbers().get(1));
    }

    private static Station station(Node n) {
        return new Station(n.text("id"), new Spot(n.number("x"), n.number("y")), n.number("nx"), n.number("ny"));
    }

    private static List<ReadGap> gaps(Node inputs) {
        return inputs.get("stations").items().stream()
                .map(n -> new ReadGap(
                        station(n),
                        n.number("predicted"),
                        n.number("lower"),
                        n.number("upper"),
                        OptionalDouble.of(n.number("uReading"))))
                .toList();
    }

    private static List<Stop> stops(Node inputs) {
        return inputs.get("indexPoints").items().stream()
                .map(n -> Stop.fixed(station(n)))
                .toList();
    }

    private static SchemeQuestion question(Node inputs, Spot pivot, List<Scheme> schemes) {
        return new SchemeQuestion(
                pivot, gaps(inputs), OptionalDouble.of(inputs.number("uCommonReading")), schemes, Set.of(), SEED);
    }

    private static List<Scheme> schemes(Node inputs) {
        List<Scheme> all = new ArrayList<>();
        List<Stop> stops = stops(inputs);
        for (String name : inputs.get("schemes").names()) {
            Node s = inputs.get("schemes").get(name);
            Shape shape = s.text("distribution").equals("normal") ? Shape.NORMAL : Shape.RECTANGULAR;
            List<Double> std = s.get("stdPerIndexPoint").numbers();
            all.add(Scheme.of(
                    name,
                    IntStream.range(0, stops.size())
                            .<Locator>mapToObj(j -> new Locator.Known(
                                    stops.get(j), Distribution.ofStandardDeviation(shape, 0, std.get(j))))
                            .toList()));
        }
        return all;
    }

    private static List<Double> deviations(GapOdds o) {
        return o.stations().stream().map(StationOdds::deviationMm).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"F22-index-covariance-hand", "F23-index-schemes"})
    void should_match_the_reference_case_when_stops_are_independent(String file) {
        FitCase c = FitCase.read("checks/fitup/" + file);
        SchemeComparison r =
                SchemeCalculator.calculate(question(c.inputs(), spot(c.inputs().get("pivot")), schemes(c.inputs())));
        for (SchemeOutcome o : r.schemes()) {
            Node wanted = c.expected().get(o.name());
            GapOdds odds = o.odds().orElseThrow();
            c.holds("stdGap", wanted, deviations(odds));
            c.holds(
                    "perStationNormal",
                    wanted,
                    odds.stations().stream().map(StationOdds::chance).toList());
            c.holds("jointProbability", wanted, odds.joint().probability());
            c.holds("covariance12", wanted, odds.covarianceMm2().get(0).get(1));
            assertEquals(wanted.text("worstStation"), odds.worstStation().id());
            assertTrue(odds.joint().standardError() < 0.001);
            assertEquals(
                    1, odds.shares().stream().mapToDouble(GapOdds.Share::share).sum(), 1e-12);
        }
        if (file.startsWith("F23")) {
            assertEquals("shims", r.best().orElseThrow());
        }
    }

    @Test
    void should_match_the_reference_case_when_two_pins_have_play() {
        FitCase c = FitCase.read("checks/fitup/F40-two-drilled-pins");
        Node in = c.inputs();
        Scheme pins = Scheme.of(
                "pins",
                List.of(new Locator.Pins(
                        "pin",
                        spot(in.get("pin1")),
                        spot(in.get("pin2")),
                        OptionalDouble.of(in.number("diametralPlay")),
                        OptionalDouble.of(in.number("stdPinPosition")))));
        SchemeOutcome o = SchemeCalculator.calculate(question(in, new Spot(0, 0), List.of(pins)))
                .schemes()
                .get(0);
        GapOdds odds = o.odds().orElseThrow();
        Station pin2 = o.stops().get(2).contact();
        c.holds("pin2Normal", c.expected(), List.of(pin2.nx(), pin2.ny()));
        c.holds("stdGap", c.expected(), deviations(odds));
        c.holds("jointProbability", c.expected(), odds.joint().probability());
    }

    @Test
    void should_match_the_reference_case_when_a_block_shifts_as_one() {
        FitCase c = FitCase.read("checks/fitup/F42-fixture-block-correlated");
        List<List<Double>> covariance =
                c.inputs().get("covariance").items().stream().map(Node::numbers).toList();
        Scheme block = Scheme.of("block", List.of(new Locator.Together(stops(c.inputs()), covariance)));
        GapOdds odds = SchemeCalculator.calculate(question(c.inputs(), new Spot(0, 0), List.of(block)))
                .schemes()
                .get(0)
                .odds()
                .orElseThrow();
        c.holds("stdGap", c.expected(), deviations(odds));
        c.holds("jointProbability", c.expected(), odds.joint().probability());
        assertEquals(c.expected().text("worstStation"), odds.worstStation().id());
    }

    @Test
    void should_agree_with_trials_and_lie_within_its_bounds() {
        Node in = FitCase.read("checks/fitup/F23-index-schemes").inputs();
        for (SchemeOutcome o : SchemeCalculator.calculate(question(in, new Spot(0, 0), schemes(in)))
                .schemes()) {
            GapOdds odds = o.odds().orElseThrow();
            GapTrialsResult t =
                    GapTrialsCalculator.calculate(new GapTrials(o.spread().orElseThrow(), 0, SEED));
            assertEquals(odds.joint().probability(), t.joint().probability(), 0.006, o.name());
            assertTrue(t.settled());
            for (int i = 0; i < odds.stations().size(); i++) {
                assertEquals(
                        odds.stations().get(i).deviationMm(),
                        t.stations().get(i).deviationMm(),
                        0.02 * odds.stations().get(i).deviationMm());
                assertEquals(
                        odds.stations().get(i).predictedMm(),
                        t.stations().get(i).meanMm(),
                        0.006);
            }
            if (!o.name().equals("tape")) {
                assertTrue(odds.joint().probability() >= odds.joint().leastPossible() - 0.001);
            }
            assertTrue(odds.joint().probability() <= odds.joint().mostPossible() + 0.001);
        }
    }

    @Test
    void should_not_depend_on_the_number_of_threads() throws Exception {
        Node in = FitCase.read("checks/fitup/F23-index-schemes").inputs();
        SchemeQuestion q = question(in, new Spot(0, 0), schemes(in));
        SchemeComparison alone = on(1, q);
        assertEquals(alone, on(2, q));
        assertEquals(alone, on(5, q));
        GapTrials t = new GapTrials(alone.schemes().get(0).spread().orElseThrow(), 200_000, 4);
        GapTrialsResult one = trialsOn(1, t);
        assertEquals(one, trialsOn(3, t));
        assertTrue(one.joint().trials() >= 200_000);
    }

    private static SchemeComparison on(int threads, SchemeQuestion q) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> SchemeCalculator.calculate(q)).get();
        } finally {
            pool.shutdown();
        }
    }

    private static GapTrialsResult trialsOn(int threads, GapTrials q) throws Exception {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> GapTrialsCalculator.calculate(q)).get();
        } finally {
            pool.shutdown();
        }
    }

    /** The odds belong to the rigid part, not to the point that its motion is told about. */
    @Test
    void should_give_the_same_odds_about_another_pivot() {
        Node in = FitCase.read("checks/fitup/F23-index-schemes").inputs();
        RandomStream random = new RandomStream(SEED, 0);
        List<Double> at = deviations(SchemeCalculator.calculate(question(in, new Spot(0, 0), schemes(in)))
                .schemes()
                .get(0)
                .odds()
                .orElseThrow());
        for (int k = 0; k < 5; k++) {
            Spot pivot = new Spot(2000 * random.nextUnit() - 1000, 2000 * random.nextUnit() - 1000);
            List<Double> there = deviations(
                    SchemeCalculator.calculate(question(in, pivot, schemes(in).subList(0, 1)))
                            .schemes()
                            .get(0)
                            .odds()
                            .orElseThrow());
            for (int i = 0; i < at.size(); i++) {
                assertEquals(at.get(i), there.get(i), 1e-9);
            }
        }
    }

    /** Mirrored part, mirrored stops: the same odds, station by station. */
    @Test
    void should_give_the_same_odds_when_everything_is_mirrored() {
        Node in = FitCase.read("checks/fitup/F23-index-schemes").inputs();
        SchemeQuestion q = question(in, new Spot(0, 0), schemes(in).subList(1, 2));
        List<ReadGap> mirroredGaps = q.gaps().stream()
                .map(g -> new ReadGap(mirrored(g.station()), g.predictedMm(), g.lowerMm(), g.upperMm(), g.readingMm()))
                .toList();
        Scheme scheme = q.schemes().get(0);
        Scheme mirrored = Scheme.of(
                scheme.name(),
                scheme.locators().stream()
                        .<Locator>map(l -> {
                            Locator.Known k = (Locator.Known) l;
                            return new Locator.Known(
                                    Stop.fixed(mirrored(k.stop().contact())), k.error());
                        })
                        .toList());
        GapOdds here = odds(q);
        GapOdds there = odds(new SchemeQuestion(
                new Spot(0, 0), mirroredGaps, q.commonReadingMm(), List.of(mirrored), Set.of(), SEED));
        for (int i = 0; i < here.stations().size(); i++) {
            assertEquals(
                    here.stations().get(i).deviationMm(),
                    there.stations().get(i).deviationMm(),
                    1e-12);
        }
        assertEquals(here.joint().probability(), there.joint().probability(), 1e-9);
    }

    private static GapOdds odds(SchemeQuestion q) {
        return SchemeCalculator.calculate(q).schemes().get(0).odds().orElseThrow();
    }

    private static Station mirrored(Station s) {
        return new Station(s.id(), new Spot(-s.at().xMm(), s.at().yMm()), -s.nx(), s.ny());
    }

    private static Stop stop(String id, double x, double y, double nx, double ny) {
        return new Stop(new Station(id, new Spot(x, y), nx, ny), 100, 1);
    }

    private static SchemeQuestion small(List<Scheme> schemes, OptionalDouble reading) {
        List<ReadGap> gaps = List.of(
                new ReadGap(new Station("S1", new Spot(-300, -200), 0, -1), 3, 2.5, 3.5, reading),
                new ReadGap(new Station("S2", new Spot(300, -200), 0, -1), 3, 2.5, 3.5, reading),
                new ReadGap(new Station("S3", new Spot(300, 200), 0, 1), 3, 2.5, 3.5, reading),
                new ReadGap(new Station("S4", new Spot(-300, 0), -1, 0), 3, 2.5, 3.5, reading));
        return new SchemeQuestion(new Spot(0, 0), gaps, reading, schemes, Set.of(), SEED);
    }

    private static Scheme spacers(OptionalDouble deviation, double apart) {
        return Scheme.of(
                "spacers",
                List.of(
                        new Locator.Spacer(stop("J1", -apart / 2, -200, 0, -1), deviation, 0),
                        new Locator.Spacer(stop("J2", apart / 2, -200, 0, -1), deviation, 0),
                        new Locator.Spacer(stop("J3", -300, 0, -1, 0), deviation, 0)));
    }

    @Test
    void should_tell_no_chance_when_an_uncertainty_is_not_given() {
        SchemeQuestion q = small(List.of(spacers(OptionalDouble.empty(), 400)), OptionalDouble.empty());
        SchemeOutcome o = SchemeCalculator.calculate(q).schemes().get(0);
        assertTrue(o.odds().isEmpty());
        assertEquals(3 + 4 + 1, o.missing().size());
        assertEquals(Assumption.SPACER, o.missing().get(0).offer().orElseThrow());
        assertTrue(SchemeCalculator.calculate(q).best().isEmpty());

        SchemeOutcome assumed =
                SchemeCalculator.calculate(q.assumingAll()).schemes().get(0);
        assertTrue(assumed.odds().isPresent());
        assertEquals(List.of(Assumption.SPACER, Assumption.READING, Assumption.READING_COMMON), assumed.assumed());
        assertTrue(assumed.findings().stream().anyMatch(f -> f.sentence().startsWith("Assumed")));
    }

    @Test
    void should_offer_nothing_to_assume_when_play_was_not_measured() {
        Scheme pins = Scheme.of(
                "pins",
                List.of(new Locator.Pins(
                        "pin",
                        new Spot(-200, -150),
                        new Spot(200, -150),
                        OptionalDouble.empty(),
                        OptionalDouble.of(0))));
        SchemeOutcome o = SchemeCalculator.calculate(
                        small(List.of(pins), OptionalDouble.of(0.06)).assumingAll())
                .schemes()
                .get(0);
        assertEquals(1, o.missing().size());
        assertTrue(o.missing().get(0).offer().isEmpty());
        assertTrue(o.odds().isEmpty());
    }

    @Test
    void should_say_poor_when_two_stops_stand_close_together() {
        SchemeQuestion q = small(
                List.of(spacers(OptionalDouble.of(0.06), 8), spacers(OptionalDouble.of(0.06), 500)),
                OptionalDouble.of(0.06));
        List<SchemeOutcome> o = SchemeCalculator.calculate(q).schemes();
        assertTrue(o.get(0).condition() > 50, "condition " + o.get(0).condition());
        assertTrue(o.get(0).findings().stream().anyMatch(f -> f.sentence().startsWith("POOR_INDEXING")));
        assertTrue(o.get(1).findings().isEmpty());
        assertTrue(o.get(0).odds().orElseThrow().joint().probability()
                < o.get(1).odds().orElseThrow().joint().probability());
        assertEquals(
                Improvement.Kind.SET_ELSEWHERE, o.get(0).improvements().get(0).kind());
        assertTrue(o.get(0).improvements().get(0).gain() > 0.1);
    }

    @Test
    void should_name_the_free_motion_when_stops_do_not_hold() {
        Scheme one = Scheme.of(
                "one edge",
                List.of(
                        new Locator.Spacer(stop("J1", -200, -200, 0, -1), OptionalDouble.of(0.06), 0),
                        new Locator.Spacer(stop("J2", 200, -200, 0, -1), OptionalDouble.of(0.06), 0)));
        SchemeOutcome o = SchemeCalculator.calculate(small(List.of(one), OptionalDouble.of(0.06)))
                .schemes()
                .get(0);
        assertTrue(o.odds().isEmpty());
        assertTrue(o.findings().get(0).sentence().startsWith("INDEX_UNDETERMINED"));
        Settling s = Settling.of(new Spot(0, 0), o.stops(), List.of());
        assertEquals(1, Math.abs(s.free().orElseThrow().dxMm()), 1e-9);
        assertEquals(0, s.free().orElseThrow().turnRad(), 1e-9);
    }

    /** Ten stops' worth of +-0.1, all acting once: worst case 1.0, root of squares 0.316 (common practice). */
    @Test
    void should_show_worst_case_and_root_of_squares_beside_each_other() {
        Scheme s = Scheme.of(
                "known",
                List.of(
                        new Locator.Known(stop("J1", -300, -200, 0, -1), Distribution.rectangular(0, 0.1)),
                        new Locator.Known(stop("J2", 300, -200, 0, -1), Distribution.rectangular(0, 0.1)),
                        new Locator.Known(stop("J3", -300, 0, -1, 0), Distribution.rectangular(0, 0.1))));
        GapOdds o = odds(small(List.of(s), OptionalDouble.of(0)));
        // S1 lies on J1 and takes all of it, S3 opposite takes J2's with the other sign.
        assertEquals(0.1, o.stations().get(0).worstCaseMm(), 1e-12);
        assertEquals(0.1, o.stations().get(0).rssMm(), 1e-12);
        assertEquals(0.1 / Math.sqrt(3), o.stations().get(2).deviationMm(), 1e-12);
    }

    @Test
    void should_shift_the_gap_when_the_part_is_not_pressed_home() {
        List<Locator> loose = List.of(
                new Locator.Spacer(stop("J1", -300, -200, 0, -1), OptionalDouble.of(0), 0.4),
                new Locator.Spacer(stop("J2", 300, -200, 0, -1), OptionalDouble.of(0), 0),
                new Locator.Spacer(stop("J3", -300, 0, -1, 0), OptionalDouble.of(0), 0));
        GapOdds o = odds(small(List.of(Scheme.of("loose", loose)), OptionalDouble.of(0)));
        assertEquals(3.2, o.stations().get(0).predictedMm(), 1e-12);
        assertEquals(0.2 / Math.sqrt(3), o.stations().get(0).deviationMm(), 1e-12);
        assertEquals(3, o.stations().get(1).predictedMm(), 1e-12);
    }

    @Test
    void should_lean_to_the_stiffer_stop_when_there_are_more_than_three() {
        List<Locator> four = List.of(
                new Locator.Known(
                        new Stop(new Station("A", new Spot(-200, -200), 0, -1), 0, 9), Distribution.normal(0, 0.1)),
                new Locator.Known(
                        Stop.fixed(new Station("B", new Spot(-200, -200), 0, -1)), Distribution.normal(0, 0.1)),
                new Locator.Known(Stop.fixed(new Station("C", new Spot(200, -200), 0, -1)), Distribution.normal(0, 0)),
                new Locator.Known(Stop.fixed(new Station("D", new Spot(-300, 0), -1, 0)), Distribution.normal(0, 0)));
        Settling s = Settling.of(
                new Spot(0, 0),
                four.stream().map(l -> ((Locator.Known) l).stop()).toList(),
                List.of(new Station("S", new Spot(-200, -200), 0, -1)));
        assertEquals(0.9, s.weight(0, 0), 1e-9);
        assertEquals(0.1, s.weight(0, 1), 1e-9);
        assertFalse(s.isPoor());
    }

    @Test
    void should_widen_with_creep_when_it_is_counted() {
        Scheme still = spacers(OptionalDouble.of(0.06), 400);
        Scheme creeping = new Scheme("creeping", still.locators(), OptionalDouble.of(0.3));
        List<SchemeOutcome> o = SchemeCalculator.calculate(small(List.of(still, creeping), OptionalDouble.of(0.06)))
                .schemes();
        double a = o.get(0).odds().orElseThrow().stations().get(3).deviationMm();
        double b = o.get(1).odds().orElseThrow().stations().get(3).deviationMm();
        assertEquals(0.03, b * b - a * a, 1e-12);
    }
}
