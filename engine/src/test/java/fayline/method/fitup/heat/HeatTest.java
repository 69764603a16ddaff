package fayline.method.fitup.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.finding.Finding;
import fayline.basis.finding.Severity;
import fayline.checks.FitCase;
import fayline.method.fitup.Spot;
import fayline.method.fitup.Station;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cases F26 and F27, hand figures for a 900 mm window, and what must hold for every layout. */
class HeatTest {
    private static final Expansion ACRYLIC = Expansion.even(70e-6);
    private static final Expansion CARBON = Expansion.even(2e-6);
    private static final Station AFT = new Station("S3", new Spot(450, 0), 1, 0);
    private static final Station UPPER = new Station("S4", new Spot(225, 300), 0, 1);

    @ParameterizedTest
    @ValueSource(strings = {"F26-thermal-acrylic-in-carbon", "F27-thermal-anchored-one-edge"})
    void should_hold_when_computed(String name) {
        FitCase c = FitCase.read("checks/fitup/" + name);
        FitCase.Node in = c.inputs();
        List<Double> anchor = in.get("anchor").numbers();
        List<HeatRow> rows = in.get("stations").items().stream()
                .map(s -> HeatRow.of(
                        new Station(
                                s.text("id"), new Spot(s.number("x"), s.number("y")), s.number("nx"), s.number("ny")),
                        s.number("gap"),
                        s.number("nominal")))
                .toList();
        HeatResult r = HeatCalculator.calculate(new Heat(
                new Spot(anchor.get(0), anchor.get(1)),
                expansion(in.get("alphaPart").numbers()),
                expansion(in.get("alphaSurround").numbers()),
                in.number("shopTemperature"),
                in.number("shopTemperature"),
                in.get("temperatures").numbers(),
                in.number("minimumGap"),
                rows,
                Sheet.OTHER));
        FitCase.Node by = c.expected().get("byTemperature");
        assertEquals(by.names().size(), r.temperatures().size());
        for (TemperatureHeat t : r.temperatures()) {
            FitCase.Node wanted = by.get(String.format(Locale.ROOT, "%.1f", t.degC()));
            c.holds("gaps", wanted, t.gapsMm());
            c.holds("minimum", wanted, t.minimumMm());
            c.holds("maximum", wanted, t.maximumMm());
            assertEquals(wanted.get("belowMinimum").texts(), t.belowMinimum());
        }
        c.holds(
                "smallestShopGap",
                c.expected(),
                r.stations().stream().map(StationHeat::smallestShopGapMm).toList());
    }

    private static Expansion expansion(List<Double> a) {
        return new Expansion(a.get(0), a.get(1), 0);
    }

    private static Heat window(double readAt, double reference, double gap, Sheet sheet) {
        return new Heat(
                new Spot(0, 0),
                ACRYLIC,
                CARBON,
                readAt,
                reference,
                List.of(-20.0, 60.0),
                2,
                List.of(HeatRow.of(AFT, gap, 3), HeatRow.of(UPPER, gap, 3)),
                sheet);
    }

    @Test
    void should_close_by_1_19_mm_when_a_900_mm_window_warms_from_21_to_60() {
        HeatResult r = HeatCalculator.calculate(window(21, 21, 3, Sheet.OTHER));
        assertEquals(
                3 - 450 * 68e-6 * 39 + 3 * 2e-6 * 39,
                r.stations().get(0).gapsMm().get(1),
                1e-12);
        // Touches where 3 = 450 · 68e-6 · ΔT less the growth of the surround over the gap.
        double touch = 21 + 3 / (450 * 68e-6 - 3 * 2e-6);
        assertEquals(touch, r.stations().get(0).touchDegC().orElseThrow(), 1e-9);
        assertTrue(r.findings().get(0).sentence().startsWith("At 60 degC the gap at S3 is 1.81 mm"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void should_agree_with_two_bodies_that_grow_when_anything_is_given(long seed) {
        Random r = new Random(seed);
        Station s =
                new Station("s", new Spot(r.nextDouble() * 900, r.nextDouble() * 500), r.nextDouble(), r.nextDouble());
        Expansion part = new Expansion(r.nextDouble() * 8e-5, r.nextDouble() * 8e-5, 0);
        Expansion surround = new Expansion(r.nextDouble() * 3e-5, r.nextDouble() * 3e-5, 0);
        Spot anchor = new Spot(100, 200);
        double read = 14;
        double reference = 23;
        HeatResult result = HeatCalculator.calculate(new Heat(
                anchor,
                part,
                surround,
                read,
                reference,
                List.of(reference, 70.0),
                1,
                List.of(HeatRow.of(s, 3.3, 3)),
                Sheet.OTHER));
        StationHeat one = result.stations().get(0);
        assertEquals(one.gapsMm().get(0), one.atReferenceMm(), 1e-12);
        // The gap set now, read again at the reference, is the nominal one; at the touching temperature nothing is
        // left.
        assertEquals(3, gap(s, part, surround, anchor, one.setNowMm(), reference - read), 1e-9);
        if (one.touchDegC().isPresent()) {
            assertEquals(0, gap(s, part, surround, anchor, 3.3, one.touchDegC().getAsDouble() - read), 1e-9);
        }
        assertEquals(gap(s, part, surround, anchor, 3.3, 56), one.gapsMm().get(1), 1e-9);
    }

    /** The gap from the moved end points themselves. */
    private static double gap(Station s, Expansion part, Expansion surround, Spot a, double gap, double dT) {
        double qx = s.at().xMm() + gap * s.nx();
        double qy = s.at().yMm() + gap * s.ny();
        double edgeX = a.xMm() + (s.at().xMm() - a.xMm()) * (1 + part.xPerK() * dT);
        double edgeY = a.yMm() + (s.at().yMm() - a.yMm()) * (1 + part.yPerK() * dT);
        double otherX = a.xMm() + (qx - a.xMm()) * (1 + surround.xPerK() * dT);
        double otherY = a.yMm() + (qy - a.yMm()) * (1 + surround.yPerK() * dT);
        return s.nx() * (otherX - edgeX) + s.ny() * (otherY - edgeY);
    }

    @Test
    void should_correct_by_a_third_of_a_millimetre_when_read_ten_kelvin_off() {
        HeatResult r = HeatCalculator.calculate(window(11, 21, 3, Sheet.OTHER));
        assertEquals(3 - 0.306, r.stations().get(0).atReferenceMm(), 1e-3);
        assertEquals(3 + 0.306, r.stations().get(0).setNowMm(), 1e-3);
        assertTrue(r.findings().stream().anyMatch(f -> f.sentence().contains("differ by up to 0.31 mm (at S3)")));
    }

    @Test
    void should_say_from_when_they_touch_when_the_gap_is_gone_in_service() {
        HeatResult r = HeatCalculator.calculate(window(21, 21, 1, Sheet.OTHER));
        assertEquals(
                List.of("station S3"),
                r.findings().stream()
                        .filter(f -> f.severity() == Severity.STOP)
                        .filter(f -> f.sentence().contains("part and surround touch from 54 degC on"))
                        .map(Finding::about)
                        .toList());
    }

    @Test
    void should_warn_of_sun_moisture_and_cold_when_the_sheet_is_dark_acrylic() {
        List<String> said = HeatCalculator.calculate(window(12, 21, 4, Sheet.DARK_ACRYLIC)).findings().stream()
                .map(f -> f.sentence())
                .toList();
        // At 60 degC the sheet counts as 48 · 1.4 K warmer: 4 − 450 (70e-6 · 67.2 − 2e-6 · 48) + …
        double dark = 4 - 450 * (70e-6 * 67.2 - 2e-6 * 48) + 4 * 2e-6 * 48;
        assertTrue(
                said.stream()
                        .anyMatch(t -> t.contains(String.format(Locale.ROOT, "count with a gap of %.2f mm", dark))),
                said.toString());
        assertTrue(
                said.stream().anyMatch(t -> t.contains("by 0.9 mm at the far edge in air of 60 %")), said.toString());
        assertTrue(said.stream().anyMatch(t -> t.startsWith("Do not cut or drill acrylic at 12 degC")));
        assertTrue(HeatCalculator.calculate(window(21, 21, 4, Sheet.OTHER)).findings().stream()
                .noneMatch(f -> f.about().equals("sheet")));
    }

    @Test
    void should_only_ask_for_warmth_when_the_shop_is_cool_and_be_quiet_when_it_is_warm() {
        assertTrue(SheetCareCalculator.calculate(new SheetCare(20, 400))
                .findings()
                .get(1)
                .sentence()
                .startsWith("Warm acrylic to 24 to 27 degC"));
        assertEquals(
                1,
                SheetCareCalculator.calculate(new SheetCare(25, 400)).findings().size());
    }

    @Test
    void should_lift_the_face_when_the_part_is_high() {
        HeatRow crown = new HeatRow(AFT, 3, 3, OptionalDouble.of(60));
        StationHeat s = HeatCalculator.calculate(new Heat(
                        new Spot(0, 0), ACRYLIC, CARBON, 20, 20, List.of(60.0), 1, List.of(crown), Sheet.OTHER))
                .stations()
                .get(0);
        assertEquals(60 * 68e-6, s.flushPerKelvinMm().orElseThrow(), 1e-12);
    }

    @Test
    void should_shear_the_adhesive_when_the_sheet_is_bonded_all_round() {
        BondedHeat q = new BondedHeat(
                new Spot(0, 0),
                ACRYLIC,
                CARBON,
                25,
                List.of(-15.0, 65.0),
                3,
                List.of(AFT, UPPER),
                OptionalDouble.of(0.6),
                OptionalDouble.of(0.25));
        BondedHeatResult r = BondedHeatCalculator.calculate(q);
        double hand = 68e-6 * 40 * 450 / 3;
        assertEquals(hand, r.strains().get(0).strains().get(0), 1e-12);
        assertEquals(hand, r.highestStrain(), 1e-12);
        assertEquals(hand * 0.6, r.strains().get(0).stressesMpa().get(1), 1e-12);
        assertEquals(68e-6 * 40 * 375 / 3, r.strains().get(1).strains().get(0), 1e-12);
        assertEquals(68e-6 * 40 * 450 / 0.25, r.thicknessForAllowedMm().orElseThrow(), 1e-9);
        assertTrue(r.findings().get(1).sentence().contains("make the bond 4.9 mm thick instead of 3.0 mm"));
        assertFalse(r.findings().get(0).sentence().contains("gap is"));
    }

    @Test
    void should_refuse_when_an_expansion_or_temperature_is_none() {
        assertThrows(IllegalArgumentException.class, () -> Expansion.even(70));
        assertThrows(IllegalArgumentException.class, () -> window(-300, 20, 3, Sheet.OTHER));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Heat(new Spot(0, 0), ACRYLIC, CARBON, 20, 20, List.of(), 1, List.of(), Sheet.OTHER));
    }
}
