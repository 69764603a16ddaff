package fayline.method.vacuum;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Area;
import fayline.basis.units.Length;
import fayline.basis.units.Pressure;
import fayline.basis.units.TimeSpan;
import fayline.basis.units.Vacuum;
import fayline.basis.units.Volume;
import fayline.checks.CheckTable;
import fayline.method.atmosphere.StandardAtmosphere;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the vacuum table and the vacuum rows of the published one, and properties; sources stand in the tables. */
class VacuumChecksTest {
    static List<CheckTable.Row> rows() {
        return CheckTable.rows("shop/vacuum.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void should_hold_when_computed(CheckTable.Row row) {
        if (row.asks("rate")) {
            LeakDownResult leak = LeakDownCalculator.calculate(new LeakDown(
                    new Vacuum(row.si("start")),
                    new Vacuum(row.si("end")),
                    new TimeSpan(row.si("minutes")),
                    Optional.of(Vacuum.ofInchesOfMercury(row.raw("limit"))),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
            row.holds("rate", leak.perMinute().orElseThrow().inchesOfMercury());
            row.holds("ok", leak.ok().orElseThrow());
        } else if (row.asks("leak")) {
            LeakDownResult leak = LeakDownCalculator.calculate(LeakDown.ofRise(
                    new Vacuum(row.si("rise")), new TimeSpan(row.si("minutes")), new Volume(row.si("bag_volume"))));
            row.holds("leak", leak.leakPaM3PerS().orElseThrow() * 10);
        } else if (row.asks("time")) {
            PumpDownResult pump = PumpDownCalculator.calculate(new PumpDown(
                    Optional.of(new Volume(row.si("volume"))),
                    row.si("pump_speed"),
                    new Pressure(row.si("from")),
                    Optional.of(new Pressure(row.si("to"))),
                    0));
            row.holds("time", pump.time().orElseThrow().seconds());
        } else {
            clamp(row);
        }
    }

    private static void clamp(CheckTable.Row row) {
        Optional<Vacuum> gauge = Optional.empty();
        if (row.gives("vacuum") || row.gives("clamp_pressure")) {
            gauge = Optional.of(new Vacuum(row.si(row.gives("vacuum") ? "vacuum" : "clamp_pressure")));
        }
        Optional<Area> area = Optional.empty();
        if (row.gives("area")) {
            area = Optional.of(new Area(row.si("area")));
        } else if (row.gives("width")) {
            area = Optional.of(new Area(row.si("length") * row.si("width")));
        }
        ClampPressureResult result = ClampPressureCalculator.calculate(new ClampPressure(
                row.gives("ambient") ? Optional.of(new Pressure(row.si("ambient"))) : Optional.empty(),
                row.gives("elevation") ? Optional.of(new Length(row.si("elevation"))) : Optional.empty(),
                gauge,
                row.gives("bag_absolute") ? Optional.of(new Pressure(row.si("bag_absolute"))) : Optional.empty(),
                area,
                false));
        Pressure clamp = result.clamp().orElseThrow();
        boolean checked = false;
        for (String name : row.expected().keySet()) {
            checked = true;
            switch (name) {
                case "clamp_pressure", "pressure" -> row.holds(name, clamp.kilopascals());
                case "pressure_psi" -> row.holds(name, clamp.poundsPerSquareInch());
                case "vacuum_percent" ->
                    row.holds(name, result.ofAmbient().orElseThrow().percent());
                case "ambient" -> row.holds(name, result.ambient().orElseThrow().kilopascals());
                case "force" -> row.holds(name, result.force().orElseThrow().kilonewtons());
                case "as_weight" -> row.holds(name, result.force().orElseThrow().kilogramsForce());
                default -> throw new AssertionError(row.id() + " asks " + name);
            }
        }
        assertTrue(checked);
    }

    static List<CheckTable.Row> published() {
        return CheckTable.rows("shop/published.csv").stream()
                .filter(r -> r.asks("ambient"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("published")
    void should_hold_when_printed(CheckTable.Row row) {
        row.holds(
                "ambient",
                row.list("elevation").stream()
                        .map(h -> StandardAtmosphere.at(new Length(h))
                                .orElseThrow()
                                .kilopascals())
                        .toList());
    }

    @Test
    void should_take_longer_and_stop_short_when_the_bag_leaks() {
        Pressure from = Pressure.ofHectopascals(1013);
        Optional<Volume> volume = Optional.of(Volume.ofLitres(60));
        double speed = 1.5 / 3600;
        double before = 0;
        // Leaks in Pa m3/s; 0.1 Pa m3/s is 1 hPa L/s.
        for (double leak : new double[] {0, 0.2, 1, 2}) {
            PumpDownResult r = PumpDownCalculator.calculate(
                    new PumpDown(volume, speed, from, Optional.of(Pressure.ofHectopascals(50)), leak));
            double time = r.time().orElseThrow().seconds();
            assertTrue(time > before);
            assertEquals(leak / speed, r.ultimate().orElseThrow().pascals(), 1e-9);
            before = time;
        }
        PumpDownResult never = PumpDownCalculator.calculate(
                new PumpDown(volume, speed, from, Optional.of(Pressure.ofHectopascals(50)), 2.2));
        assertTrue(never.time().isEmpty());
        assertTrue(never.findings().get(0).sentence().contains("never reached"));
    }

    @Test
    void should_refuse_the_bag_when_a_limit_is_broken() {
        Vacuum start = Vacuum.ofInchesOfMercury(26);
        TimeSpan five = TimeSpan.ofMinutes(5);
        LeakDown double5 = new LeakDown(
                start,
                Vacuum.ofInchesOfMercury(20.5),
                five,
                Optional.empty(),
                Optional.of(Vacuum.ofInchesOfMercury(5)),
                Optional.of(Vacuum.ofInchesOfMercury(20)),
                Optional.empty());
        assertFalse(LeakDownCalculator.calculate(double5).ok().orElseThrow());
        assertTrue(LeakDownCalculator.calculate(LeakDown.ofReadings(start, Vacuum.ofInchesOfMercury(25), five))
                .ok()
                .orElseThrow());
        assertFalse(LeakDownCalculator.calculate(
                        LeakDown.ofReadings(Vacuum.ofInchesOfMercury(20.2), Vacuum.ofInchesOfMercury(19.9), five))
                .ok()
                .orElseThrow());
        assertTrue(LeakDownCalculator.calculate(LeakDown.ofReadings(start, start, new TimeSpan(0)))
                .ok()
                .isEmpty());
    }

    @Test
    void should_say_not_covered_when_the_gauge_shows_more_than_the_air_presses() {
        ClampPressureResult r = ClampPressureCalculator.calculate(new ClampPressure(
                Optional.empty(),
                Optional.of(Length.ofMetres(1500)),
                Optional.of(Vacuum.ofInchesOfMercury(28)),
                Optional.empty(),
                Optional.empty(),
                false));
        assertTrue(r.clamp().isEmpty());
        assertTrue(r.findings().get(0).sentence().contains("not covered"));
    }
}
