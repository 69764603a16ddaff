package fayline.flow.result.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.checks.FitCase.Node;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitBulge;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.result.fit.Canopy.Place;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.mirror.OppositeHand;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.scheme.Stop;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.PartMoveCalculator;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceReading;
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A fit of a curved part, on the road that every fit of a project goes. */
class CurvedFitTest {
    private static PartMove.Found found(FitResult r) {
        return r.advice().orElseThrow().best().found().orElseThrow();
    }

    private static String notes(FitResult r) {
        return r.advice().orElseThrow().findings().stream()
                .map(f -> f.phrase().toString())
                .collect(Collectors.joining("\n"));
    }

    private static FitResult read(List<Place> places) {
        return Canopy.answer(Canopy.fit(places), Side.LEFT, Canopy.readings("trimmed", places));
    }

    /** Reference case F41: a second reckoning of the same canopy by least squares and a linear program. */
    @Test
    void should_give_the_numbers_of_the_reference_case_when_its_canopy_is_a_fit_of_a_project() {
        List<Place> places = Canopy.places();
        FitResult r = read(places);
        Node e = Canopy.CASE.expected();
        assertThat(r.advice().orElseThrow().best().status()).isEqualTo(MoveStatus.OK);
        assertThat(r.advice().orElseThrow().best().determined()).isTrue();
        PartMove.Found f = found(r);
        double worst =
                f.gapsMm().stream().mapToDouble(g -> Math.abs(g - 3)).max().orElseThrow();
        for (PartMove.Flush x : f.flushes()) {
            worst = Math.max(worst, Math.abs(x.afterMm()));
        }
        // the gaps of the rigid part are those of the straight lines to the turn's own curve, under 0.02 mm
        assertThat(worst).isCloseTo(e.get("minimax").number("worstDeviation"), within(2e-3));
        PartQuestion q = question(Canopy.fit(places), r);
        SpaceMove even = PartMoveCalculator.leastSquares(q).orElseThrow();
        Vector turn = even.turnDeg();
        Canopy.CASE.holds("rotDeg", e.get("leastSquares"), List.of(turn.x(), turn.y(), turn.z()));
        Vector pivot = Canopy.vector(Canopy.CASE.inputs().get("pivot"));
        Canopy.CASE.holds(
                "d",
                e.get("leastSquares"),
                List.of(
                        even.alongMm(pivot, new Vector(1, 0, 0), q.pivot()),
                        even.alongMm(pivot, new Vector(0, 1, 0), q.pivot()),
                        even.alongMm(pivot, new Vector(0, 0, 1), q.pivot())));
        List<Double> values = q.rows().valuesMm(even);
        Canopy.CASE.holds("gaps", e.get("leastSquares"), values.subList(0, 14));
        Canopy.CASE.holds("flush", e.get("leastSquares"), values.subList(14, 28));
    }

    private static PartQuestion question(Fit fit, FitResult r) {
        StateReadings now = r.now().orElseThrow();
        Targets targets = new Targets(fit, Side.LEFT, FitPlaces.of(fit));
        return targets.question(
                targets.rows(now.stations(), OptionalDouble.empty(), List.of()),
                targets.flushes(now.stations(), List.of()),
                List.of());
    }

    @Test
    void should_undo_a_known_motion_of_all_six_kinds_when_its_readings_are_fed_back() {
        SplittableRandom chance = new SplittableRandom(26);
        int straightened = 0;
        for (int k = 0; k < 12; k++) {
            SpaceMove wanted = new SpaceMove(draw(chance, 3), draw(chance, 0.015));
            Vector pivot = FitPlaces.of(Canopy.fit(Canopy.places())).middleInSpace();
            PartMove.Found f = found(
                    Canopy.answer(Canopy.wide(), Side.LEFT, Canopy.readings("trimmed", Canopy.needing(wanted, pivot))));
            assertThat(f.gapsMm()).allSatisfy(g -> assertThat(g).isCloseTo(15, within(0.021)));
            assertThat(f.flushes()).allSatisfy(x -> assertThat(x.afterMm()).isCloseTo(0, within(0.021)));
            double apart = f.move().shiftMm().minus(wanted.shiftMm()).length();
            assertThat(apart).isLessThan(0.15);
            // where the turn's curve is above 0.02 mm the lines are laid anew, and the motion comes back to the last
            // digit
            if (apart < 1e-4) {
                assertThat(f.move().turnRad().minus(wanted.turnRad()).length()).isLessThan(1e-6);
                straightened++;
            }
        }
        assertThat(straightened).isGreaterThan(6);
    }

    private static Vector draw(SplittableRandom chance, double size) {
        return new Vector(
                chance.nextDouble(-size, size), chance.nextDouble(-size, size), chance.nextDouble(-size, size));
    }

    @Test
    void should_answer_the_mirror_with_the_mirror_and_in_the_same_words() {
        List<Place> places = Canopy.places();
        List<Place> mirrored = places.stream().map(Place::mirrored).toList();
        FitResult left = read(places);
        FitResult right = Canopy.answer(Canopy.fit(mirrored), Side.RIGHT, Canopy.readings("trimmed", mirrored));
        SpaceMove there = OppositeHand.of(found(left).move());
        SpaceMove here = found(right).move();
        assertThat(here.shiftMm().minus(there.shiftMm()).length()).isLessThan(1e-6);
        assertThat(here.turnRad().minus(there.turnRad()).length()).isLessThan(1e-9);
        assertThat(found(right).pivot()).isEqualTo(OppositeHand.of(found(left).pivot()));
        for (int i = 0; i < places.size(); i++) {
            assertThat(found(right).gapsMm().get(i))
                    .isCloseTo(found(left).gapsMm().get(i), within(1e-6));
        }
        assertThat(right.advice().orElseThrow().sentence())
                .isEqualTo(left.advice().orElseThrow().sentence());
        assertThat(right.advice().orElseThrow().atMarks())
                .isEqualTo(left.advice().orElseThrow().atMarks());
    }

    @Test
    void should_tell_the_move_in_and_out_and_the_tilts_in_words() {
        Vector pivot = FitPlaces.of(Canopy.fit(Canopy.places())).middleInSpace();
        SpaceMove off = new SpaceMove(new Vector(-0.6, 0, 0.5), new Vector(-0.002, 0, 0));
        FitAdvice a = read(Canopy.after(off, pivot)).advice().orElseThrow();
        // it lies forward and out, its upper edge in: so it goes aft, in, and the upper edge out
        assertThat(a.sentence().toString())
                .contains("0.6 mm aft", "0.5 mm inboard", "upper edge 2.0 mm per metre outboard");
        assertThat(a.atMarks().get(0).toString()).startsWith("crown goes 0.6 mm aft");
    }

    @Test
    void should_answer_as_ever_when_every_height_is_nought() {
        List<FitStation> flat = new ArrayList<>();
        List<FitStation> said = new ArrayList<>();
        List<Place> read = Canopy.places();
        FitBulge nought = new FitBulge(
                OptionalDouble.of(0), OptionalDouble.empty(), OptionalDouble.of(0), Optional.of(new Vector(0, 0, 2)));
        for (Place p : read) {
            FitStation s = Canopy.station(p);
            flat.add(with(s, FitBulge.NONE));
            said.add(with(s, nought));
        }
        List<FitReading> readings = Canopy.readings("trimmed", read);
        FitResult plain = Canopy.answer(fit(flat), Side.LEFT, readings);
        FitResult noughts = Canopy.answer(fit(said), Side.LEFT, readings);
        assertThat(noughts.advice().orElseThrow().best().curved()).isFalse();
        assertThat(noughts.advice().orElseThrow().best())
                .isEqualTo(plain.advice().orElseThrow().best());
        assertThat(noughts.advice().orElseThrow().flush())
                .isEqualTo(plain.advice().orElseThrow().flush());
        assertThat(noughts.findings()).isEqualTo(plain.findings());
        // and the same rows told in space, where nothing leads out of the plane, give the plane's move
        PartQuestion q = question(fit(flat), plain);
        PartMove space = PartMoveCalculator.calculate(
                new PartQuestion(q.gaps(), List.of(), true, q.pivot(), q.room(), q.lift(), List.of()));
        SpaceMove there = space.found().orElseThrow().move();
        SpaceMove here = found(plain).move();
        assertThat(there.shiftMm().minus(here.shiftMm()).length()).isLessThan(1e-9);
        assertThat(there.turnRad().minus(here.turnRad()).length()).isLessThan(1e-9);
    }

    private static FitStation with(FitStation s, FitBulge bulge) {
        return new FitStation(
                s.id(),
                s.where(),
                s.at(),
                s.normal(),
                s.edge(),
                s.against(),
                s.gap(),
                s.gapTolerance(),
                s.weight(),
                bulge);
    }

    private static Fit fit(List<FitStation> stations) {
        return Canopy.fit(stations, FitState.USUAL, FitHolding.NONE, FitCutting.ANY);
    }

    @Test
    void should_say_which_of_the_six_motions_are_not_known_when_too_little_is_read() {
        List<Place> one = Canopy.places().subList(0, 2);
        FitResult r = Canopy.answer(Canopy.fit(Canopy.places()), Side.LEFT, Canopy.gaps("trimmed", one));
        PartMove best = r.advice().orElseThrow().best();
        assertThat(best.determined()).isFalse();
        assertThat(best.findings())
                .extracting(f -> f.phrase().toString())
                .anySatisfy(s -> assertThat(s)
                        .startsWith("Not known: ")
                        .contains("tilting the upper edge in or out")
                        .doesNotContain("fore or aft"));
        assertThat(best.findings())
                .extracting(f -> f.phrase().toString())
                .anySatisfy(s -> assertThat(s).contains("know 2 of the six motions"));
        assertThat(best.findings())
                .extracting(f -> f.phrase().toString())
                .anySatisfy(s -> assertThat(s).contains("no flush is read"));
    }

    @Test
    void should_say_where_nothing_was_said_of_the_curve() {
        List<FitStation> mixed = new ArrayList<>();
        for (Place p : Canopy.places()) {
            FitStation s = Canopy.station(p);
            mixed.add(
                    p.id().equals("S4")
                            ? with(s, FitBulge.NONE)
                            : p.id().equals("S5")
                                    ? with(
                                            s,
                                            new FitBulge(
                                                    OptionalDouble.of(-85),
                                                    OptionalDouble.empty(),
                                                    OptionalDouble.empty(),
                                                    Optional.empty()))
                                    : s);
        }
        FitResult r = Canopy.answer(fit(mixed), Side.LEFT, Canopy.readings("trimmed", Canopy.places()));
        assertThat(notes(r))
                .contains("Nothing is said of the curve at S4: there the gap counts in the plane, at height 0")
                .contains("Only the height is said at S5");
        assertThat(r.places())
                .hasEntrySatisfying("S4", s -> assertThat(s.isCurved()).isFalse());
        assertThat(r.places())
                .hasEntrySatisfying("S5", s -> assertThat(s.relief().heightMm()).isEqualTo(-85));
    }

    /** By hand: a lean of 30 degrees on the lower edge; the gap looks down and in, the surface down and out. */
    @Test
    void should_make_gap_and_surface_of_a_lean() {
        FitBulge lean = new FitBulge(
                OptionalDouble.of(12), OptionalDouble.of(Math.toRadians(30)), OptionalDouble.empty(), Optional.empty());
        Station s = lean.station("S", new Spot(0, -100), 0, -2);
        double c = Math.sqrt(3) / 2;
        assertThat(s.normal().minus(new Vector(0, -c, -0.5)).length()).isLessThan(1e-12);
        assertThat(s.relief().surface().minus(new Vector(0, -0.5, c)).length()).isLessThan(1e-12);
        assertThat(s.drawn().ny()).isCloseTo(-1, within(1e-12));
        FitBulge upright = new FitBulge(
                OptionalDouble.empty(), OptionalDouble.of(Math.PI / 2), OptionalDouble.empty(), Optional.empty());
        Station top = upright.station("C", new Spot(0, 100), 0, 1);
        assertThat(top.normal().minus(new Vector(0, 0, -1)).length()).isLessThan(1e-12);
        assertThat(top.drawn().ny()).isCloseTo(1, within(1e-12));
    }

    @Test
    void should_allow_for_a_state_to_come_that_pulls_the_part_in() {
        List<FitState> states = List.of(
                FitState.of("trimmed", "Trimmed"),
                new FitState(
                        "latched",
                        "Latched",
                        Optional.of(new FitState.Disturbance(
                                new SpaceMove(new Vector(0, 0, -0.4), Vector.ZERO),
                                0,
                                OptionalDouble.of(0.1),
                                "the latches pull"))));
        List<Place> places = Canopy.places();
        Fit fit = Canopy.fit(places.stream().map(Canopy::station).toList(), states, FitHolding.NONE, FitCutting.ANY);
        FitResult now = Canopy.answer(fit, Side.LEFT, Canopy.readings("trimmed", places));
        FitResult plain = read(places);
        // what is to be pulled in by 0.4 mm is set that much farther out now, and ends where it would have
        SpaceMove with = found(now).move();
        SpaceMove without = found(plain).move();
        assertThat(with.shiftMm().z() - without.shiftMm().z()).isCloseTo(0.4, within(0.01));
        assertThat(with.shiftMm().x() - without.shiftMm().x()).isCloseTo(0, within(0.01));
        FitRow row = now.advice().orElseThrow().rows().get(3);
        double nz = row.station().relief().normalZ();
        // by hand: going 0.4 in changes the gap by 0.4 times how far its direction looks out
        assertThat(row.nominalMm()).isCloseTo(3 - 0.4 * nz, within(1e-9));
    }

    @Test
    void should_find_how_a_curved_part_moved_between_states_and_teach_its_mirror() {
        List<FitState> states = List.of(FitState.of("trimmed", "Trimmed"), FitState.of("hung", "Hung"));
        Fit fit = Canopy.fit(
                Canopy.places().stream().map(Canopy::station).toList(), states, FitHolding.NONE, FitCutting.ANY);
        Vector pivot = FitPlaces.of(fit).middleInSpace();
        SpaceMove hanging = new SpaceMove(new Vector(0.2, -0.3, -0.5), new Vector(0.001, 0.0005, -0.0008));
        List<FitReading> readings = new ArrayList<>(
                Canopy.readings("trimmed", Canopy.after(new SpaceMove(Vector.ZERO, Vector.ZERO), pivot)));
        readings.addAll(Canopy.readings("hung", Canopy.after(hanging, pivot)));
        FitResult r = Canopy.answer(fit, Side.LEFT, readings);
        StateChange c = r.states().get(1).since().orElseThrow();
        SpaceMove found = c.move().orElseThrow();
        assertThat(found.shiftMm().minus(hanging.shiftMm()).length()).isLessThan(2e-3);
        assertThat(found.turnRad().minus(hanging.turnRad()).length()).isLessThan(1e-5);
        assertThat(c.restMm()).isLessThan(2e-3);
        assertThat(c.words().toString()).contains("0.5 mm inboard");
        LearnedChange taught = FitCalculator.teaches(r).get(0);
        assertThat(taught.move()).isEqualTo(OppositeHand.of(found));
    }

    @Test
    void should_trim_a_curved_part_with_every_flush_kept_inside() {
        List<Place> tight = new ArrayList<>();
        for (Place p : Canopy.after(new SpaceMove(Vector.ZERO, Vector.ZERO), Vector.ZERO)) {
            tight.add(p.reading(1.9, 0));
        }
        FitCutting cutting = new FitCutting(
                List.of("upper", "lower"), OptionalDouble.of(3), CutSide.PART, OptionalDouble.empty(), false);
        Fit fit = Canopy.fit(tight.stream().map(Canopy::station).toList(), FitState.USUAL, FitHolding.NONE, cutting);
        FitAdvice a = Canopy.answer(fit, Side.LEFT, Canopy.readings("trimmed", tight))
                .advice()
                .orElseThrow();
        assertThat(a.best().status()).isEqualTo(MoveStatus.NO_FIT);
        TrimResult.Cut cut = a.trim().orElseThrow().cut().orElseThrow();
        assertThat(cut.gapsMm()).allSatisfy(g -> assertThat(g).isBetween(2.5 - 0.01, 3.5 + 0.01));
        // sliding out along the leaning edges opens every gap, as far as the flush allows: that much less is cut than
        // in the plane
        assertThat(cut.move().shiftMm().z()).isGreaterThan(0.3);
        for (Place p : tight) {
            double flush = cut.move().alongMm(p.at(), p.surface(), found(a).pivot());
            assertThat(flush).isBetween(-0.5 - 1e-3, 0.5 + 1e-3);
        }
        assertThat(cut.depthsMm()).allSatisfy(d -> assertThat(d).isBetween(0.0, 0.6));
        assertThat(a.findings())
                .extracting(Finding::sentence)
                .anySatisfy(s -> assertThat(s).contains("lies along the surface"));
    }

    private static PartMove.Found found(FitAdvice a) {
        return a.best().found().orElseThrow();
    }

    @Test
    void should_fill_at_index_points_what_the_whole_move_leaves() {
        List<Place> places = Canopy.places();
        List<FitHolding.Point> points = new ArrayList<>();
        for (int i : new int[] {1, 6, 10}) {
            Place p = places.get(i);
            Station edge = new Station(
                    "P" + i,
                    new Spot(p.at().x(), p.at().y()),
                    p.gap().x(),
                    p.gap().y());
            points.add(new FitHolding.Point(Stop.fixed(edge), OptionalDouble.empty()));
        }
        FitHolding holding = new FitHolding(points, List.of(), "", Optional.empty());
        Fit fit = Canopy.fit(places.stream().map(Canopy::station).toList(), FitState.USUAL, holding, FitCutting.ANY);
        FitAdvice a = Canopy.answer(fit, Side.LEFT, Canopy.readings("trimmed", places))
                .advice()
                .orElseThrow();
        List<Double> shims = a.shims().orElseThrow().exactMm();
        int n = 0;
        for (int i : new int[] {1, 6, 10}) {
            // a point at a station must be filled by the gap there after the move
            assertThat(shims.get(n++)).isCloseTo(found(a).gapsMm().get(i), within(2e-3));
        }
        assertThat(a.points().get(0).isCurved()).isTrue();
    }

    @Test
    void should_ask_again_for_a_flush_that_does_not_agree_with_the_rest() {
        List<Place> places = new ArrayList<>(Canopy.places());
        Place p = places.get(4);
        places.set(4, p.reading(p.gapMm(), p.flushMm() + 1.2));
        FitResult r = read(places);
        assertThat(r.now().orElseThrow().stations().get(4).suspects())
                .extracting(s -> s.sentence().toString())
                .anySatisfy(s -> assertThat(s).startsWith("Station S5 flush reads 1."));
        assertThat(r.now().orElseThrow().stations().get(9).suspects()).isEmpty();
    }

    @Test
    void should_ask_again_for_a_gap_of_a_curved_part_of_which_no_flush_is_read() {
        Vector pivot = FitPlaces.of(Canopy.fit(Canopy.places())).middleInSpace();
        List<Place> places = new ArrayList<>(Canopy.after(new SpaceMove(new Vector(0.2, 0.1, 0), Vector.ZERO), pivot)
                .subList(0, 9));
        Place p = places.get(4);
        places.set(4, p.reading(p.gapMm() + 1.5, 0));
        FitResult r = Canopy.answer(Canopy.fit(Canopy.places()), Side.LEFT, Canopy.gaps("trimmed", places));
        assertThat(r.now().orElseThrow().stations().get(4).suspects())
                .extracting(s -> s.sentence().toString())
                .anySatisfy(s -> assertThat(s).startsWith("Station S5 reads 1.5 mm more"));
    }

    @Test
    void should_tell_a_flush_that_no_move_brings_inside() {
        List<Place> places = new ArrayList<>(Canopy.places());
        Place p = places.get(4);
        places.set(4, p.reading(p.gapMm(), p.flushMm() + 2.5));
        PartMove best = read(places).advice().orElseThrow().best();
        assertThat(best.status()).isEqualTo(MoveStatus.NO_FIT);
        assertThat(best.outside()).extracting(o -> o.wanted().named()).contains("S5 flush");
    }

    @Test
    void should_refuse_a_move_that_is_too_large_in_space_too() {
        Vector pivot = FitPlaces.of(Canopy.fit(Canopy.places())).middleInSpace();
        FitResult r = read(Canopy.after(new SpaceMove(new Vector(0, 0, 12), Vector.ZERO), pivot));
        assertThat(r.advice().orElseThrow().best().status()).isEqualTo(MoveStatus.MOVE_TOO_LARGE);
        assertThat(r.advice().orElseThrow().best().found()).isEmpty();
    }

    @Test
    void should_take_flushes_only_where_the_part_is_curved() {
        Fit curved = Canopy.fit(Canopy.places());
        FitResult r = read(Canopy.places());
        assertThat(question(curved, r).flushes()).hasSize(14).allMatch(f -> f.kind() == SpaceReading.Kind.FLUSH);
        assertThat(r.advice().orElseThrow().flush()).isEmpty();
    }
}
