package fayline.method.cure.reaction;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fayline.basis.units.Temperature;
import fayline.basis.units.TemperatureDifference;
import fayline.basis.units.TimeSpan;
import fayline.method.cure.GlassTransition;
import fayline.method.cure.Kinetics;
import fayline.method.cure.TemperatureHistory;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Constants invented, those of the room-temperature check rows. */
class ReactionPropertiesTest {
    private static final GlassTransition GLASS = new GlassTransition(
            Temperature.ofCelsius(-30), Temperature.ofCelsius(85), 0.45, new TemperatureDifference(15));
    private static final Kinetics KINETICS = new Kinetics(1e7 / 60, 58_000, 9e7 / 60, 56_000, 0.8, 1.4);
    private static final TemperatureHistory ROOM = TemperatureHistory.lines(List.of(
            new TemperatureHistory.Point(new TimeSpan(0), Temperature.ofCelsius(20)),
            new TemperatureHistory.Point(TimeSpan.ofDays(3), Temperature.ofCelsius(20))));

    @Test
    void should_follow_the_closed_form_when_the_order_is_one_or_two() {
        // n = 1: 1 - exp(-kt); n = 2: kt/(1 + kt).
        double k = 0.01;
        assertEquals(1 - Math.exp(-1), end(new RateLaw.NthOrder(k, 0, 1), 100), 1e-9);
        assertEquals(0.5, end(new RateLaw.NthOrder(k, 0, 2), 100), 1e-9);
    }

    private static double end(RateLaw law, double seconds) {
        return DegreeOfCureCalculator.calculate(new DegreeOfCure(
                        law,
                        TemperatureHistory.constant(Temperature.ofCelsius(20)),
                        0,
                        List.of(new TimeSpan(seconds)),
                        OptionalDouble.empty(),
                        Optional.empty()))
                .degrees()
                .get(0);
    }

    @Test
    void should_rise_and_never_pass_one_when_time_goes_on() {
        List<Double> a = degrees(Optional.empty());
        for (int i = 1; i < a.size(); i++) {
            assertTrue(a.get(i) >= a.get(i - 1) && a.get(i) <= 1);
        }
    }

    @Test
    void should_stall_at_the_cap_when_the_glass_transition_outruns_the_room() {
        List<Double> capped = degrees(Optional.of(GLASS));
        // Stall at 20 degC + 15 K for these constants: 0.7428571, as in the check row on vitrification.
        assertEquals(0.7428571, capped.get(capped.size() - 1), 1e-3);
        assertTrue(capped.get(capped.size() - 1) <= 0.7428572);
        List<Double> free = degrees(Optional.empty());
        for (int i = 0; i < free.size(); i++) {
            assertTrue(capped.get(i) <= free.get(i) + 1e-9);
        }
    }

    private static List<Double> degrees(Optional<GlassTransition> glass) {
        List<TimeSpan> hours =
                IntStream.rangeClosed(0, 72).mapToObj(h -> TimeSpan.ofHours(h)).toList();
        return DegreeOfCureCalculator.calculate(new DegreeOfCure(
                        new RateLaw.Autocatalytic(KINETICS), ROOM, 0, hours, OptionalDouble.empty(), glass))
                .degrees();
    }

    @Test
    void should_soften_and_list_the_loads_when_heated_faster_than_it_cures() {
        HeatPlanResult fast = HeatPlanCalculator.calculate(plan(20, 80, Optional.empty(), Optional.empty()));
        assertTrue(fast.softens());
        assertEquals(2, fast.list().size());
        assertTrue(fast.list().get(0).contains("canopy strut"));
        assertEquals(35, fast.before().orElseThrow().celsius(), 1e-9);
        HeatPlanResult measured =
                HeatPlanCalculator.calculate(plan(20, 50, Optional.of(Temperature.ofCelsius(84)), Optional.empty()));
        assertFalse(measured.softens());
        assertTrue(measured.list().isEmpty());
        assertEquals(34, measured.leastMargin().orElseThrow().kelvins(), 1e-9);
    }

    @Test
    void should_gain_glass_transition_when_kinetics_are_known_and_it_is_heated_slowly() {
        HeatPlanResult slow = HeatPlanCalculator.calculate(plan(3000, 60, Optional.empty(), Optional.of(KINETICS)));
        HeatPlanResult fast = HeatPlanCalculator.calculate(plan(10, 60, Optional.empty(), Optional.of(KINETICS)));
        assertTrue(slow.after().orElseThrow().compareTo(slow.before().orElseThrow()) > 0);
        assertTrue(slow.leastMargin().orElseThrow().compareTo(fast.leastMargin().orElseThrow()) > 0);
        assertTrue(fast.softens());
    }

    private static HeatPlan plan(
            double minutes, double celsius, Optional<Temperature> measured, Optional<Kinetics> kinetics) {
        return new HeatPlan(
                GLASS,
                kinetics,
                measured,
                ROOM,
                TemperatureHistory.lines(List.of(
                        new TemperatureHistory.Point(new TimeSpan(0), Temperature.ofCelsius(20)),
                        new TemperatureHistory.Point(TimeSpan.ofMinutes(minutes), Temperature.ofCelsius(celsius)),
                        new TemperatureHistory.Point(
                                TimeSpan.ofMinutes(minutes + 240), Temperature.ofCelsius(celsius)))),
                new TemperatureDifference(5),
                List.of(
                        new HeatPlan.Load("canopy strut", HeatPlan.Kind.STRUT),
                        new HeatPlan.Load("door panel", HeatPlan.Kind.OWN_WEIGHT)));
    }

    @Test
    void should_say_not_covered_when_constants_make_no_sense() {
        GlassTransition upside = new GlassTransition(
                Temperature.ofCelsius(85), Temperature.ofCelsius(-30), 0.45, new TemperatureDifference(15));
        assertTrue(GlassStateCalculator.calculate(new GlassState(upside, List.of(0.5), List.of(), List.of()))
                .findings()
                .get(0)
                .sentence()
                .contains("not covered"));
        GlassStateResult outside = GlassStateCalculator.calculate(
                new GlassState(GLASS, List.of(), List.of(Temperature.ofCelsius(100)), List.of()));
        assertTrue(outside.degrees().get(0).isEmpty());
        assertTrue(DegreeOfCureCalculator.calculate(new DegreeOfCure(
                        new RateLaw.NthOrder(1e30, 0, 1),
                        ROOM,
                        0,
                        List.of(TimeSpan.ofHours(1)),
                        OptionalDouble.empty(),
                        Optional.empty()))
                .degrees()
                .isEmpty());
    }
}
