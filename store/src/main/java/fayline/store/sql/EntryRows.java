package fayline.store.sql;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.Head;
import fayline.flow.record.erasure.Erasable;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import org.jooq.Cursor;
import org.jooq.DSLContext;
import org.jooq.Field;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;
import org.jspecify.annotations.Nullable;

/** Entries as rows of the table {@code entry}. */
final class EntryRows {
    static final Table<Record> ENTRY = DSL.table(DSL.unquotedName("entry"));
    static final Field<Long> SEQ = field("seq", Long.class);
    private static final Field<Integer> VERSION = field("version", Integer.class);
    private static final Field<String> CLIENT = field("client_id", String.class);
    private static final Field<String> WHO = field("who", String.class);
    private static final Field<String> PHONE = field("phone_at", String.class);
    private static final Field<String> TAKEN = field("taken_at", String.class);
    private static final Field<String> PROJECT = field("project", String.class);
    private static final Field<String> KIND = field("kind", String.class);
    private static final Field<String> PAYLOAD = field("payload", String.class);
    private static final Field<String> PAYLOAD_HASH = field("payload_hash", String.class);
    private static final Field<String> FILES = field("files", String.class);
    private static final Field<String> PREVIOUS = field("previous", String.class);
    private static final Field<String> HASH = field("hash", String.class);
    private static final int ROWS_AT_A_TIME = 200;

    private EntryRows() {}

    static <T> Field<T> field(String name, Class<T> type) {
        return DSL.field(DSL.unquotedName(name), type);
    }

    /** Adds one whole entry in one statement. */
    static void insert(DSLContext db, Entry e) {
        db.insertInto(
                        ENTRY,
                        SEQ,
                        VERSION,
                        CLIENT,
                        WHO,
                        PHONE,
                        TAKEN,
                        PROJECT,
                        KIND,
                        PAYLOAD,
                        PAYLOAD_HASH,
                        FILES,
                        PREVIOUS,
                        HASH)
                .values(
                        e.seq(),
                        e.version(),
                        e.client(),
                        e.by(),
                        e.phone(),
                        e.at(),
                        e.project(),
                        e.kind(),
                        e.payload(),
                        e.payloadHash(),
                        String.join(" ", e.files()),
                        e.previous(),
                        e.hash())
                .execute();
    }

    /** Empties the payload of an entry that one already there erases; the rules of the table let nothing else be changed. */
    static void empty(DSLContext db, long seq) {
        int rows = db.update(ENTRY)
                .set(PAYLOAD, Erasable.EMPTIED)
                .where(SEQ.eq(seq))
                .execute();
        if (rows != 1) {
            throw new IllegalStateException(rows + " rows instead of one for entry " + seq);
        }
    }

    /** The files that erased entries name and no other entry does. */
    static Set<String> filesOfErasedAlone(DSLContext db) {
        Set<String> erased = new TreeSet<>();
        Set<String> held = new TreeSet<>();
        db.select()
                .from(ENTRY)
                .where(FILES.ne(""))
                .and(KIND.ne(EntryKind.FILE_SAVED.key()))
                .fetch(EntryRows::entry)
                .forEach(e -> {
                    if (e.isEmptied()) {
                        erased.addAll(e.files());
                    } else {
                        held.addAll(e.filesBeside());
                    }
                });
        erased.removeAll(held);
        return erased;
    }

    static Optional<Entry> withClient(DSLContext db, String client) {
        return db.select().from(ENTRY).where(CLIENT.eq(client)).fetchOptional(EntryRows::entry);
    }

    static Optional<Entry> at(DSLContext db, long seq) {
        return db.select().from(ENTRY).where(SEQ.eq(seq)).fetchOptional(EntryRows::entry);
    }

    static Head head(DSLContext db) {
        return db.select(SEQ, HASH)
                .from(ENTRY)
                .orderBy(SEQ.desc())
                .limit(1)
                .fetchOptional(r -> new Head(r.get(SEQ), r.get(HASH)))
                .orElse(Head.EMPTY);
    }

    /** Gives every entry from one on, in order, a few rows at a time. */
    static void each(DSLContext db, long fromSeq, Consumer<Entry> taker) {
        try (Cursor<Record> rows = db.select()
                .from(ENTRY)
                .where(SEQ.ge(fromSeq))
                .orderBy(SEQ)
                .fetchSize(ROWS_AT_A_TIME)
                .fetchLazy()) {
            rows.forEach(r -> taker.accept(entry(r)));
        }
    }

    private static Entry entry(Record r) {
        String files = text(r, FILES);
        return new Entry(
                Optional.ofNullable(r.get(VERSION)).orElse(0),
                Optional.ofNullable(r.get(SEQ)).orElse(0L),
                text(r, CLIENT),
                text(r, WHO),
                text(r, PHONE),
                text(r, TAKEN),
                text(r, PROJECT),
                text(r, KIND),
                text(r, PAYLOAD),
                text(r, PAYLOAD_HASH),
                files.isEmpty() ? List.of() : List.of(files.split(" ", -1)),
                text(r, PREVIOUS),
                text(r, HASH));
    }

    private static String text(Record r, Field<String> field) {
        @Nullable String text = r.get(field);
        return text == null ? "" : text;
    }
}
