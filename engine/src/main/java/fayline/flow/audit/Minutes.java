package fayline.flow.audit;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;

/** Minutes between moments, and how they are told. */
final class Minutes {
    private Minutes() {}

    static long between(Instant from, Instant to) {
        return Duration.between(from, to).toMinutes();
    }

    /** Minutes in words: {@code 45 min}, {@code 2 h 30 min}. */
    static String tell(long minutes) {
        long size = Math.abs(minutes);
        if (size < 120) {
            return minutes + " min";
        }
        String sign = minutes < 0 ? "-" : "";
        return size % 60 == 0
                ? String.format(Locale.ROOT, "%s%d h", sign, size / 60)
                : String.format(Locale.ROOT, "%s%d h %d min", sign, size / 60, size % 60);
    }
}
