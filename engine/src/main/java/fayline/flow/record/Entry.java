package fayline.flow.record;

import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.NotCanonicalException;
import fayline.flow.record.payload.Value;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * One entry as it stands in the record: exactly the texts that were written, judged by {@link Chain} and nowhere else, so that
 * a damaged entry can be held and named.
 *
 * @param version of the entry's form; {@link #VERSION}
 * @param seq place in the one order, from 1, without gaps
 * @param client id made by whoever sent it, unique for good
 * @param by who did it, as picked or signed in; empty where the program itself did
 * @param phone time at the sender, ISO 8601 UTC; empty where the sender has no clock of its own
 * @param at time at which the record took it, ISO 8601 UTC
 * @param project the project; empty for what concerns the shop
 * @param kind key of a {@link EntryKind}, or of a later version's
 * @param payload what happened, canonical JSON
 * @param payloadHash SHA-256 of the payload's UTF-8 bytes, 64 hexadecimal digits
 * @param files SHA-256 of each file that belongs to the entry
 * @param previous hash of the entry before; {@link #NO_PREVIOUS} for the first
 * @param hash SHA-256 of {@link #canonicalHead()}
 */
public record Entry(
        int version,
        long seq,
        String client,
        String by,
        String phone,
        String at,
        String project,
        String kind,
        String payload,
        String payloadHash,
        List<String> files,
        String previous,
        String hash) {
    /** The form that this version writes. */
    public static final int VERSION = 1;

    /** Stands as previous hash in the first entry. */
    public static final String NO_PREVIOUS = "0".repeat(64);

    /** Copies the list. */
    public Entry {
        files = List.copyOf(files);
    }

    /**
     * The next entry of a chain.
     *
     * @param head the chain so far
     * @param fresh what was sent
     */
    public static Entry next(Head head, NewEntry fresh) {
        String payload = fresh.payload().canonical();
        Entry open = new Entry(
                VERSION,
                head.seq() + 1,
                fresh.client(),
                fresh.by(),
                fresh.phone(),
                fresh.at().toString(),
                fresh.project(),
                fresh.kind(),
                payload,
                CanonicalText.sha256(payload),
                fresh.files(),
                head.hash(),
                "");
        return open.sealed();
    }

    private Entry sealed() {
        String sealed = CanonicalText.sha256(canonicalHead());
        return new Entry(
                version, seq, client, by, phone, at, project, kind, payload, payloadHash, files, previous, sealed);
    }

    /**
     * What the hash is taken over: every field but the payload itself, which its hash stands for, and the hash. So a payload
     * can be erased by a recorded erasure while the chain still holds.
     */
    public String canonicalHead() {
        return Value.Fields.NONE
                .with("version", version)
                .with("seq", seq)
                .with("client", client)
                .with("by", by)
                .with("phone", phone)
                .with("at", at)
                .with("project", project)
                .with("kind", kind)
                .with("payload", payloadHash)
                .with("files", files)
                .with("previous", previous)
                .canonical();
    }

    /**
     * The payload as fields.
     *
     * @throws NotCanonicalException if the payload is damaged
     */
    public Value.Fields fields() {
        if (Value.parse(payload) instanceof Value.Fields f) {
            return f;
        }
        throw new NotCanonicalException("the payload of entry " + seq + " is not made of fields");
    }

    /**
     * When the record took it.
     *
     * @throws java.time.format.DateTimeParseException if the time is damaged
     */
    public Instant taken() {
        return Instant.parse(at);
    }

    /**
     * SHA-256 of each file that lies beside the record; the text of a definition file lies in the payload itself, and an erased entry
     * holds none.
     */
    public List<String> filesBeside() {
        return kind.equals(EntryKind.FILE_SAVED.key()) || isEmptied() ? List.of() : files;
    }

    /** Whether its payload was emptied; that a later entry says so is for {@link Chain} to judge. */
    public boolean isEmptied() {
        return Erasable.isEmptied(payload, payloadHash);
    }

    /** The same with its payload emptied; every hash stays. */
    public Entry emptied() {
        return new Entry(
                version,
                seq,
                client,
                by,
                phone,
                at,
                project,
                kind,
                Erasable.EMPTIED,
                payloadHash,
                files,
                previous,
                hash);
    }

    /** The entry that this one erases; empty where it erases none. */
    public Optional<Long> erases() {
        return kind.equals(Erasable.ERASED)
                ? Optional.of(fields().whole("entry").orElse(0L))
                : Optional.empty();
    }

    /** A time that was said; where it cannot be read, the time at which the entry was taken. */
    static Instant time(String said, String taken) {
        try {
            return Instant.parse(said.isEmpty() ? taken : said);
        } catch (DateTimeException e) {
            return Instant.parse(taken);
        }
    }

    /** The head of a chain that ends with this entry. */
    public Head head() {
        return new Head(seq, hash);
    }

    /** Whether something sent says the same as this entry: the same happening, whoever resends it and whenever. */
    public boolean saysTheSameAs(NewEntry fresh) {
        return payloadHash.equals(fresh.payloadHash()) && kind.equals(fresh.kind()) && project.equals(fresh.project());
    }
}
