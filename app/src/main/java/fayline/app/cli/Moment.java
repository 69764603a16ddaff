package fayline.app.cli;

import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import picocli.CommandLine;

/**
 * A moment as typed after {@code --now}: {@code 2026-03-02T07:30} in the shop's zone, or with an offset,
 * {@code 2026-03-02T07:30+01:00}, {@code 2026-03-02T06:30Z}.
 *
 * @param text the moment as typed
 */
record Moment(String text) {
    /** The instant, once the shop's zone is known. */
    Instant in(ZoneId zone) {
        try {
            return OffsetDateTime.parse(text).toInstant();
        } catch (DateTimeException e) {
            return LocalDateTime.parse(text).atZone(zone).toInstant();
        }
    }

    /** Reads the option's value. */
    static final class Reader implements CommandLine.ITypeConverter<Moment> {
        @Override
        public Moment convert(String text) {
            Moment m = new Moment(text.trim());
            try {
                m.in(java.time.ZoneOffset.UTC);
            } catch (DateTimeException e) {
                throw new CommandLine.TypeConversionException(
                        "found \"" + text + "\", expected a moment such as 2026-03-02T07:30 (the shop's zone) or"
                                + " 2026-03-02T07:30+01:00");
            }
            return m;
        }
    }
}
