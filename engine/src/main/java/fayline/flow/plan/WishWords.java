package fayline.flow.plan;

import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Wishes in words. */
public final class WishWords {
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_YEAR = DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);

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
            case START -> "it to begin " + span(work, wish);
        };
    }

    private static String span(Work work, WorkWish wish) {
        ZonedDateTime now = work.now().atZone(work.zone());
        Optional<ZonedDateTime> from = wish.from().map(t -> t.atZone(work.zone()));
        Optional<ZonedDateTime> before = wish.before().map(t -> t.atZone(work.zone()));
        if (before.isEmpty()) {
            return "no sooner than "
                    + from.map(t -> words(t, now) + " " + CLOCK.format(t)).orElse("now");
        }
        String end = words(before.get(), now) + " " + CLOCK.format(before.get());
        if (from.isEmpty()) {
            return "before " + end;
        }
        return halfDay(from.get(), before.get(), now)
                .orElse("between " + words(from.get(), now) + " " + CLOCK.format(from.get()) + " and " + end);
    }

    /** A morning or an afternoon, parted at noon; or a start as it was planned, to a quarter of an hour. */
    private static Optional<String> halfDay(ZonedDateTime start, ZonedDateTime end, ZonedDateTime now) {
        ZonedDateTime noon = start.toLocalDate().atTime(LocalTime.NOON).atZone(start.getZone());
        if (!end.isAfter(start.plusMinutes(QUARTER))) {
            return Optional.of("at " + words(start, now) + " " + CLOCK.format(start));
        }
        if (start.toLocalTime().equals(LocalTime.MIDNIGHT) && end.equals(noon)) {
            return Optional.of("in the morning of " + words(start, now));
        }
        if (start.equals(noon) && end.equals(start.toLocalDate().plusDays(1).atStartOfDay(start.getZone()))) {
            return Optional.of("in the afternoon of " + words(start, now));
        }
        return Optional.empty();
    }

    /** A day, with its year where that is another than now's. */
    private static String words(ZonedDateTime at, ZonedDateTime now) {
        return (at.getYear() == now.getYear() ? DAY : DAY_YEAR).format(at);
    }

    /** What somebody is called; the id in quotes where the work does not know who that is. */
    public static String person(Work work, String id) {
        return work.people().stream()
                .filter(p -> p.id().equals(id))
                .map(Worker::name)
                .findFirst()
                .orElse("\"" + id + "\"");
    }

    /** What a place is called; its id where the work does not know it. */
    public static String place(Work work, String id) {
        return work.places().stream()
                .filter(p -> p.id().equals(id))
                .map(Place::name)
                .findFirst()
                .orElse(id);
    }
}
