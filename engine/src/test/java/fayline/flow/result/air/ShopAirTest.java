package fayline.flow.result.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import fayline.flow.plan.CureClock;
import fayline.flow.plan.WorkStep.Span;
import fayline.flow.project.Climate;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The shop's air over time, and spans read off clocks. */
class ShopAirTest {
    private static final Instant NOW = Instant.parse("2026-03-03T08:00:00Z");

    private static Climate.Reading reading(String at, String probe, double celsius) {
        return new Climate.Reading(
                Instant.parse(at), probe, Temperature.ofCelsius(celsius), Optional.empty(), Optional.empty());
    }

    private static ShopAir air(Climate.Reading... readings) {
        Climate.Day tuesday = new Climate.Day(
                LocalDate.of(2026, 3, 3), Temperature.ofCelsius(19), Temperature.ofCelsius(12), Fraction.ofPercent(60));
        Climate.Usual usual =
                new Climate.Usual(Temperature.ofCelsius(20), Temperature.ofCelsius(17), Fraction.ofPercent(55));
        return new ShopAir(new Climate(List.of(readings), List.of(tuesday), usual), List.of(), ZoneOffset.UTC, NOW);
    }

    private static double coldest(ShopAir air, String at) {
        return air.coldest(Instant.parse(at)).celsius();
    }

    @Test
    void should_take_the_night_that_ends_next_morning_when_air_is_forecast() {
        ShopAir air = air();
        assertThat(coldest(air, "2026-03-03T07:00:00Z")).isCloseTo(19, within(1e-9));
        assertThat(coldest(air, "2026-03-03T19:00:00Z")).isCloseTo(12, within(1e-9));
        assertThat(coldest(air, "2026-03-04T06:59:00Z")).isCloseTo(12, within(1e-9));
        assertThat(coldest(air, "2026-03-04T07:00:00Z")).isCloseTo(20, within(1e-9));
        assertThat(coldest(air, "2026-03-03T06:00:00Z")).isCloseTo(17, within(1e-9));
    }

    @Test
    void should_run_straight_between_near_readings_and_take_the_safe_side_of_a_lone_one() {
        ShopAir air = air(
                reading("2026-03-02T08:00:00Z", "hall", 14),
                reading("2026-03-02T12:00:00Z", "hall", 18),
                reading("2026-03-03T07:30:00Z", "hall", 15));
        assertThat(coldest(air, "2026-03-02T10:00:00Z")).isCloseTo(16, within(1e-9));
        // Two hours after a lone reading of 18 with 20 expected: 18 for cures, 20 for what shuts.
        assertThat(coldest(air, "2026-03-02T14:00:00Z")).isCloseTo(18, within(1e-9));
        assertThat(air.warmest(Instant.parse("2026-03-02T14:00:00Z")).celsius()).isCloseTo(20, within(1e-9));
        // Nothing near: as expected.
        assertThat(air.measured(Instant.parse("2026-03-02T22:00:00Z"))).isFalse();
        assertThat(coldest(air, "2026-03-02T22:00:00Z")).isCloseTo(17, within(1e-9));
    }

    @Test
    void should_leave_readings_of_the_future_out() {
        ShopAir air = air(reading("2026-03-03T09:00:00Z", "hall", 5));
        assertThat(air.latest()).isEmpty();
        assertThat(coldest(air, "2026-03-03T09:00:00Z")).isCloseTo(19, within(1e-9));
    }

    @Test
    void should_find_the_first_minute_at_which_the_sum_is_reached_when_rates_vary() {
        Random random = new Random(3);
        for (int i = 0; i < 200; i++) {
            List<Double> rates = new ArrayList<>();
            for (int k = 0; k < 30; k++) {
                rates.add(0.1 + 2 * random.nextDouble());
            }
            ClockReader reader = new ClockReader(List.of(new CureClock("c", NOW, 60, rates)));
            Span span = new Span(10 + random.nextInt(2000), "c");
            Instant start = NOW.plusSeconds(60L * (random.nextInt(600) - 60));
            Instant end = reader.over(span, start).orElseThrow();
            assertThat(reader.age(span, start, end)).isGreaterThanOrEqualTo(span.minutes() * (1 - 2e-6));
            assertThat(reader.age(span, start, end.minusSeconds(60))).isLessThan(span.minutes());
            Instant last = reader.lastMinute(span, start).orElseThrow();
            assertThat(reader.age(span, start, last)).isLessThanOrEqualTo(span.minutes() * (1 + 2e-6));
            assertThat(reader.age(span, start, last.plusSeconds(60))).isGreaterThan(span.minutes());
        }
    }
}
