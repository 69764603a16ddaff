package fayline.flow.plan;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Wishes in words. */
public final class WishWords {
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

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
        return from.isEmpty() ? "before " + before : "between " + from + " and " + before;
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
