package fayline.method.cure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Mass;
import fayline.basis.units.MolarEnergy;
import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.checks.CheckTable;
import fayline.method.cure.pot.PotLife;
import fayline.method.cure.pot.PotLifeCalculator;
import fayline.method.cure.reaction.DegreeOfCure;
import fayline.method.cure.reaction.DegreeOfCureCalculator;
import fayline.method.cure.reaction.DegreeOfCureResult;
import fayline.method.cure.reaction.GlassState;
import fayline.method.cure.reaction.GlassStateCalculator;
import fayline.method.cure.reaction.GlassStateResult;
import fayline.method.cure.reaction.RateLaw;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every row of the cure table; sources stand in the table, column by column. */
class CureChecksTest {
    static List<CheckTable.Row> rows() {
        return CheckTable.rows("shop/cure.csv");
    }

    @ParameterizedTest
    @MethodSource("rows")
    void should_hold_when_computed(CheckTable.Row row) {
        boolean checked = false;
        if (row.asks("pot_life")) {
            potLife(row);
            checked = true;
        }
        if (row.asks("gel")) {
            gel(row);
            checked = true;
        }
        if (row.asks("activation_energy")) {
            RateRule rule = RateRule.between(kelvins(row.si("t1")), kelvins(row.si("t2")), row.raw("factor"));
            row.holds("activation_energy", rule.energyJPerMol());
            checked = true;
        }
        if (row.asks("alpha")) {
            degree(row);
            checked = true;
        }
        if (row.asks("Tg") || row.asks("alpha_stall")) {
            glass(row);
            checked = true;
        }
        if (row.asks("equivalent_age")) {
            age(row);
            checked = true;
        }
        assertTrue(checked, row.id());
    }

    private static void potLife(CheckTable.Row row) {
        CureSheet sheet = sheet(CureState.POT_LIFE, row.si("pot_life_ref"), row.si("temp_ref"), Optional.empty());
        PotLife question = new PotLife(
                sheet, Optional.empty(), kelvins(row.si("temp")), PotShape.CUP, false, OptionalDouble.empty());
        row.holds(
                "pot_life",
                PotLifeCalculator.calculate(question).potLife().orElseThrow().minutes());
    }

    private static void gel(CheckTable.Row row) {
        CureSheet sheet = sheet(
                CureState.GEL,
                row.si("gel_ref"),
                row.si("temp_ref"),
                Optional.of(new MolarEnergy(row.si("activation_energy"))));
        TemperatureHistory history = TemperatureHistory.constant(kelvins(row.si("temp")));
        CureWatchResult result = CureClockCalculator.calculate(
                new CureWatch(sheet, List.of(new CureWatch.Probe("part", history)), new TimeSpan(0)));
        row.holds("gel", result.at(CureState.GEL).orElseThrow().reachedAt().minutes());
    }

    private static void degree(CheckTable.Row row) {
        List<TimeSpan> times = row.gives("times")
                ? row.list("times").stream().map(TimeSpan::ofMinutes).toList()
                : List.of(new TimeSpan(row.si("time")));
        DegreeOfCureResult result = DegreeOfCureCalculator.calculate(new DegreeOfCure(
                law(row),
                history(row),
                row.gives("alpha0") ? row.raw("alpha0") : 0,
                times,
                row.asks("time_at_alpha_0p3") ? OptionalDouble.of(0.3) : OptionalDouble.empty(),
                Optional.empty()));
        row.holds("alpha", result.degrees());
        if (row.asks("time_at_alpha_0p3")) {
            row.holds("time_at_alpha_0p3", result.timeOfLevel().orElseThrow().minutes());
        }
    }

    private static RateLaw law(CheckTable.Row row) {
        CheckTable.Row source = row;
        if (row.gives("constants")) {
            source = rows().stream()
                    .filter(r -> r.id().equals("CUR-05"))
                    .findFirst()
                    .orElseThrow();
        }
        if (source.gives("A3")) {
            return new RateLaw.TwoBranch(
                    source.si("A1"),
                    source.si("E1"),
                    source.si("A2"),
                    source.si("E2"),
                    source.si("A3"),
                    source.si("E3"),
                    source.raw("B"),
                    0.3);
        }
        if (row.gives("k1")) {
            return new RateLaw.Autocatalytic(
                    new Kinetics(row.si("k1"), 0, row.si("k2"), 0, row.raw("m"), row.raw("n")));
        }
        return new RateLaw.Autocatalytic(
                new Kinetics(row.si("A1"), row.si("E1"), row.si("A2"), row.si("E2"), row.raw("m"), row.raw("n")));
    }

    private static TemperatureHistory history(CheckTable.Row row) {
        if (row.gives("profile")) {
            return TemperatureHistory.lines(row.pairs("profile").stream()
                    .map(p ->
                            new TemperatureHistory.Point(TimeSpan.ofMinutes(p.get(0)), Temperature.ofCelsius(p.get(1))))
                    .toList());
        }
        return TemperatureHistory.constant(row.gives("temp") ? kelvins(row.si("temp")) : Temperature.ofCelsius(20));
    }

    private static void glass(CheckTable.Row row) {
        GlassTransition glass = new GlassTransition(
                kelvins(row.si("Tg0")),
                kelvins(row.si("Tg_inf")),
                row.raw("lambda"),
                new TemperatureDifference(
                        row.gives("Tg_minus_Tcure_at_stall") ? row.si("Tg_minus_Tcure_at_stall") : 0));
        GlassStateResult result = GlassStateCalculator.calculate(new GlassState(
                glass,
                row.gives("alpha") ? row.list("alpha") : List.of(),
                List.of(),
                row.gives("shop_temp") ? List.of(kelvins(row.si("shop_temp"))) : List.of()));
        if (row.asks("Tg")) {
            row.holds(
                    "Tg",
                    result.transitions().stream().map(Temperature::celsius).toList());
            GlassStateResult back =
                    GlassStateCalculator.calculate(new GlassState(glass, List.of(), result.transitions(), List.of()));
            for (int i = 0; i < back.degrees().size(); i++) {
                assertEquals(row.list("alpha").get(i), back.degrees().get(i).orElseThrow(), 1e-12);
            }
        } else {
            row.holds("alpha_vitrify", result.vitrified().get(0).orElseThrow());
            row.holds("alpha_stall", result.stalled().get(0).orElseThrow());
        }
    }

    private static void age(CheckTable.Row row) {
        List<TemperatureHistory.Step> steps = new ArrayList<>();
        for (List<Double> p : row.pairs("spans")) {
            steps.add(new TemperatureHistory.Step(TimeSpan.ofHours(p.get(0)), Temperature.ofCelsius(p.get(1))));
        }
        EquivalentAgeResult result = EquivalentAgeCalculator.calculate(
                EquivalentAge.of(TemperatureHistory.steps(steps), RateRule.doubling(kelvins(row.si("temp_ref")))));
        row.holds("equivalent_age", result.age().hours());
        assertTrue(result.ageOfMean().seconds() < result.age().seconds());
    }

    private static CureSheet sheet(CureState state, double seconds, double kelvins, Optional<MolarEnergy> energy) {
        return new CureSheet(
                List.of(new SheetPoint(
                        state,
                        new TimeSpan(seconds),
                        kelvins(kelvins),
                        Optional.<Mass>empty(),
                        PotShape.CUP,
                        "the check table")),
                energy,
                Optional.empty(),
                Optional.empty());
    }

    private static Temperature kelvins(double k) {
        return new Temperature(k);
    }
}
