package fayline.method.fitup.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.RandomStream;
import fayline.checks.FitCase;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapOdds.StationOdds;
import fayline.method.fitup.odds.GapTrials;
import fayline.method.fitup.odds.GapTrialsCalculator;
import fayline.method.fitup.scheme.Assumption;
import fayline.method.fitup.scheme.LaterDoubt;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Missing;
import fayline.method.fitup.scheme.Scheme;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Chains of bonds: a case worked by hand, and what must hold of any. */
class ChainTest {
    @Test
    void should_match_the_hand_when_three_bonds_follow_each_other() {
        FitCase c = ThreeBonds.CASE;
        Node e = c.expected();
        ChainResult r = ChainCalculator.calculate(ThreeBonds.chain());
        GapOdds odds = r.odds().orElseThrow();
        c.holds(
                "stdGap",
                e,
                odds.stations().stream().map(StationOdds::deviationMm).toList());
        c.holds(
                "perStationNormal",
                e,
                odds.stations().stream().map(StationOdds::chance).toList());
        assertEquals(e.text("worstStation"), odds.worstStation().id());
        c.holds("jointProbability", e, odds.joint().probability());
        for (int i = 0; i < r.stations().size(); i++) {
            List<Double> wanted = e.get("linkShares").items().get(i).numbers();
            double sum = r.stations().get(i).readings();
            for (int k = 0; k < wanted.size(); k++) {
                c.holds("linkShares", wanted.get(k), r.stations().get(i).links().get(k));
                sum += r.stations().get(i).links().get(k);
            }
            assertEquals(1, sum, 1e-12);
        }
        assertEquals(e.text("spender"), r.spender().orElseThrow());
    }

    @Test
    void should_agree_with_trials() {
        ChainResult r = ChainCalculator.calculate(ThreeBonds.chain());
        assertEquals(
                r.odds().orElseThrow().joint().probability(),
                GapTrialsCalculator.calculate(new GapTrials(r.spread().orElseThrow(), 0, 3))
                        .joint()
                        .probability(),
                0.006);
    }

    @Test
    void should_find_the_placement_again_when_marks_are_exact() {
        RandomStream random = new RandomStream(8, 0);
        for (int k = 0; k < 50; k++) {
            Placement p =
                    new Placement(500 * random.nextNormal(), 500 * random.nextNormal(), 6 * random.nextUnit() - 3);
            List<DatumMark> marks = new ArrayList<>();
            for (int m = 0; m < 2 + k % 3; m++) {
                Spot bench = new Spot(300 * random.nextNormal(), 300 * random.nextNormal());
                marks.add(new DatumMark("M" + m, bench, p.toFinal(bench), 0.05 + 0.1 * random.nextUnit(), 0.1));
            }
            DatumFit fit = DatumFitCalculator.calculate(marks);
            assertEquals(p.turnRad(), fit.placement().turnRad(), 1e-9);
            assertEquals(p.xMm(), fit.placement().xMm(), 1e-6);
            assertEquals(p.yMm(), fit.placement().yMm(), 1e-6);
            assertTrue(fit.findings().isEmpty());
            Spot there = new Spot(10, -20);
            assertEquals(0, p.toBench(p.toFinal(there)).distanceMm(there), 1e-9);
        }
    }

    /** Marks drawn again and again: the fit scatters as it says it does. */
    @Test
    void should_scatter_as_its_covariance_says_when_marks_are_off() {
        RandomStream random = new RandomStream(9, 0);
        List<Spot> bench = List.of(new Spot(-300, 0), new Spot(300, 0), new Spot(0, 200));
        int n = 4000;
        double shifts = 0;
        double turns = 0;
        DatumFit last = null;
        for (int t = 0; t < n; t++) {
            List<DatumMark> marks = new ArrayList<>();
            for (Spot s : bench) {
                marks.add(new DatumMark("M", s, s.plus(0.1 * random.nextNormal(), 0.1 * random.nextNormal()), 0, 0.1));
            }
            last = DatumFitCalculator.calculate(marks);
            Spot middle = last.placement().toFinal(new Spot(0, 200.0 / 3));
            shifts += middle.xMm() * middle.xMm();
            turns += last.placement().turnRad() * last.placement().turnRad();
        }
        Move u = java.util.Objects.requireNonNull(last).covariance().deviations();
        assertEquals(u.dxMm(), Math.sqrt(shifts / n), 0.05 * u.dxMm());
        assertEquals(u.turnRad(), Math.sqrt(turns / n), 0.05 * u.turnRad());
    }

    @Test
    void should_name_the_mark_when_one_was_misread() {
        DatumFit fit = DatumFitCalculator.calculate(List.of(
                new DatumMark("M1", new Spot(0, 0), new Spot(0, 0), 0.1, 0.1),
                new DatumMark("M2", new Spot(400, 0), new Spot(400, 0), 0.1, 0.1),
                new DatumMark("M3", new Spot(0, 300), new Spot(0, 305), 0.1, 0.1),
                new DatumMark("M4", new Spot(400, 300), new Spot(400, 300), 0.1, 0.1)));
        assertEquals("M3", fit.findings().get(0).about());
        assertThrows(
                IllegalArgumentException.class,
                () -> DatumFitCalculator.calculate(
                        List.of(new DatumMark("M1", new Spot(0, 0), new Spot(0, 0), 0.1, 0.1))));
    }

    @Test
    void should_tell_no_chance_when_one_bond_is_of_unknown_quality() {
        Chain known = ThreeBonds.chain();
        Link last = known.links().get(2);
        List<Locator> spacers = last.scheme().locators().stream()
                .<Locator>map(l -> new Locator.Spacer(((Locator.Known) l).stop(), OptionalDouble.empty(), 0))
                .toList();
        List<Link> links = new ArrayList<>(known.links());
        links.set(
                2,
                new Link(
                        last.name(),
                        last.part(),
                        last.carrier(),
                        last.pivot(),
                        Scheme.of("spacers", spacers),
                        last.placement(),
                        Optional.empty(),
                        false,
                        last.room(),
                        false));
        ChainResult r =
                ChainCalculator.calculate(Chain.of(links, known.stations(), known.commonReadingMm(), Set.of(), 1));
        assertTrue(r.odds().isEmpty());
        assertEquals(3, r.missing().size());
        assertTrue(r.missing().get(0).about().startsWith("door to opening"));
        ChainResult assumed = ChainCalculator.calculate(
                Chain.of(links, known.stations(), known.commonReadingMm(), Set.of(Assumption.SPACER), 1));
        assertEquals(List.of(Assumption.SPACER), assumed.assumed());
        assertTrue(assumed.odds().isPresent());
    }

    private static ChainResult with(boolean settled, List<LaterDoubt> later, List<Missing> missing) {
        Chain c = ThreeBonds.chain();
        Link last = c.links().get(2);
        List<Link> links = new ArrayList<>(c.links());
        links.set(
                2,
                new Link(
                        last.name(),
                        last.part(),
                        last.carrier(),
                        last.pivot(),
                        last.scheme(),
                        last.placement(),
                        last.carried(),
                        last.open(),
                        last.room(),
                        settled));
        return ChainCalculator.calculate(
                new Chain(links, c.stations(), c.commonReadingMm(), later, List.of(), missing, Set.of(), c.seed()));
    }

    /** By hand at A: 0.02 pane and marks, 0.04 frame, 0.09 door, 0.01 reading; the door's part is in the reading already. */
    @Test
    void should_leave_out_a_bond_that_was_made_before_the_reading() {
        ChainResult r = with(true, List.of(), List.of());
        assertEquals(Math.sqrt(0.07), r.spread().orElseThrow().deviationMm(0), 1e-9);
        assertEquals(0, r.stations().get(0).links().get(2), 1e-12);
        assertEquals("frame to door", r.spender().orElseThrow());
    }

    /** By hand at A: 0.16 and what is not known of a state to come, 0.2 squared: 0.2; a fifth is that state's. */
    @Test
    void should_count_what_is_not_known_of_states_to_come() {
        ChainResult r = with(false, List.of(new LaterDoubt("struts", OptionalDouble.of(0.2))), List.of());
        assertEquals(Math.sqrt(0.2), r.spread().orElseThrow().deviationMm(0), 1e-9);
        ChainResult.StationShares a = r.stations().get(0);
        assertEquals(0.2, a.later(), 1e-9);
        assertEquals(0.05, a.readings(), 1e-9);
        assertEquals(0.45, a.links().get(2), 1e-9);
        GapOdds odds = r.odds().orElseThrow();
        assertEquals(1, odds.shares().stream().mapToDouble(GapOdds.Share::share).sum(), 1e-9);
        assertTrue(odds.shares().stream().anyMatch(s -> s.owner().equals("states to come")));
        double without = ChainCalculator.calculate(ThreeBonds.chain())
                .odds()
                .orElseThrow()
                .joint()
                .probability();
        assertTrue(odds.joint().probability() < without - 0.01);
    }

    @Test
    void should_tell_no_chance_when_a_state_to_come_or_a_mark_is_of_unknown_effect() {
        ChainResult state = with(false, List.of(new LaterDoubt("paint", OptionalDouble.empty())), List.of());
        assertTrue(state.odds().isEmpty()
                && state.spread().isEmpty()
                && state.spender().isEmpty());
        assertEquals("paint", state.missing().get(0).about());
        ChainResult mark =
                with(false, List.of(), List.of(new Missing("how sure mark M1 is found", "pane", Optional.empty())));
        assertTrue(mark.odds().isEmpty()
                && mark.spread().isEmpty()
                && mark.stations().isEmpty());
        assertEquals(1, mark.missing().size());
    }

    /** Marks 400 mm either side: their middle 0.01, their turn 0.02 / (2 x 400^2); C has a lever of 200, A of none. */
    @Test
    void should_tell_what_the_marks_alone_bring_to_a_gap() {
        Chain c = ThreeBonds.chain();
        DatumFit marks = c.links().get(0).carried().orElseThrow();
        assertEquals(0.1, marks.deviationMm(c.stations().get(0).row().station()), 1e-9);
        assertEquals(
                Math.sqrt(0.0125), marks.deviationMm(c.stations().get(3).row().station()), 1e-9);
    }

    @Test
    void should_refuse_a_chain_that_does_not_hang_together() {
        Chain c = ThreeBonds.chain();
        List<Link> swapped = List.of(c.links().get(0), c.links().get(2));
        assertThrows(
                IllegalArgumentException.class,
                () -> Chain.of(swapped, c.stations(), OptionalDouble.of(0), Set.of(), 1));
        ChainStation s = c.stations().get(0);
        List<ChainStation> inside = List.of(new ChainStation(s.row(), "door", "frame", OptionalDouble.of(0)));
        assertThrows(
                IllegalArgumentException.class, () -> Chain.of(c.links(), inside, OptionalDouble.of(0), Set.of(), 1));
    }
}
