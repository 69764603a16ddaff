package fayline.method.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Mass;
import fayline.basis.units.MolarEnergy;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class CurePropertiesTest {
    private static final Temperature REF = Temperature.ofCelsius(23);

    @Test
    void should_never_be_younger_than_the_averaged_temperature_says_when_it_changes() {
        Random random = new Random(11);
        for (int i = 0; i < 200; i++) {
            TemperatureHistory history = random(random);
            for (RateRule rule :
                    List.of(RateRule.doubling(REF), RateRule.stated(REF, MolarEnergy.ofKilojoulesPerMole(55)))) {
                EquivalentAgeResult result = EquivalentAgeCalculator.calculate(EquivalentAge.of(history, rule));
                assertTrue(result.age().seconds() >= result.ageOfMean().seconds() * (1 - 1e-6));
            }
        }
    }

    @Test
    void should_agree_with_a_fine_sum_when_lines_are_integrated() {
        Random random = new Random(5);
        RateRule rule = RateRule.stated(REF, MolarEnergy.ofKilojoulesPerMole(60));
        for (int i = 0; i < 20; i++) {
            TemperatureHistory history = random(random);
            double end = history.end().seconds();
            int n = 100_000;
            double sum = 0;
            for (int k = 0; k < n; k++) {
                sum += rule.factorAt(history.kelvinsAt((k + 0.5) * end / n)) * end / n;
            }
            assertEquals(
                    sum,
                    EquivalentAgeCalculator.calculate(EquivalentAge.of(history, rule))
                            .age()
                            .seconds(),
                    sum * 1e-6);
        }
    }

    @Test
    void should_come_sooner_when_it_is_warmer_everywhere() {
        Random random = new Random(2);
        CureSheet sheet = sheet(point(CureState.DEMOULD, 24, 23), point(CureState.GEL, 8, 23));
        for (int i = 0; i < 100; i++) {
            TemperatureHistory cold = random(random);
            TemperatureHistory warm = cold.plus(new TemperatureDifference(4));
            for (CureState state : List.of(CureState.DEMOULD, CureState.GEL)) {
                assertTrue(reached(sheet, state, warm) < reached(sheet, state, cold));
            }
        }
    }

    @Test
    void should_be_exactly_old_enough_when_a_state_is_reached() {
        Random random = new Random(4);
        CureSheet sheet = sheet(point(CureState.HANDLING, 9, 23));
        CureLaw law = CureLaw.of(sheet, CureState.HANDLING).orElseThrow();
        for (int i = 0; i < 100; i++) {
            TemperatureHistory history = random(random);
            TimeSpan at = new TimeSpan(reached(sheet, CureState.HANDLING, history));
            EquivalentAgeResult age = EquivalentAgeCalculator.calculate(
                    new EquivalentAge(history, Optional.of(at), law.rule(), Optional.of(law.time()), Optional.empty()));
            assertEquals(law.time().seconds(), age.age().seconds(), 1);
            assertEquals(0, age.remaining().orElseThrow().seconds(), 2);
        }
    }

    @Test
    void should_let_the_coldest_probe_rule_cures_and_the_hottest_what_runs_out_when_there_are_two() {
        CureSheet sheet = sheet(point(CureState.DEMOULD, 24, 23), point(CureState.RECOAT_SHUTS, 20, 23));
        CureWatchResult result = CureClockCalculator.calculate(new CureWatch(
                sheet,
                List.of(
                        new CureWatch.Probe("keel", TemperatureHistory.constant(Temperature.ofCelsius(19))),
                        new CureWatch.Probe("deck", TemperatureHistory.constant(Temperature.ofCelsius(24)))),
                TimeSpan.ofHours(2)));
        assertEquals("keel", result.at(CureState.DEMOULD).orElseThrow().probe());
        assertEquals("deck", result.at(CureState.RECOAT_SHUTS).orElseThrow().probe());
        assertEquals(
                24 * Math.pow(2, 0.4),
                result.at(CureState.DEMOULD).orElseThrow().reachedAt().hours(),
                1e-9);
        assertFalse(result.at(CureState.DEMOULD).orElseThrow().reached());
    }

    @Test
    void should_pass_through_both_points_when_a_sheet_has_two_temperatures() {
        CureSheet sheet = sheet(point(CureState.DEMOULD, 36, 15), point(CureState.DEMOULD, 12, 30));
        CureLaw law = CureLaw.of(sheet, CureState.DEMOULD).orElseThrow();
        assertEquals(RateRule.Origin.FITTED, law.rule().origin());
        assertEquals(36, law.timeAt(Temperature.ofCelsius(15)).hours(), 1e-9);
        assertEquals(12, law.timeAt(Temperature.ofCelsius(30)).hours(), 1e-9);
        // ln(36/12) R / (1/288.15 - 1/303.15), by hand.
        assertEquals(53_194, law.rule().energyJPerMol(), 10);
        assertFalse(law.cautionsAt(Temperature.ofCelsius(50)).isEmpty());
        assertTrue(law.cautionsAt(Temperature.ofCelsius(22)).isEmpty());
    }

    @Test
    void should_take_the_safe_point_when_two_contradict_at_one_temperature() {
        CureSheet sheet = sheet(
                point(CureState.GEL, 6, 23),
                point(CureState.GEL, 8, 23),
                point(CureState.DEMOULD, 20, 23),
                point(CureState.DEMOULD, 26, 23));
        assertEquals(6, CureLaw.of(sheet, CureState.GEL).orElseThrow().time().hours(), 1e-12);
        assertEquals(
                26, CureLaw.of(sheet, CureState.DEMOULD).orElseThrow().time().hours(), 1e-12);
    }

    @Test
    void should_stay_finite_when_temperatures_are_extreme() {
        CureSheet sheet = sheet(point(CureState.DEMOULD, 24, 23));
        for (double k : new double[] {0, 1, 100, 2000, 1e6}) {
            CureWatchResult r = CureClockCalculator.calculate(new CureWatch(
                    sheet,
                    List.of(new CureWatch.Probe("p", TemperatureHistory.constant(new Temperature(k)))),
                    TimeSpan.ofHours(1)));
            r.arrivals().forEach(a -> assertTrue(Double.isFinite(a.reachedAt().seconds())));
            assertFalse(r.findings().isEmpty());
        }
        assertTrue(CureClockCalculator.calculate(new CureWatch(
                        sheet(),
                        List.of(new CureWatch.Probe("p", TemperatureHistory.constant(REF))),
                        TimeSpan.ofHours(1)))
                .findings()
                .get(0)
                .sentence()
                .contains("not covered"));
    }

    private static double reached(CureSheet sheet, CureState state, TemperatureHistory history) {
        return CureClockCalculator.calculate(
                        new CureWatch(sheet, List.of(new CureWatch.Probe("part", history)), new TimeSpan(0)))
                .at(state)
                .orElseThrow()
                .reachedAt()
                .seconds();
    }

    private static TemperatureHistory random(Random random) {
        List<TemperatureHistory.Point> points = new ArrayList<>();
        double t = 0;
        for (int i = 0; i < 8; i++) {
            points.add(new TemperatureHistory.Point(
                    TimeSpan.ofHours(t), Temperature.ofCelsius(12 + 25 * random.nextDouble())));
            t += 0.5 + 4 * random.nextDouble();
        }
        return TemperatureHistory.lines(points);
    }

    private static SheetPoint point(CureState state, double hours, double celsius) {
        return new SheetPoint(
                state,
                TimeSpan.ofHours(hours),
                Temperature.ofCelsius(celsius),
                Optional.<Mass>empty(),
                PotShape.CUP,
                "invented");
    }

    private static CureSheet sheet(SheetPoint... points) {
        return new CureSheet(List.of(points), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
