package fayline.flow.result.fit;

import static fayline.flow.result.fit.Canopy.found;
import static fayline.flow.result.fit.Canopy.read;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.finding.Finding;
import fayline.flow.project.fit.Fit;
import fayline.flow.project.fit.FitCutting;
import fayline.flow.project.fit.FitHolding;
import fayline.flow.project.fit.FitState;
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
import fayline.method.fitup.trim.TrimResult;
import fayline.method.fitup.trim.cut.CutSide;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What follows from the move of a curved part: states, trim, shims, and readings to take again. */
class CurvedWorkTest {
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
}
