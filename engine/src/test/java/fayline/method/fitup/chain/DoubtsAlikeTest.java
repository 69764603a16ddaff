package fayline.method.fitup.chain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.method.fitup.MoveLimits;
import fayline.method.fitup.odds.GapOdds;
import fayline.method.fitup.odds.GapSource;
import fayline.method.fitup.scheme.Improvement;
import fayline.method.fitup.scheme.LaterDoubt;
import fayline.method.fitup.scheme.ReadGap;
import fayline.method.fitup.scheme.SchemeCalculator;
import fayline.method.fitup.scheme.SchemeOutcome;
import fayline.method.fitup.scheme.SchemeQuestion;
import fayline.method.uncertainty.Distribution;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** One bond asked as a scheme and as a chain of one link: readings, states to come and what acts on all count the same in both. */
class DoubtsAlikeTest {
    private static final Chain THREE = ThreeBonds.chain();

    private static List<ChainStation> stations() {
        return THREE.stations().stream()
                .map(s -> new ChainStation(s.row(), "frame", "door", OptionalDouble.of(0.06)))
                .toList();
    }

    private static List<GapSource> thermometer() {
        return List.of(new GapSource.Along(
                "the thermometer",
                "temperature",
                Distribution.normal(0, 1),
                Collections.nCopies(THREE.stations().size(), 0.03)));
    }

    private static SchemeOutcome scheme(List<LaterDoubt> later) {
        List<ReadGap> gaps = stations().stream()
                .map(s -> new ReadGap(
                        s.row().station(),
                        s.row().gapMm(),
                        s.row().lowerMm(),
                        s.row().upperMm(),
                        s.readingMm()))
                .toList();
        Link link = THREE.links().get(0);
        return SchemeCalculator.calculate(new SchemeQuestion(
                        link.pivot(),
                        gaps,
                        OptionalDouble.of(0.05),
                        later,
                        thermometer(),
                        List.of(link.scheme()),
                        Set.of(),
                        7))
                .schemes()
                .get(0);
    }

    private static ChainResult chain(List<LaterDoubt> later) {
        Link first = THREE.links().get(0);
        Link only = new Link(
                first.name(),
                "frame",
                "door",
                first.pivot(),
                first.scheme(),
                Placement.SAME,
                Optional.empty(),
                true,
                MoveLimits.WIDEST,
                false);
        return ChainCalculator.calculate(new Chain(
                List.of(only), stations(), OptionalDouble.of(0.05), later, thermometer(), List.of(), Set.of(), 7));
    }

    @Test
    void should_count_states_to_come_as_a_chain_of_one_bond_does() {
        List<LaterDoubt> later = List.of(
                new LaterDoubt("struts", OptionalDouble.of(0.1)), new LaterDoubt("paint", OptionalDouble.of(0.2)));
        GapOdds alone = scheme(later).odds().orElseThrow();
        GapOdds chained = chain(later).odds().orElseThrow();
        GapOdds sure = scheme(List.of()).odds().orElseThrow();
        for (int i = 0; i < alone.stations().size(); i++) {
            double u = alone.stations().get(i).deviationMm();
            assertEquals(chained.stations().get(i).deviationMm(), u, 1e-12);
            // 0.1 and 0.2 add as squares to what was there
            assertEquals(0.01 + 0.04, u * u - Math.pow(sure.stations().get(i).deviationMm(), 2), 1e-12);
        }
        assertEquals(chained.joint().probability(), alone.joint().probability(), 1e-9);
        assertTrue(alone.joint().probability() < sure.joint().probability());
        assertTrue(alone.shares().stream().anyMatch(s -> s.source().equals("states to come") && s.share() > 0));
        assertEquals(
                1, alone.shares().stream().mapToDouble(GapOdds.Share::share).sum(), 1e-9);
    }

    @Test
    void should_tell_no_chance_and_name_the_state_when_nobody_said_how_well_it_is_known() {
        SchemeOutcome o = scheme(List.of(new LaterDoubt("Seal fitted", OptionalDouble.empty())));
        assertTrue(o.odds().isEmpty());
        assertEquals("Seal fitted", o.missing().get(0).about());
        assertEquals("uncertainty of what the state does", o.missing().get(0).what());
    }

    @Test
    void should_say_what_two_more_looks_at_the_worst_station_bring() {
        SchemeOutcome o = scheme(List.of());
        GapOdds odds = o.odds().orElseThrow();
        Improvement again = o.improvements().stream()
                .filter(i -> i.kind() == Improvement.Kind.READ_AGAIN)
                .findFirst()
                .orElseThrow();
        assertEquals(odds.worstStation().id(), again.about());
        double u = odds.worstStation().deviationMm();
        // of 0.06^2 a third is left, [jcgm100] 4.2.3
        assertEquals(Math.sqrt(u * u - 0.06 * 0.06 * 2 / 3), again.worstAfterMm(), 1e-12);
    }
}
