package fayline.flow.record;

import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;

/**
 * An entry on its way into the record; place and hashes are given when it is taken.
 *
 * @param client id made by whoever sends it: 8 to 64 of {@code a-z A-Z 0-9 . _ -}; the same id is never taken twice
 * @param by who did it; empty where the program itself did
 * @param phone time at the sender, ISO 8601 UTC, or empty
 * @param at time at which it is taken, on the shop's clock
 * @param project the project; empty for the shop
 * @param kind key of its {@link EntryKind}
 * @param payload what happened
 * @param files SHA-256 of each file that belongs to it
 */
public record NewEntry(
        String client,
        String by,
        String phone,
        Instant at,
        String project,
        String kind,
        Value.Fields payload,
        List<String> files) {
    /** Checks the id and copies the list. */
    public NewEntry {
        if (!client.matches("[A-Za-z0-9._-]{8,64}")) {
            throw new IllegalArgumentException(
                    "client id \"" + client + "\": expected 8 to 64 letters, digits, dots, hyphens or underscores");
        }
        files = List.copyOf(files);
    }

    /** An entry made at this machine, without files. */
    public static NewEntry of(
            String client, String by, Instant at, String project, EntryKind kind, Value.Fields payload) {
        return new NewEntry(client, by, "", at, project, kind.key(), payload, List.of());
    }

    /** SHA-256 of the canonical payload. */
    public String payloadHash() {
        return CanonicalText.sha256(payload.canonical());
    }
}
