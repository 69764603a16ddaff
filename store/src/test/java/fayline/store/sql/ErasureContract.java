package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.Head;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every database must do when personal text is erased. */
interface ErasureContract {
    /** Stands nowhere else, so that it can be looked for in the database's own files. */
    String SECRET = "Ptolemaios-hat-Zahnweh-7391";

    /** The folder in which the database is. */
    Path folder();

    private static NewEntry noteWith(String client, String text, String... files) {
        NewEntry note = EntryLogContract.note(client, text);
        return new NewEntry(client, "ada", "", note.at(), note.project(), note.kind(), note.payload(), List.of(files));
    }

    private static NewEntry erasing(String client, long entry) {
        Value.Fields kept = EntryLogContract.note("whatever-1", "").payload().without(List.of("text"));
        return NewEntry.of(
                client,
                "ada",
                EntryLogContract.MORNING.plusSeconds(600),
                "ousel-1",
                EntryKind.ERASED,
                Value.Fields.NONE
                        .with("entry", entry)
                        .with("why", "asked")
                        .with("at", EntryLogContract.MORNING.toString())
                        .with("kept", kept));
    }

    private String allText() throws IOException {
        StringBuilder all = new StringBuilder();
        try (Stream<Path> files = Files.list(folder())) {
            for (Path p : files.filter(Files::isRegularFile).toList()) {
                all.append(Files.readString(p, StandardCharsets.ISO_8859_1));
            }
        }
        return all.toString();
    }

    @Test
    default void should_leave_nothing_of_the_text_and_keep_every_hash_when_a_note_is_erased() throws Exception {
        Head before;
        try (DataFolder shop = DataFolder.open(folder())) {
            for (int i = 1; i <= 30; i++) {
                shop.log().append(EntryLogContract.note("client-" + (100 + i), i == 5 ? SECRET : "note " + i));
            }
            before = shop.log().head();
            Entry whole = shop.log().entry(5).orElseThrow();
            assertThat(shop.log().append(erasing("erase-0001", 5))).isInstanceOf(Answer.Taken.class);
            assertThat(shop.log().entry(5)).contains(whole.emptied());
            assertThat(shop.log().read(1).toString()).doesNotContain(SECRET);
            assertThat(allText()).as("neither in the database nor beside it").doesNotContain(SECRET);
            RecordState state = RecordState.of(shop.log().read(1));
            assertThat(state.steps().values().iterator().next().notes()).hasSize(30);
        }
        assertThat(allText()).doesNotContain(SECRET);
        assertThat(RecordCheck.check(folder(), Optional.of(before)).fault()).isEmpty();
        try (DataFolder shop = DataFolder.open(folder())) {
            assertThat(shop.log().append(EntryLogContract.note("client-105", SECRET)))
                    .as("sent again it makes no second entry")
                    .isEqualTo(new Answer.AlreadyThere(5));
            assertThat(shop.log().append(erasing("erase-0001", 5))).isEqualTo(new Answer.AlreadyThere(31));
            assertThat(shop.log().append(erasing("erase-0002", 5))).isInstanceOf(Answer.Refused.class);
        }
    }

    @Test
    default void should_write_the_same_bytes_as_the_memory_when_the_same_is_erased() {
        List<NewEntry> sent = List.of(
                EntryLogContract.note("client-0001", "one"),
                EntryLogContract.note("client-0002", "two"),
                erasing("erase-0001", 1),
                erasing("erase-0002", 9),
                EntryLogContract.note("client-0003", "three"));
        MemoryLog memory = new MemoryLog();
        List<Answer> answers = memory.append(sent);
        try (DataFolder shop = DataFolder.open(folder())) {
            assertThat(shop.log().append(sent)).isEqualTo(answers);
            assertThat(shop.log().read(1)).isEqualTo(memory.read(1)).hasSize(4);
        }
    }

    @Test
    default void should_refuse_when_sql_empties_what_no_later_entry_erases_or_changes_more() throws SQLException {
        try (DataFolder shop = DataFolder.open(folder())) {
            shop.log()
                    .append(List.of(
                            EntryLogContract.note("client-0001", "one"), EntryLogContract.note("client-0002", "two")));
            shop.log().append(erasing("erase-0001", 1));
        }
        String empty = "update entry set payload = '" + Erasable.EMPTIED + "'";
        for (String bad : List.of(
                empty + " where seq = 2",
                empty + " where seq = 3",
                empty + ", who = 'eve' where seq = 1",
                "update entry set payload = '{}' where seq = 1",
                "update entry set payload = '{\"erased\":\"no\"}' where seq = 1",
                "update entry set who = 'eve' where seq = 1",
                "delete from entry where seq = 1")) {
            assertThatThrownBy(() -> DirectSql.run(folder(), bad)).as(bad).isInstanceOf(SQLException.class);
        }
        assertThat(RecordCheck.check(folder(), Optional.empty()).fault()).isEmpty();
    }

    @Test
    default void should_take_a_file_away_when_only_what_was_erased_names_it() {
        byte[] own = "own picture".getBytes(StandardCharsets.UTF_8);
        byte[] shared = "shared picture".getBytes(StandardCharsets.UTF_8);
        try (DataFolder shop = DataFolder.open(folder())) {
            String a = shop.files().put(own);
            String b = shop.files().put(shared);
            shop.log()
                    .append(List.of(
                            noteWith("client-0001", "one", a, b),
                            noteWith("client-0002", "two", b),
                            erasing("erase-0001", 1)));
            assertThat(shop.files().hashes()).containsExactly(b);
            assertThat(RecordCheck.check(folder(), Optional.empty()).fault()).isEmpty();
            shop.files().put(own);
        }
        try (DataFolder shop = DataFolder.open(folder())) {
            assertThat(shop.files().hashes()).as("swept at the next start").hasSize(1);
            shop.log().append(erasing("erase-0002", 2));
            assertThat(shop.files().hashes()).isEmpty();
        }
        RecordCheck.Report report = RecordCheck.check(folder(), Optional.empty());
        assertThat(report.fault()).isEmpty();
        assertThat(report.files()).isZero();
    }

    @Test
    default void should_fill_the_reading_tables_the_same_when_they_are_rebuilt_after_an_erasure() throws SQLException {
        try (DataFolder shop = DataFolder.open(folder())) {
            shop.log()
                    .append(List.of(
                            EntryLogContract.note("client-0001", SECRET), EntryLogContract.note("client-0002", "two")));
            shop.log().append(erasing("erase-0001", 1));
            String filled = notes();
            assertThat(filled).contains("two").doesNotContain(SECRET);
            shop.rebuildReadingTables();
            assertThat(notes()).isEqualTo(filled);
        }
    }

    private String notes() throws SQLException {
        StringBuilder rows = new StringBuilder();
        try (Connection c = DataFolder.source(folder(), DataFolder.elsewhere(folder()), false)
                        .getConnection();
                Statement s = c.createStatement();
                var r = s.executeQuery("select seq, step, happened, who, content from step_note order by seq")) {
            while (r.next()) {
                rows.append(r.getLong(1) + " " + r.getString(2) + " " + r.getString(3) + " " + r.getString(4) + " "
                        + r.getString(5) + "\n");
            }
        }
        return rows.toString();
    }
}
