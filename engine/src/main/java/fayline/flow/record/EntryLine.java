package fayline.flow.record;

import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Set;

/**
 * An entry as one line of text outside a database: canonical JSON of its fields, with the payload as fields and not as text.
 * The line holds every byte that the chain is taken over.
 */
public final class EntryLine {
    private static final Set<String> FIELDS = Set.of(
            "version",
            "seq",
            "client",
            "by",
            "phone",
            "at",
            "project",
            "kind",
            "payload",
            "payload_hash",
            "files",
            "previous",
            "hash");

    private EntryLine() {}

    /**
     * The line of an entry, without a line end.
     *
     * @throws NotCanonicalException if the payload is damaged
     */
    public static String of(Entry e) {
        return Value.Fields.NONE
                .with("version", e.version())
                .with("seq", e.seq())
                .with("client", e.client())
                .with("by", e.by())
                .with("phone", e.phone())
                .with("at", e.at())
                .with("project", e.project())
                .with("kind", e.kind())
                .with("payload", e.fields())
                .with("payload_hash", e.payloadHash())
                .with("files", e.files())
                .with("previous", e.previous())
                .with("hash", e.hash())
                .canonical();
    }

    /**
     * Reads a line back; whether it is sound, {@link Chain} judges.
     *
     * @throws NotCanonicalException if it is no such line
     */
    public static Entry read(String line) {
        if (!(Value.parse(line) instanceof Value.Fields f)
                || !f.fields().keySet().equals(FIELDS)) {
            throw new NotCanonicalException("the fields are not those of an entry");
        }
        return new Entry(
                f.whole("version").orElse(0L).intValue(),
                f.whole("seq").orElse(0L),
                f.text("client"),
                f.text("by"),
                f.text("phone"),
                f.text("at"),
                f.text("project"),
                f.text("kind"),
                f.inner("payload").canonical(),
                f.text("payload_hash"),
                List.copyOf(f.texts("files")),
                f.text("previous"),
                f.text("hash"));
    }
}
