package fayline.method.fitup.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Finding;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.scheme.Locator;
import fayline.method.fitup.scheme.Scheme;
import fayline.method.fitup.scheme.Stop;
import fayline.method.uncertainty.Distribution;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Two bonds made on benches that two marks lay, 800 mm apart, found in place to 0.1 mm; stops and readings err by nothing. By hand: the
 * shift of a bench has 0.1/sqrt 2 = 0.0707 mm. Two benches by marks of their own add to 0.1; by the same two marks to 0.1414.
 */
class SharedMarksTest {
    private static final double SURE = 1e-9;

    private static Scheme still() {
        return Scheme.of(
                "still",
                List.of(stop("P1", -300, -200, 0, -1), stop("P2", 300, -200, 0, -1), stop("P3", -400, 0, -1, 0)));
    }

    private static Locator stop(String id, double x, double y, double nx, double ny) {
        return new Locator.Known(Stop.fixed(new Station(id, new Spot(x, y), nx, ny)), Distribution.normal(0, 0));
    }

    private static DatumFit marks(double benchMm, double benchUpMm, String... names) {
        return DatumFitCalculator.calculate(List.of(
                new DatumMark(names[0], new Spot(-400, benchUpMm), new Spot(-400, 0), benchMm, 0.1),
                new DatumMark(names[1], new Spot(400, benchUpMm), new Spot(400, 0), benchMm, 0.1)));
    }

    private static Link link(String part, String carrier, DatumFit marks) {
        return Link.onBench(
                part + " to " + carrier, part, carrier, new Spot(0, 0), still(), marks, true, MoveLimits.WIDEST);
    }

    private static ChainResult chain(DatumFit first, DatumFit second) {
        List<ChainStation> stations = List.of(
                new ChainStation(
                        FitRow.of(new Station("aft", new Spot(450, 0), 1, 0), 3, 2.5, 3, 3.5),
                        "pane",
                        "door",
                        OptionalDouble.of(SURE)),
                new ChainStation(
                        FitRow.of(new Station("top aft", new Spot(400, 200), 0, 1), 3, 2.5, 3, 3.5),
                        "pane",
                        "door",
                        OptionalDouble.of(SURE)));
        return ChainCalculator.calculate(Chain.of(
                List.of(link("pane", "frame", first), link("frame", "door", second)),
                stations,
                OptionalDouble.of(0),
                Set.of(),
                1));
    }

    private static double deviationMm(ChainResult r, int station) {
        return r.odds().orElseThrow().stations().get(station).deviationMm();
    }

    private static List<String> said(ChainResult r) {
        return r.dependence().stream().map(Finding::sentence).toList();
    }

    @Test
    void should_add_variances_and_say_so_when_each_bench_has_marks_of_its_own() {
        ChainResult r = chain(marks(0, 0, "A", "B"), marks(0, 0, "C", "D"));
        assertEquals(0.1, deviationMm(r, 0), 1e-9);
        assertEquals(
                List.of("The bonds are counted as independent of each other: they name no mark in common."), said(r));
    }

    @Test
    void should_add_effects_when_the_same_marks_lay_both_benches() {
        ChainResult r = chain(marks(0, 0, "A", "B"), marks(0, 0, "A", "B"));
        assertEquals(0.2 / Math.sqrt(2), deviationMm(r, 0), 1e-9);
        // the turn as well: over the mark it is that mark's own 0.1 across, twice
        assertEquals(0.2, deviationMm(r, 1), 1e-9);
        assertTrue(said(r).get(0).startsWith("Mark A lays more than one bench"));
        assertEquals(3, said(r).size());
        List<Double> shares = r.stations().get(0).links();
        assertEquals(0.5, shares.get(0), 1e-9);
        assertEquals(0.5, shares.get(1), 1e-9);
    }

    @Test
    void should_share_one_mark_of_two() {
        ChainResult r = chain(marks(0, 0, "A", "B"), marks(0, 0, "A", "D"));
        // A counts 2 * 0.1/2 = 0.1, B and D 0.05 each
        assertEquals(Math.sqrt(0.01 + 2 * 0.0025), deviationMm(r, 0), 1e-9);
    }

    @Test
    void should_share_what_was_found_in_place_but_not_what_was_found_on_different_benches() {
        ChainResult same = chain(marks(0.1, 0, "A", "B"), marks(0.1, 0, "A", "B"));
        ChainResult two = chain(marks(0.1, 0, "A", "B"), marks(0.1, 500, "A", "B"));
        // in place (2 * 0.0707)^2; on one bench as much again, on two 2 * 0.0707^2
        assertEquals(Math.sqrt(0.02 + 0.02), deviationMm(same, 0), 1e-9);
        assertEquals(Math.sqrt(0.02 + 0.01), deviationMm(two, 0), 1e-9);
    }
}
