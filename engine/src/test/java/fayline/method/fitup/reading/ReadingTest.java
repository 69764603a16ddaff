package fayline.method.fitup.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.checks.FitCase;
import fayline.method.fitup.FitRow;
import fayline.method.fitup.Move;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The reference readings, repeats by hand, and suspects planted among seeded readings. */
class ReadingTest {
    private static GaugeReading feeler(double go, double noGo) {
        return new GaugeReading.Feeler(go, noGo, Optional.empty());
    }

    private static StationGap gap(GaugeReading... all) {
        return ReadingCalculator.calculate(new StationReadings("S1", List.of(all), StationReadings.COMMON_MM));
    }

    private static GaugeReading of(FitCase.Node r) {
        Optional<WideGauge> wide = r.get("concaveRadius").isThere()
                ? Optional.of(new WideGauge(r.number("concaveRadius"), r.number("gaugeWidth")))
                : Optional.empty();
        return r.text("method").equals("feelerGoNoGo")
                ? new GaugeReading.Feeler(r.number("go"), r.number("noGo"), wide)
                : new GaugeReading.Taper(
                        r.number("reading"), r.number("std"), Math.toRadians(r.number("tiltDeg")), wide);
    }

    @Test
    void should_hold_the_reference_readings() {
        FitCase c = FitCase.read("checks/fitup/F33-reading-models");
        List<FitCase.Node> readings = c.inputs().get("readings").items();
        List<FitCase.Node> results = c.expected().get("results").items();
        assertEquals(3, results.size());
        for (int i = 0; i < results.size(); i++) {
            GaugeReading r = of(readings.get(i));
            c.holds("gap", results.get(i), r.gapMm());
            c.holds("standardUncertainty", results.get(i), r.deviationMm());
        }
    }

    @Test
    void should_take_mean_and_spread_when_a_station_was_read_again() {
        StationGap g = gap(feeler(2.9, 3.0), feeler(3.0, 3.1), feeler(2.8, 2.9));
        assertEquals(2.95, g.gapMm(), 1e-12);
        assertEquals(0.1, g.spreadMm().orElseThrow(), 1e-12);
        assertEquals(0.1 / Math.sqrt(3), g.deviationMm(), 1e-12);
        assertEquals(0.05, g.commonMm(), 1e-12);
        assertEquals(Math.hypot(0.1 / Math.sqrt(3), 0.05), g.wholeDeviationMm(), 1e-12);
        assertTrue(g.findings().isEmpty());
    }

    @Test
    void should_lessen_what_the_gauge_promises_by_root_n_but_not_what_all_share_when_repeats_agree() {
        GaugeReading once = new GaugeReading.Direct(3, 0.06);
        StationGap g = ReadingCalculator.calculate(
                new StationReadings("S1", List.of(once, once, once, once), StationReadings.COMMON_MM));
        assertEquals(0, g.spreadMm().orElseThrow(), 1e-12);
        // [jcgm100] 4.2.3: u of a mean of n is u / sqrt n
        assertEquals(0.06 / 2, g.deviationMm(), 1e-12);
        assertTrue(gap(once).spreadMm().isEmpty());
        StationGap feelers = gap(feeler(2.9, 3.0), feeler(3.0, 3.1), feeler(2.9, 3.0));
        assertEquals(0.05, feelers.commonMm(), 1e-12, "squeeze and wear of the leaves stay");
    }

    @Test
    void should_not_know_more_when_the_same_two_leaves_are_tried_again() {
        // half a leaf step is an error of the leaves, not of the hand: [jcgm100] F.2.2.1
        StationGap g = gap(feeler(2.9, 3.0), feeler(2.9, 3.0));
        assertEquals(0.1 / Math.sqrt(12), g.deviationMm(), 1e-12);
        StationGap two = gap(feeler(2.9, 3.0), feeler(2.92, 3.02));
        assertEquals(0.1 / Math.sqrt(12) / Math.sqrt(2), two.deviationMm(), 1e-12);
    }

    @Test
    void should_ask_again_and_drop_nothing_when_repeats_lie_apart() {
        StationGap g = gap(feeler(2.9, 3.0), feeler(3.4, 3.5));
        assertEquals(3.2, g.gapMm(), 1e-12);
        assertEquals(2, g.count());
        assertEquals(
                "Readings at station S1 lie between 2.95 and 3.45 mm. Read it again.",
                g.findings().get(0).sentence());
        assertTrue(gap(feeler(2.9, 3.0), feeler(3.1, 3.2)).findings().isEmpty());
    }

    @Test
    void should_count_as_nothing_and_be_one_sided_when_the_edges_touch() {
        StationGap g = gap(new GaugeReading.Touches(0.05));
        assertEquals(0, g.gapMm());
        assertTrue(g.oneSided());
        assertEquals(0.05 / Math.sqrt(3), g.deviationMm(), 1e-12);
        assertFalse(gap(new GaugeReading.Touches(0.05), feeler(0.05, 0.1)).oneSided());
    }

    @Test
    void should_add_the_film_when_a_casting_was_measured_without_it() {
        StationGap g = gap(new GaugeReading.Cast(2.3, 0.05, GaugeReading.CAST_DEVIATION_MM));
        assertEquals(2.35, g.gapMm(), 1e-12);
        assertEquals(0.1, g.deviationMm(), 1e-12);
        assertEquals(0, g.commonMm(), "a casting shares no squeeze of leaves");
    }

    @Test
    void should_shift_the_gap_and_widen_it_when_brought_to_another_temperature() {
        StationGap g = gap(new GaugeReading.Warmed(new GaugeReading.Direct(3, 0.03), -0.2, 0.04));
        assertEquals(2.8, g.gapMm(), 1e-12);
        assertEquals(0.05, g.deviationMm(), 1e-12);
    }

    @Test
    void should_refuse_readings_that_cannot_be() {
        assertThrows(IllegalArgumentException.class, () -> feeler(3, 2.9));
        assertThrows(IllegalArgumentException.class, () -> feeler(-0.1, 2.9));
        assertThrows(IllegalArgumentException.class, () -> new WideGauge(5, 12.7));
        assertThrows(
                IllegalArgumentException.class, () -> new GaugeReading.Taper(3, 0.06, Math.PI / 2, Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> new StationReadings("S1", List.of(), 0.05));
    }

    /** Sixteen stations round a rectangle whose gaps come from a rigid motion and a little noise. */
    private static List<FitRow> moved(long seed, double noise) {
        Random random = new Random(seed);
        Move move = new Move(random.nextDouble() - 0.5, random.nextDouble() - 0.5, 0.003 * (random.nextDouble() - 0.5));
        List<FitRow> rows = new ArrayList<>();
        double[][] sides = {{0, -1}, {1, 0}, {0, 1}, {-1, 0}};
        String[] names = {"lower", "aft", "upper", "forward"};
        for (int e = 0; e < 4; e++) {
            for (int k = 0; k < 4; k++) {
                double along = (k - 1.5) * 120;
                double nx = sides[e][0];
                double ny = sides[e][1];
                Station s = new Station(
                        "S" + (4 * e + k + 1), new Spot(300 * nx - along * ny, 300 * ny + along * nx), nx, ny);
                FitRow row = new FitRow(s, 3, 2.5, 3, 3.5, OptionalDouble.empty(), 1, names[e]);
                rows.add(row.withGap(row.gapAfterMm(move, new Spot(0, 0)) + noise * random.nextGaussian()));
            }
        }
        return rows;
    }

    private static List<Double> deviations(List<FitRow> rows) {
        return rows.stream().map(r -> 0.03).toList();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void should_flag_the_planted_reading_and_no_other(long seed) {
        List<FitRow> rows = new ArrayList<>(moved(seed, 0.04));
        assertTrue(SuspectReadingsCalculator.calculate(new SuspectReadings(rows, deviations(rows)))
                .isEmpty());
        int bad = 5 + (int) seed % 2;
        rows.set(bad, rows.get(bad).withGap(rows.get(bad).gapMm() + 1));
        List<Suspect> found = SuspectReadingsCalculator.calculate(new SuspectReadings(rows, deviations(rows)));
        assertEquals(2, found.size(), found.toString());
        for (Suspect s : found) {
            assertEquals(rows.get(bad).station().id(), s.stationId());
            assertEquals(1, s.offMm(), 0.25);
            assertTrue(s.sentence().toString().contains("more")
                    && s.sentence().toString().contains("Read it again"));
        }
    }

    @Test
    void should_stay_silent_when_the_part_is_merely_in_the_wrong_place_or_few_were_read() {
        List<FitRow> rows = moved(9, 0);
        assertTrue(SuspectReadingsCalculator.calculate(new SuspectReadings(rows, deviations(rows)))
                .isEmpty());
        List<FitRow> few = rows.subList(0, 2);
        assertTrue(SuspectReadingsCalculator.calculate(new SuspectReadings(few, deviations(few)))
                .isEmpty());
    }
}
