package fayline.app.usecase.view;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * A step that moved.
 *
 * @param step the step
 * @param title what its card is headed
 * @param made the part or joint
 * @param running whether it is at work, so that its end moved; otherwise its start did
 * @param was when it was to start or end
 * @param is when it is to start or end now
 */
public record Moved(String step, String title, String made, boolean running, Instant was, Instant is) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    /** How much later; negative where it is earlier. */
    public Duration later() {
        return Duration.between(was, is);
    }

    /** The move in a sentence. */
    public String sentence(ZoneId zone) {
        return title + " (" + made + ") " + (running ? "ends " : "starts ") + DAY.format(is.atZone(zone)) + ", "
                + words(later().abs()) + (later().isNegative() ? " earlier" : " later") + " than "
                + DAY.format(was.atZone(zone)) + ".";
    }

    private static String words(Duration d) {
        long minutes = d.toMinutes();
        if (minutes < 120) {
            return minutes + " min";
        }
        return minutes < 48 * 60 ? Math.round(minutes / 60.0) + " h" : Math.round(minutes / (24 * 60.0)) + " days";
    }
}
