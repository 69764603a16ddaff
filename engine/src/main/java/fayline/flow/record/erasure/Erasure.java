package fayline.flow.record.erasure;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * That an entry was erased.
 *
 * @param entry the entry that was erased
 * @param seq the entry that says so
 * @param at when
 * @param by who did it
 * @param why why, as typed, to follow "because"
 */
public record Erasure(long entry, long seq, Instant at, String by, String why) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.ENGLISH);

    /**
     * What stands where the text was, as {@code erased on 2 March 2026 because Bo asked for it}.
     *
     * @param zone the shop's zone
     */
    public String words(ZoneId zone) {
        return "erased on " + at.atZone(zone).format(DAY) + " because " + why;
    }
}
