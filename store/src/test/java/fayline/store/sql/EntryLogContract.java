package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.EntryLog;
import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.Head;
import fayline.flow.record.KeptFile;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What every database that keeps the record must do. */
abstract class EntryLogContract {
    static final Instant MORNING = Instant.parse("2026-03-02T07:10:00Z");

    @TempDir
    Path folder;

    /** Prepares a fresh folder, for example with the name of another database in it. */
    abstract void prepare(Path fresh) throws IOException, SQLException;

    /** Takes the rules off the entry table, as an owner of the machine could. */
    public abstract List<String> statementsThatDropTheRules();

    /** The folder in which the database is. */
    public Path folder() {
        return folder;
    }

    @BeforeEach
    void prepareFolder() throws IOException, SQLException {
        prepare(folder);
    }

    static NewEntry note(String client, String text) {
        Value.Fields what = Value.Fields.NONE
                .with("step", "ousel-1/hull/1/bag")
                .with("at", MORNING.toString())
                .with("text", text);
        return NewEntry.of(client, "ada", MORNING, "ousel-1", EntryKind.STEP_NOTED, what);
    }

    private void sql(String... statements) throws SQLException {
        DirectSql.run(folder, statements);
    }

    private String rowsOfReadingTables() throws SQLException {
        StringBuilder out = new StringBuilder();
        try (Connection c = DataFolder.source(folder, DataFolder.elsewhere(folder), false)
                        .getConnection();
                Statement s = c.createStatement()) {
            for (List<String> table : ReadingTables.TABLES) {
                List<String> rows = new ArrayList<>();
                try (ResultSet r = s.executeQuery("select * from " + table.get(0))) {
                    int columns = r.getMetaData().getColumnCount();
                    while (r.next()) {
                        List<String> row = new ArrayList<>();
                        for (int i = 1; i <= columns; i++) {
                            row.add(r.getMetaData().getColumnName(i) + "=" + r.getString(i));
                        }
                        rows.add(row.toString());
                    }
                }
                rows.sort(null);
                out.append(table.get(0))
                        .append('\n')
                        .append(String.join("\n", rows))
                        .append('\n');
            }
        }
        return out.toString();
    }

    @Test
    void should_give_back_the_same_entries_when_opened_again() {
        String odd = "tab\t \"quote\" back\\slash é € \uD83D\uDE00 \u0000 line\nend";
        List<Entry> before;
        try (DataFolder shop = DataFolder.open(folder)) {
            assertThat(shop.log().head()).isEqualTo(Head.EMPTY);
            assertThat(shop.log().append(note("client-0001", odd))).isInstanceOf(Answer.Taken.class);
            NewEntry withFiles = new NewEntry(
                    "client-0002",
                    "",
                    "2026-03-02T07:09:00Z",
                    MORNING.plusMillis(5),
                    "",
                    "later-kind",
                    Value.Fields.NONE.with("n", 7L),
                    List.of(shop.files().put(new byte[] {1}), shop.files().put(new byte[] {2})));
            assertThat(shop.log().append(withFiles)).isInstanceOf(Answer.Taken.class);
            before = shop.log().read(1);
        }
        try (DataFolder shop = DataFolder.open(folder)) {
            assertThat(shop.log().read(1)).isEqualTo(before).hasSize(2);
            assertThat(shop.log().read(2)).hasSize(1);
            assertThat(shop.log().head()).isEqualTo(before.get(1).head());
            assertThat(before.get(0).fields().text("text")).isEqualTo(odd);
        }
        assertSound(before.get(1).head(), Optional.of(before.get(0).head()));
    }

    private void assertSound(Head end, Optional<Head> outside) {
        RecordCheck.Report report = RecordCheck.check(folder, outside);
        assertThat(report.fault()).isEmpty();
        assertThat(report.head()).isEqualTo(end);
    }

    @Test
    void should_make_no_second_entry_when_the_same_id_is_sent_again() {
        try (DataFolder shop = DataFolder.open(folder)) {
            EntryLog log = shop.log();
            Answer first = log.append(note("client-0001", "one"));
            assertThat(first).isEqualTo(new Answer.Taken(1, log.head().hash()));
            assertThat(log.append(note("client-0001", "one"))).isEqualTo(new Answer.AlreadyThere(1));
            assertThat(log.append(note("client-0001", "two")))
                    .isInstanceOfSatisfying(
                            Answer.Refused.class,
                            r -> assertThat(r.reason()).contains("client-0001").contains("entry 1"));
            List<Answer> mixed = log.append(List.of(
                    note("client-0002", "two"),
                    note("client-0001", "other"),
                    note("client-0002", "two"),
                    note("client-0003", "x")));
            assertThat(mixed.get(0)).isInstanceOf(Answer.Taken.class);
            assertThat(mixed.get(1)).isInstanceOf(Answer.Refused.class);
            assertThat(mixed.get(2)).isEqualTo(new Answer.AlreadyThere(2));
            assertThat(mixed.get(3)).isInstanceOf(Answer.Taken.class);
            assertThat(log.read(1)).hasSize(3);
        }
    }

    @Test
    void should_hold_the_same_rows_when_reading_tables_are_dropped_and_rebuilt() throws SQLException {
        String filled;
        try (DataFolder shop = DataFolder.open(folder)) {
            Random random = new Random(7);
            for (int i = 0; i < 60; i++) {
                shop.log().append(List.of(anything(random, i)));
            }
            RecordState state = RecordState.of(shop.log().read(1));
            assertThat(state.conflicts()).isNotEmpty();
            assertThat(state.readings()).isNotEmpty();
            assertThat(state.files("ousel-1")).isNotEmpty();
        }
        filled = rowsOfReadingTables();
        assertThat(filled)
                .contains("step=ousel-1/part-")
                .contains("typed={\"value\":\"3/32 in\"}")
                .contains("about=");
        sql("drop table step_state", "delete from reading", "update definition_file set content = 'wrong'");
        try (DataFolder shop = DataFolder.open(folder)) {
            shop.rebuildReadingTables();
        }
        assertThat(rowsOfReadingTables()).isEqualTo(filled);
    }

    private static NewEntry anything(Random random, int i) {
        Value.Fields of = Value.Fields.NONE
                .with("step", "ousel-1/part-" + random.nextInt(3) + "/1/lay-up")
                .with("at", MORNING.plusSeconds(random.nextInt(9999)).toString());
        String client = "client-" + (1000 + i);
        return switch (random.nextInt(6)) {
            case 0 ->
                NewEntry.of(
                        client, "ada", MORNING, "ousel-1", EntryKind.STEP_STARTED, of.with("people", List.of("ada")));
            case 1 -> NewEntry.of(client, "bo", MORNING, "ousel-1", EntryKind.STEP_FINISHED, of.with("signed", "bo"));
            case 2 ->
                NewEntry.of(client, "bo", MORNING, "ousel-1", EntryKind.STEP_NOTED, of.with("text", "n\u0000" + i));
            case 3 ->
                NewEntry.of(
                        client,
                        "bo",
                        MORNING,
                        "ousel-1",
                        EntryKind.READING_TAKEN,
                        Value.Fields.NONE
                                .with("kind", "gap")
                                .with("values", Value.Fields.NONE.with("value", "3/32 in")));
            case 4 ->
                NewEntry.of(
                        client,
                        "bo",
                        MORNING,
                        "ousel-1",
                        EntryKind.FILE_SAVED,
                        KeptFile.of("f" + random.nextInt(4) + ".yaml", ("a: " + i).getBytes(StandardCharsets.UTF_8))
                                .payload(random.nextBoolean()));
            default ->
                NewEntry.of(
                        client,
                        "bo",
                        MORNING,
                        "ousel-1",
                        EntryKind.CORRECTED,
                        Value.Fields.NONE
                                .with("entry", 1L + random.nextInt(i + 1))
                                .with("withdrawn", random.nextBoolean() ? "yes" : "no"));
        };
    }

    @Test
    void should_keep_one_order_when_many_write_at_once() throws Exception {
        int writers = 6;
        int each = 15;
        ExecutorService crew = Executors.newFixedThreadPool(writers);
        try (DataFolder shop = DataFolder.open(folder)) {
            List<Callable<List<Answer>>> work = new ArrayList<>();
            for (int w = 0; w < writers; w++) {
                int writer = w;
                work.add(() -> {
                    List<Answer> answers = new ArrayList<>();
                    for (int i = 0; i < each; i++) {
                        answers.add(shop.log().append(note("writer-" + writer + "-" + i, "n" + i)));
                    }
                    return answers;
                });
            }
            TreeSet<Long> places = new TreeSet<>();
            for (Future<List<Answer>> done : crew.invokeAll(work)) {
                long before = 0;
                for (Answer a : done.get()) {
                    long seq = ((Answer.Taken) a).seq();
                    assertThat(seq).isGreaterThan(before);
                    before = seq;
                    places.add(seq);
                }
            }
            assertThat(places).hasSize(writers * each);
            assertThat(places.last()).isEqualTo((long) writers * each);
            assertThat(Chain.check(shop.log().read(1), Optional.empty())).isEmpty();
        } finally {
            crew.shutdownNow();
        }
    }

    /** Both databases and the memory give the same record for the same entries. */
    @Test
    void should_write_the_same_bytes_when_another_kind_of_log_takes_the_same_entries() {
        List<NewEntry> sent = new ArrayList<>();
        for (int i = 0; i < 5; i++) {
            sent.add(note("client-000" + i, "é " + i));
        }
        MemoryLog memory = new MemoryLog();
        memory.append(sent);
        try (DataFolder shop = DataFolder.open(folder)) {
            shop.log().append(sent);
            assertThat(shop.log().read(1)).isEqualTo(memory.read(1));
        }
    }

    @Test
    void should_refuse_a_second_start_when_the_folder_is_open() {
        try (DataFolder shop = DataFolder.open(folder)) {
            assertThatThrownBy(() -> DataFolder.open(folder))
                    .isInstanceOf(FolderInUseException.class)
                    .hasMessageContaining(folder.toString())
                    .hasMessageContaining("already open");
            assertThat(shop.log().append(note("client-0001", "still writes")).stands())
                    .isTrue();
            assertThat(RecordCheck.check(folder, Optional.empty()).fault()).isEmpty();
        }
        try (DataFolder again = DataFolder.open(folder)) {
            assertThat(again.log().head().seq()).isEqualTo(1);
        }
    }

    @Test
    void should_answer_unknown_and_recover_when_the_database_fails_in_between() throws SQLException {
        try (DataFolder shop = DataFolder.open(folder)) {
            assertThat(shop.log().append(note("client-0001", "one")).stands()).isTrue();
            sql("alter table step_state rename to step_state_away");
            assertThat(shop.log().append(note("client-0002", "two"))).isInstanceOf(Answer.Unknown.class);
            assertThat(shop.log().head().seq()).isEqualTo(1);
            sql("alter table step_state_away rename to step_state");
            assertThat(shop.log().append(note("client-0002", "two"))).isInstanceOf(Answer.Taken.class);
            assertThat(shop.log().append(note("client-0001", "one"))).isEqualTo(new Answer.AlreadyThere(1));
            assertThat(Chain.check(shop.log().read(1), Optional.empty())).isEmpty();
            assertThat(shop.log().read(1)).hasSize(2);
        }
    }

    @Test
    void should_hold_the_same_record_when_restored_from_a_snapshot_taken_while_open() throws Exception {
        RecordSnapshot kept;
        String rows;
        try (DataFolder shop = DataFolder.open(folder)) {
            for (int i = 1; i <= 5; i++) {
                shop.log().append(note("client-000" + i, "note " + i));
            }
            shop.people().put(new PeopleTables.KnownPerson("ada", "Ada", "lead", "h1", ""));
            shop.people().add(new PeopleTables.KnownDevice("d-1", "Bench", "shared", "", "t1", MORNING));
            kept = RecordSnapshot.of(folder);
            rows = rowsOfReadingTables();
            assertThatThrownBy(() -> shop.restore(kept, taker -> {}))
                    .isInstanceOf(StoreException.class)
                    .hasMessageContaining("holds a record already");
        }
        assertThat(kept.entries()).hasSize(5);
        // An owner of the machine empties the database; the program alone could not.
        List<String> emptied = new ArrayList<>(statementsThatDropTheRules());
        emptied.addAll(List.of(
                "delete from entry",
                "delete from record_head",
                "delete from known_person",
                "delete from known_device"));
        sql(emptied.toArray(String[]::new));
        try (DataFolder shop = DataFolder.open(folder)) {
            shop.restore(kept, taker -> {});
            assertThat(shop.log().read(1)).isEqualTo(kept.entries());
            assertThat(shop.people().people()).isEqualTo(kept.people());
            assertThat(shop.people().devices()).isEqualTo(kept.devices());
            assertThat(shop.log().append(note("client-0005", "note 5"))).isInstanceOf(Answer.AlreadyThere.class);
        }
        assertThat(rowsOfReadingTables()).isEqualTo(rows);
        assertSound(kept.entries().get(4).head(), Optional.empty());
    }

    @Test
    void should_say_what_is_missing_when_there_is_no_record_to_check() throws IOException {
        Path empty = Files.createDirectory(folder.resolve("empty"));
        assertThatThrownBy(() -> RecordCheck.check(empty, Optional.empty()))
                .isInstanceOf(StoreException.class)
                .hasMessageContaining("shop.db");
    }
}
