package fayline.flow.project;

import fayline.basis.units.Fraction;
import fayline.basis.units.Temperature;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The shop's air: what was read and what is expected.
 *
 * @param readings readings in the order of time
 * @param forecast expected days; a day without an entry takes the usual one
 * @param usual what the shop's air is on a day of which nothing is known; shown as assumed
 */
public record Climate(List<Reading> readings, List<Day> forecast, Usual usual) {
    /** Copies the lists. */
    public Climate {
        readings = List.copyOf(readings);
        forecast = List.copyOf(forecast);
    }

    /**
     * One reading.
     *
     * @param at when
     * @param probe which probe or place
     * @param air air temperature
     * @param humidity relative humidity of the air
     * @param surface coldest surface, where it was read
     */
    public record Reading(
            Instant at, String probe, Temperature air, Optional<Fraction> humidity, Optional<Temperature> surface) {}

    /**
     * The shop's air expected on one day: the day value from 07:00 to 19:00, the night value otherwise.
     *
     * @param date the day
     * @param day air by day
     * @param night air in the night that ends on the next morning
     * @param humidity relative humidity
     */
    public record Day(LocalDate date, Temperature day, Temperature night, Fraction humidity) {}

    /**
     * The usual air.
     *
     * @param day air by day
     * @param night air by night
     * @param humidity relative humidity
     */
    public record Usual(Temperature day, Temperature night, Fraction humidity) {}
}
