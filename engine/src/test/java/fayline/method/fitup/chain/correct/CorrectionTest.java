package fayline.method.fitup.chain.correct;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.numeric.RandomStream;
import fayline.checks.FitCase.Node;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import fayline.method.fitup.chain.Chain;
import fayline.method.fitup.chain.ChainStation;
import fayline.method.fitup.chain.Link;
import fayline.method.fitup.chain.ThreeBonds;
import fayline.method.fitup.chain.correct.CorrectionResult.Way;
import fayline.method.fitup.chain.correct.RemedyResult.Outcome;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where corrections go, and what is left after the cure. */
class CorrectionTest {
    private static Map<String, Way> ways(CorrectionResult r) {
        return r.ways().stream().collect(Collectors.toMap(Way::name, w -> w));
    }

    private static Way named(CorrectionResult r, String name) {
        return r.ways().stream().filter(w -> w.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void should_match_the_hand_when_two_bonds_are_open() {
        Node e = ThreeBonds.CASE.expected();
        CorrectionResult r = CorrectionCalculator.calculate(new Correction(ThreeBonds.chain(), List.of()));
        Map<String, Way> ways = ways(r);
        assertEquals(Set.copyOf(e.get("worstDeviations").names()), ways.keySet());
        ways.forEach((name, way) -> {
            ThreeBonds.CASE.holds("worstDeviations", e.get("worstDeviations").number(name), way.worstDeviation());
            if (e.get("gaps").get(name).isThere()) {
                List<Double> gaps = e.get("gaps").get(name).numbers();
                for (int i = 0; i < gaps.size(); i++) {
                    ThreeBonds.CASE.holds("gaps", gaps.get(i), way.gapsMm().get(i));
                }
            }
        });
        assertEquals(e.text("chosen"), r.chosen().orElseThrow().name());
        // On the bench, whose x axis points up in the final frame, 0.3 mm aft is 0.3 mm down its y axis.
        Move bench = named(r, "pane to frame").moves().get(0).move();
        assertEquals(0, bench.dxMm(), 1e-6);
        assertEquals(-0.3, bench.dyMm(), 1e-6);
        assertEquals(0, bench.turnRad(), 1e-9);
    }

    private static Chain tight(double tolerance, boolean open) {
        Chain c = ThreeBonds.chain();
        List<Link> links = c.links().stream()
                .map(l -> new Link(
                        l.name(),
                        l.part(),
                        l.carrier(),
                        l.pivot(),
                        l.scheme(),
                        l.placement(),
                        l.carried(),
                        l.open() && open,
                        l.room(),
                        false))
                .toList();
        List<ChainStation> stations = c.stations().stream()
                .map(s -> new ChainStation(
                        FitRow.of(s.row().station(), s.row().gapMm(), 3 - tolerance, 3, 3 + tolerance),
                        s.on(),
                        s.id().equals("A") ? "fairing" : s.against(),
                        s.readingMm()))
                .toList();
        return Chain.of(links, stations, c.commonReadingMm(), Set.of(), 1);
    }

    @Test
    void should_go_to_an_earlier_bond_when_the_last_has_too_little_room() {
        assertEquals("frame to door", chosen(tight(0.21, true)).name());
        assertEquals(
                "frame to door and pane to frame", chosen(tight(0.15, true)).name());
        Way none = chosen(tight(0.05, true));
        assertFalse(none.fits());
        assertEquals(0.1, none.worstDeviation(), 1e-6);
    }

    private static Way chosen(Chain chain) {
        return CorrectionCalculator.calculate(new Correction(chain, List.of()))
                .chosen()
                .orElseThrow();
    }

    /** Fairing opposite A can come 0.5 forward; with the part held only F = 2.4 stays. */
    @Test
    void should_move_the_neighbour_when_it_can_move() {
        Neighbour fairing = new Neighbour("fairing", new Spot(500, 0), MoveLimits.of(0.5, 0, 0));
        CorrectionResult r = CorrectionCalculator.calculate(new Correction(tight(0.7, false), List.of(fairing)));
        Way way = r.chosen().orElseThrow();
        assertEquals("fairing", way.name());
        // F stays 0.6 off, so A need not move at all: least motion.
        assertEquals(0.6, way.worstDeviation(), 1e-6);
        assertEquals(0, way.moves().get(0).move().dxMm(), 1e-6);

        Way both = named(
                CorrectionCalculator.calculate(new Correction(tight(0.05, true), List.of(fairing))),
                "frame to door and pane to frame and fairing");
        // 0.4 and d aft: F 2.8 + d, P 3 - d, so d = 0.1; A 3.1 is no worse, the fairing stays.
        assertEquals(0.1, both.worstDeviation(), 1e-6);
        assertThrows(
                IllegalArgumentException.class,
                () -> new Correction(
                        tight(1, true), List.of(new Neighbour("moon", new Spot(0, 0), MoveLimits.WIDEST))));
    }

    @Test
    void should_close_the_gap_by_the_neighbour_when_that_alone_helps() {
        Chain c = tight(0.7, false);
        List<ChainStation> aftOnly = new ArrayList<>(c.stations().subList(0, 1));
        Chain one = Chain.of(c.links(), aftOnly, OptionalDouble.of(0), Set.of(), 1);
        Neighbour fairing = new Neighbour("fairing", new Spot(500, 0), MoveLimits.of(0.5, 0, 0));
        Way way = CorrectionCalculator.calculate(new Correction(one, List.of(fairing)))
                .chosen()
                .orElseThrow();
        assertEquals(-0.5, way.moves().get(0).move().dxMm(), 1e-6);
        assertEquals(3.1, way.worstGapMm(), 1e-6);
    }

    @Test
    void should_leave_only_remedies_when_all_is_bonded() {
        CorrectionResult r = CorrectionCalculator.calculate(new Correction(tight(0.5, false), List.of()));
        assertTrue(r.ways().isEmpty());
        assertTrue(r.findings().get(0).sentence().contains("remedies"));
    }

    private static FitRow row(String id, double x, double nx, double gap) {
        return FitRow.of(new Station(id, new Spot(x, 0), nx, 0), gap, 2.5, 3, 3.5);
    }

    @Test
    void should_compare_remedies_by_the_gap_they_reach_and_their_cost() {
        List<FitRow> rows = List.of(row("A", 500, 1, 3.8), row("F", -500, -1, 2.2));
        Map<String, Double> both = Map.of("A", 2.0, "F", 2.0);
        RemedyResult r = RemedyCalculator.calculate(
                rows,
                new Spot(0, 0),
                List.of(
                        new Remedy("trim", Remedy.Kind.TRIM, 2, both, Optional.empty(), 0),
                        new Remedy("fill", Remedy.Kind.FILL, 1, Map.of("A", 0.5), Optional.empty(), 0),
                        new Remedy(
                                "hang again",
                                Remedy.Kind.REHANG,
                                6,
                                Map.of(),
                                Optional.of(MoveLimits.of(0.5, 0.5, 0)),
                                0),
                        new Remedy("new part", Remedy.Kind.REMAKE, 60, Map.of(), Optional.empty(), 0.4)));
        assertEquals(0.8, r.before(), 1e-12);
        assertEquals(
                List.of("trim and fill", "hang again", "new part", "fill", "trim"),
                r.outcomes().stream().map(Outcome::name).toList());
        Outcome hang = r.outcomes().get(1);
        assertTrue(hang.fits());
        assertEquals(0.3, hang.worstDeviation(), 1e-6);
        assertEquals(0.5, hang.moves().get(0).dxMm(), 1e-6);
        Outcome trim = r.outcomes().get(4);
        assertEquals(List.of("A"), trim.outside());
        assertEquals(List.of(0.0, 0.8), rounded(trim.offMm()));
        assertEquals(3.8, trim.worstGapMm(), 1e-6);
        Outcome fill = r.outcomes().get(3);
        assertEquals(List.of("F"), fill.outside());
        assertEquals(List.of(0.5, 0.0), rounded(fill.onMm()));
    }

    private static RemedyResult twoThatGoTogether(double newPartCosts) {
        return RemedyCalculator.calculate(
                List.of(row("A", 500, 1, 3.9), row("F", -500, -1, 1.9)),
                new Spot(0, 0),
                List.of(
                        new Remedy("trim", Remedy.Kind.TRIM, 2, Map.of("F", 0.4), Optional.empty(), 0),
                        new Remedy(
                                "hang again",
                                Remedy.Kind.REHANG,
                                6,
                                Map.of(),
                                Optional.of(MoveLimits.of(0.5, 0.5, 0)),
                                0),
                        new Remedy("fill", Remedy.Kind.FILL, 1, Map.of("A", 0.2), Optional.empty(), 0),
                        new Remedy("new part", Remedy.Kind.REMAKE, newPartCosts, Map.of(), Optional.empty(), 0.4)));
    }

    /**
     * By hand: hung 0.5 aft A is 3.4 and F 2.4, just outside; trimmed 0.4 alone F is 2.3. Together A 3.4 is the worst, and the
     * least cut that makes F no worse is 0.2.
     */
    @Test
    void should_name_two_remedies_when_together_they_do_it_and_neither_does_alone() {
        RemedyResult r = twoThatGoTogether(60);
        assertEquals(
                List.of("trim and hang again", "new part", "hang again"),
                r.outcomes().stream().map(Outcome::name).limit(3).toList());
        assertEquals(5, r.outcomes().size());
        Outcome both = r.outcomes().get(0);
        assertEquals(8, both.cost(), 1e-12);
        assertTrue(both.fits());
        assertEquals(0.4, both.worstDeviation(), 1e-6);
        assertEquals(0.5, both.moves().get(0).dxMm(), 1e-6);
        assertEquals(List.of(0.0, 0.2), rounded(both.offMm()));
    }

    @Test
    void should_leave_two_remedies_out_when_one_does_it_for_less() {
        assertEquals(
                List.of("new part", "hang again", "trim", "fill"),
                twoThatGoTogether(7).outcomes().stream().map(Outcome::name).toList());
    }

    private static List<Double> rounded(List<Double> v) {
        return v.stream().map(x -> Math.rint(x * 1e6) / 1e6).toList();
    }

    /** Taking off only opens and putting on only closes, at no station more than allowed, and never for the worse. */
    @Test
    void should_never_make_it_worse() {
        RandomStream random = new RandomStream(21, 0);
        for (int k = 0; k < 60; k++) {
            List<FitRow> rows = new ArrayList<>();
            Map<String, Double> most = new HashMap<>();
            for (int i = 0; i < 8; i++) {
                double t = i * Math.PI / 4;
                rows.add(FitRow.of(
                        new Station("S" + i, new Spot(300 * Math.cos(t), 200 * Math.sin(t)), Math.cos(t), Math.sin(t)),
                        3 + random.nextNormal(),
                        2.5,
                        3,
                        3.5));
                most.put("S" + i, random.nextUnit());
            }
            RemedyResult r = RemedyCalculator.calculate(
                    rows,
                    new Spot(0, 0),
                    List.of(
                            new Remedy("trim", Remedy.Kind.TRIM, 1, most, Optional.empty(), 0),
                            new Remedy("fill", Remedy.Kind.FILL, 1, most, Optional.empty(), 0),
                            new Remedy(
                                    "hang",
                                    Remedy.Kind.REHANG,
                                    1,
                                    Map.of(),
                                    Optional.of(MoveLimits.of(2, 2, 0.01)),
                                    0)));
            assertTrue(r.outcomes().size() >= 3);
            for (Outcome o : r.outcomes()) {
                assertTrue(o.worstDeviation() <= r.before() + 1e-6, o.name());
                for (int i = 0; i < 8; i++) {
                    double off = o.offMm().get(i);
                    double on = o.onMm().get(i);
                    double allowed = most.getOrDefault("S" + i, 0.0) + 1e-6;
                    assertTrue(off >= 0 && on >= 0 && off <= allowed && on <= allowed);
                    if (o.moves().isEmpty()) {
                        assertEquals(rows.get(i).gapMm() + off - on, o.gapsMm().get(i), 1e-6);
                    }
                }
            }
        }
    }
}
