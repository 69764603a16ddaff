package fayline.flow.plan;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Wishes in words. */
public final class WishWords {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    /** Starts are put on quarter hours; one wished as planned is met by any within the quarter. */
    private static final int QUARTER = 15;

    private WishWords() {}

    /**
     * A wish as a clause, as {@code Ada wants Ben on it (he did the left one)}.
     *
     * @param work the work, for names and the zone
     * @param wish the wish
     */
    public static String clause(Work work, WorkWish wish) {
        String by = wish.by().isEmpty() ? "the lead" : person(work, wish.by());
        return by + " wants " + what(work, wish) + (wish.why().isEmpty() ? "" : " (" + wish.why() + ")");
    }

    /** What a wish is for, as {@code Ben on it}. */
    public static String what(Work work, WorkWish wish) {
        return switch (wish.kind()) {
            case WITH -> person(work, wish.on()) + " on it";
            case WITHOUT -> "it done without " + person(work, wish.on());
            case AT -> "it at " + place(work, wish.on());
            case AWAY -> "it kept away from " + place(work, wish.on());
            case START -> "it to begin " + span(work.zone(), wish);
        };
    }

    private static String span(ZoneId zone, WorkWish wish) {
        String from = wish.from().map(t -> words(zone, t)).orElse("");
        String before = wish.before().map(t -> words(zone, t)).orElse("");
        if (before.isEmpty()) {
            return "no sooner than " + from;
        }
        if (from.isEmpty()) {
            return "before " + before;
        }
        return halfDay(zone, wish.from().orElseThrow(), wish.before().orElseThrow())
                .orElse("between " + from + " and " + before);
    }

    /** A morning or an afternoon, parted at noon; or a start as it was planned, to a quarter of an hour. */
    private static Optional<String> halfDay(ZoneId zone, Instant from, Instant before) {
        ZonedDateTime start = from.atZone(zone);
        ZonedDateTime end = before.atZone(zone);
        ZonedDateTime noon = start.toLocalDate().atTime(LocalTime.NOON).atZone(zone);
        if (!end.isAfter(start.plusMinutes(QUARTER))) {
            return Optional.of("at " + MOMENT.format(start));
        }
        if (start.toLocalTime().equals(LocalTime.MIDNIGHT) && end.equals(noon)) {
            return Optional.of("in the morning of " + DAY.format(start));
        }
        if (start.equals(noon) && end.equals(start.toLocalDate().plusDays(1).atStartOfDay(zone))) {
            return Optional.of("in the afternoon of " + DAY.format(start));
        }
        return Optional.empty();
    }

    private static String words(ZoneId zone, Instant at) {
        return MOMENT.format(at.atZone(zone));
    }

    private static String person(Work work, String id) {
        return work.people().stream()
                .filter(p -> p.id().equals(id))
                .map(Worker::name)
                .findFirst()
                .orElse(id);
    }

    private static String place(Work work, String id) {
        return work.places().stream()
                .filter(p -> p.id().equals(id))
                .map(Place::name)
                .findFirst()
                .orElse(id);
    }
}
