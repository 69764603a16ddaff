package fayline.app.web.frame;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Words times as a shop speaks of them: by the day of the week near now, by the date farther off.
 *
 * @param zone the shop's zone
 * @param now the shop's moment
 */
public record TimeWords(ZoneId zone, Instant now) {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_YEAR = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
    private static final DateTimeFormatter FIELD = DateTimeFormatter.ofPattern("yyyy-MM-dd'T'HH:mm", Locale.ENGLISH);

    /** This moment with its date in full. */
    public String full() {
        return DAY_YEAR.format(now.atZone(zone)) + " " + CLOCK.format(now.atZone(zone));
    }

    /** Today's date. */
    public LocalDate today() {
        return now.atZone(zone).toLocalDate();
    }

    /** The time of day alone. */
    public String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }

    /** Day and time: {@code today 14:30}, {@code tomorrow 07:30}, {@code Thu 5 Mar 07:30}. */
    public String at(Instant at) {
        ZonedDateTime local = at.atZone(zone);
        return day(local.toLocalDate()) + " " + CLOCK.format(local);
    }

    /** A day: {@code today}, {@code tomorrow}, {@code yesterday}, {@code Thu 5 Mar}, with the year where it is another. */
    public String day(LocalDate date) {
        long away = date.toEpochDay() - today().toEpochDay();
        if (away == 0) {
            return "today";
        }
        if (away == 1) {
            return "tomorrow";
        }
        if (away == -1) {
            return "yesterday";
        }
        return date.getYear() == today().getYear() ? DAY.format(date) : DAY_YEAR.format(date);
    }

    /** From and to: {@code today 09:00 to 11:30}, with the second day where it is another. */
    public String range(Instant from, Instant to) {
        boolean sameDay = from.atZone(zone).toLocalDate().equals(to.atZone(zone).toLocalDate());
        return at(from) + " to " + (sameDay ? clock(to) : at(to));
    }

    /** A span: {@code 45 min}, {@code 3 h 05 min}, {@code 2 d 4 h}. */
    public String span(Duration span) {
        long minutes = Math.abs(span.toMinutes());
        if (minutes < 60) {
            return minutes + " min";
        }
        if (minutes < 48 * 60) {
            return minutes % 60 == 0
                    ? minutes / 60 + " h"
                    : String.format(Locale.ROOT, "%d h %02d min", minutes / 60, minutes % 60);
        }
        long hours = Math.round(minutes / 60.0);
        return hours % 24 == 0 ? hours / 24 + " d" : hours / 24 + " d " + hours % 24 + " h";
    }

    /** A moment as a form's field takes it. */
    public String field(Instant at) {
        return FIELD.format(at.atZone(zone));
    }
}
