package fayline.flow.result.fit;

import static fayline.flow.result.fit.Canopy.found;
import static fayline.flow.result.fit.Canopy.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.checks.FitCase.Node;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitBulge;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
import fayline.flow.project.fit.FitStation;
import fayline.flow.reading.FitReading;
import fayline.flow.result.fit.Canopy.Place;
import fayline.method.fitup.SpaceMove;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.Vector;
import fayline.method.fitup.mirror.OppositeHand;
import fayline.method.fitup.motion.Side;
import fayline.method.fitup.move.MoveStatus;
import fayline.method.fitup.space.PartMove;
import fayline.method.fitup.space.PartMoveCalculator;
import fayline.method.fitup.space.PartQuestion;
import fayline.method.fitup.space.SpaceReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** A fit of a curved part, on the road that every fit of a project goes. */
class CurvedFitTest {
    private static String notes(FitResult r) {
        return r.advice().orElseThrow().findings().stream()
                .map(f -> f.phrase().toString())
                .collect(Collectors.joining("\n"));
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
    void should_tell_the_flush_at_every_station_as_the_move_leaves_it() {
        FitResult r = read(Canopy.places());
        PartMove.Found f = found(r);
        List<StationFlush> flushes = r.advice().orElseThrow().flushes();
        assertThat(flushes).hasSameSizeAs(f.flushes());
        for (int i = 0; i < flushes.size(); i++) {
            assertThat(flushes.get(i).afterMm()).hasValue(f.flushes().get(i).afterMm());
            assertThat(flushes.get(i).readMm()).hasValue(f.flushes().get(i).readMm());
            assertThat(flushes.get(i).lowerMm())
                    .isEqualTo(f.flushes().get(i).wanted().lowerMm());
        }
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
