package fayline.store.sql;

import static fayline.store.sql.EntryRows.field;

import fayline.flow.record.Conflict;
import fayline.flow.record.KeptFile;
import fayline.flow.record.RecordFold;
import fayline.flow.record.RecordState;
import fayline.flow.record.StepRecord;
import fayline.flow.record.TakenReading;
import fayline.flow.record.Touched;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.jooq.DSLContext;
import org.jooq.Record;
import org.jooq.Table;
import org.jooq.impl.DSL;

/**
 * Tables that hold what follows from the entries, for reading. Each row is a function of the folded state and of its key, so
 * that filling entry by entry and rebuilding give the same rows.
 */
final class ReadingTables {
    private static final String SCRIPT = "both/V3__reading_tables.sql";
    /** Names of the tables with their order columns. */
    static final List<List<String>> TABLES = List.of(
            List.of("record_head", "one"),
            List.of("definition_file", "project", "path"),
            List.of("step_state", "step"),
            List.of("step_note", "seq"),
            List.of("reading", "seq"),
            List.of("record_conflict", "seq"));

    private ReadingTables() {}

    private static Table<Record> table(String name) {
        return DSL.table(DSL.unquotedName(name));
    }

    /** Brings the rows that an entry touched to what the fold now says. */
    static void refresh(DSLContext db, RecordFold fold, Touched touched) {
        switch (touched.what()) {
            case NOTHING -> {}
            case FILE -> refreshFile(db, touched.scope(), touched.key(), fold.file(touched.scope(), touched.key()));
            case STEP -> refreshStep(db, fold.step(touched.key()), fold.conflicts(touched.key()));
            case STEPS -> fold.stepsOf(touched.key()).forEach(s -> refreshStep(db, s, fold.conflicts(s.step())));
            case READING ->
                refreshReading(db, Long.parseLong(touched.key()), fold.reading(Long.parseLong(touched.key())));
            case CONFLICT -> fold.conflict(Long.parseLong(touched.key())).ifPresent(c -> insert(db, c));
        }
    }

    static void setHead(DSLContext db, fayline.flow.record.Head head) {
        db.deleteFrom(table("record_head")).execute();
        db.insertInto(
                        table("record_head"),
                        field("one", Integer.class),
                        field("seq", Long.class),
                        field("hash", String.class))
                .values(1, head.seq(), head.hash())
                .execute();
    }

    /** Drops the tables, makes them anew and fills them from a state. */
    static void rebuild(DSLContext db, RecordState state) {
        TABLES.forEach(t -> db.dropTableIfExists(table(t.get(0))).execute());
        for (String statement : script().split(";")) {
            if (!statement.isBlank()) {
                db.execute(statement.strip());
            }
        }
        state.shopFiles().forEach((path, file) -> refreshFile(db, "", path, Optional.of(file)));
        state.projectFiles()
                .forEach((project, files) ->
                        files.forEach((path, file) -> refreshFile(db, project, path, Optional.of(file))));
        state.steps().values().forEach(s -> refreshStep(db, s, List.of()));
        state.readings().forEach(r -> refreshReading(db, r.seq(), Optional.of(r)));
        state.conflicts().forEach(c -> insert(db, c));
        setHead(db, state.head());
    }

    private static String script() {
        try (InputStream in = ReadingTables.class.getResourceAsStream(SCRIPT)) {
            if (in == null) {
                throw new IllegalStateException("the program lacks its own script " + SCRIPT);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?m)^--.*$", "");
        } catch (IOException e) {
            throw new IllegalStateException("the program's own script " + SCRIPT + " cannot be read", e);
        }
    }

    private static void refreshFile(DSLContext db, String project, String path, Optional<KeptFile> file) {
        db.deleteFrom(table("definition_file"))
                .where(field("project", String.class).eq(project))
                .and(field("path", String.class).eq(path))
                .execute();
        file.ifPresent(f -> db.insertInto(
                        table("definition_file"),
                        field("project", String.class),
                        field("path", String.class),
                        field("seq", Long.class),
                        field("sha256", String.class),
                        field("is_binary", Integer.class),
                        field("content", String.class))
                .values(project, path, f.seq(), f.sha256(), f.binary() ? 1 : 0, withoutNul(f.content()))
                .execute());
    }

    /** PostgreSQL holds no NUL in a text; such a file is only in the entry whole. */
    private static String withoutNul(String text) {
        return text.replace("\0", "\\u0000");
    }

    private static void refreshStep(DSLContext db, StepRecord s, List<Conflict> conflicts) {
        db.deleteFrom(table("step_state"))
                .where(field("step", String.class).eq(s.step()))
                .execute();
        db.deleteFrom(table("step_note"))
                .where(field("step", String.class).eq(s.step()))
                .execute();
        db.deleteFrom(table("record_conflict"))
                .where(field("about", String.class).eq(s.step()))
                .execute();
        db.insertInto(
                        table("step_state"),
                        field("step", String.class),
                        field("started", String.class),
                        field("finished", String.class),
                        field("people", String.class),
                        field("places", String.class),
                        field("which_way", String.class),
                        field("signed", String.class),
                        field("started_by", Long.class),
                        field("finished_by", Long.class))
                .values(
                        s.step(),
                        s.started().map(Instant::toString).orElse(""),
                        s.finished().map(Instant::toString).orElse(""),
                        Value.Many.ofTexts(s.people()).canonical(),
                        Value.Many.ofTexts(s.places()).canonical(),
                        withoutNul(s.whichWay()),
                        withoutNul(s.signed()),
                        s.startedBy(),
                        s.finishedBy())
                .execute();
        for (StepRecord.Note n : s.notes()) {
            db.insertInto(
                            table("step_note"),
                            field("seq", Long.class),
                            field("step", String.class),
                            field("happened", String.class),
                            field("who", String.class),
                            field("content", String.class))
                    .values(n.seq(), s.step(), n.at().toString(), n.by(), withoutNul(n.text()))
                    .execute();
        }
        conflicts.forEach(c -> insert(db, c));
    }

    private static void refreshReading(DSLContext db, long seq, Optional<TakenReading> reading) {
        db.deleteFrom(table("reading")).where(field("seq", Long.class).eq(seq)).execute();
        reading.ifPresent(r -> {
            Value.Fields typed = Value.Fields.NONE;
            for (var value : r.values().entrySet()) {
                typed = typed.with(value.getKey(), value.getValue());
            }
            db.insertInto(
                            table("reading"),
                            field("seq", Long.class),
                            field("project", String.class),
                            field("happened", String.class),
                            field("who", String.class),
                            field("kind", String.class),
                            field("of_what", String.class),
                            field("station", String.class),
                            field("in_state", String.class),
                            field("typed", String.class))
                    .values(
                            seq,
                            r.project(),
                            r.at().toString(),
                            r.by(),
                            r.kind(),
                            r.of(),
                            r.station(),
                            r.state(),
                            typed.canonical())
                    .execute();
        });
    }

    private static void insert(DSLContext db, Conflict c) {
        db.insertInto(
                        table("record_conflict"),
                        field("seq", Long.class),
                        field("other", Long.class),
                        field("about", String.class),
                        field("sentence", String.class))
                .values(c.seq(), c.other(), c.about(), c.sentence())
                .execute();
    }
}
