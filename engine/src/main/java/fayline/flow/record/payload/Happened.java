package fayline.flow.record.payload;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.Optional;

/**
 * Something that happened, as its entry tells it with every correction of it laid over.
 *
 * @param seq its entry
 * @param kind the entry's kind, as {@code lot-drawn}
 * @param project the project; empty for what concerns the shop
 * @param at when it happened
 * @param by who entered it
 * @param fields what was entered
 */
public record Happened(long seq, String kind, String project, Instant at, String by, Value.Fields fields) {
    /** When it was entered, where that was noted because it was later than it happened. */
    public Optional<Instant> told() {
        try {
            return fields.text("told").isEmpty() ? Optional.empty() : Optional.of(Instant.parse(fields.text("told")));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
