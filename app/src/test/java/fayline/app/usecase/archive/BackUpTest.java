package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.app.usecase.open.CannotOpenException;
import fayline.flow.record.Entry;
import fayline.store.sql.DataFolder;
import fayline.store.sql.PeopleTables;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record carried away and back. */
class BackUpTest {
    @TempDir
    Path temp;

    private Path folder = Path.of("");
    private Path file = Path.of("");
    private List<Entry> entries = List.of();

    @BeforeEach
    void makeRecord() {
        folder = temp.resolve("data");
        file = temp.resolve("shop.zip");
        entries = KeptRecord.in(folder);
        try (DataFolder shop = DataFolder.open(folder)) {
            shop.people().put(new PeopleTables.KnownPerson("ada", "Ada", "lead", "$hash$", ""));
            shop.people().add(new PeopleTables.KnownDevice("d-1", "Bench", "shared", "", "t1", Instants.NOW));
        }
    }

    @Test
    void should_give_the_same_record_back_when_restored() throws Exception {
        BackUpRecord.Report written = BackUpRecord.write(folder, file, true, Instants.NOW, "test");

        assertThat(written.entries()).isEqualTo(KeptRecord.ENTRIES);
        assertThat(VerifyRecord.verify(file, Optional.empty()))
                .isEqualTo(new VerifyRecord.Report(
                        written.head(), written.paper(), written.entries(), Optional.empty(), 0, 0));
        Path other = temp.resolve("other");
        assertThat(RestoreRecord.into(file, other)).isEqualTo(KeptRecord.ENTRIES);
        try (DataFolder shop = DataFolder.open(other)) {
            assertThat(shop.log().read(1)).isEqualTo(entries);
            assertThat(shop.people().people())
                    .extracting("person", "passwordHash")
                    .containsExactly(org.assertj.core.groups.Tuple.tuple("ada", "$hash$"));
            assertThat(shop.people().devices()).extracting("id").containsExactly("d-1");
        }
        Path again = temp.resolve("again.zip");
        BackUpRecord.write(other, again, true, Instants.NOW, "test");
        assertThat(again).hasSameBinaryContentAs(file);
    }

    @Test
    void should_hold_every_entry_acknowledged_before_when_written_while_the_folder_is_open() throws Exception {
        try (DataFolder shop = DataFolder.open(folder)) {
            BackUpRecord.Report written = BackUpRecord.write(folder, file, true, Instants.NOW, "test");
            assertThat(written.head()).isEqualTo(shop.log().head().toString());
            assertThatThrownBy(() -> RestoreRecord.into(file, folder))
                    .isInstanceOf(CannotOpenException.class)
                    .hasMessageContaining("already open");
        }
        assertThatThrownBy(() -> RestoreRecord.into(file, folder))
                .isInstanceOf(CannotOpenException.class)
                .hasMessageContaining("holds a record already");
    }

    @Test
    void should_leave_out_who_may_enter_when_it_is_handed_over() throws Exception {
        BackUpRecord.write(folder, file, false, Instants.NOW, "test");

        try (ZipFile zip = new ZipFile(file.toFile())) {
            assertThat(zip.stream().map(java.util.zip.ZipEntry::getName))
                    .containsExactly(
                            "README.txt",
                            "entries.jsonl",
                            "tables/arrivals.csv",
                            "tables/changes.csv",
                            "tables/conflicts.csv",
                            "tables/deviations.csv",
                            "tables/files.csv",
                            "tables/findings.csv",
                            "tables/lots-drawn.csv",
                            "tables/lots-moved.csv",
                            "tables/lots-received.csv",
                            "tables/mixes.csv",
                            "tables/notes.csv",
                            "tables/orders.csv",
                            "tables/plies.csv",
                            "tables/readings.csv",
                            "tables/steps.csv",
                            "tables/stock-takes.csv",
                            "tables/visits.csv",
                            "manifest.json");
            String notes = new String(
                    zip.getInputStream(zip.getEntry("tables/notes.csv")).readAllBytes(),
                    java.nio.charset.StandardCharsets.UTF_8);
            assertThat(notes).contains("entry,step,at,by,text\r\n", "\"\"quote\"\"");
        }
        Path other = temp.resolve("other");
        RestoreRecord.into(file, other);
        try (DataFolder shop = DataFolder.open(other)) {
            assertThat(shop.people().people()).isEmpty();
            assertThat(shop.log().head().seq()).isEqualTo(KeptRecord.ENTRIES);
        }
    }

    @Test
    void should_write_nothing_when_the_record_is_not_sound() throws Exception {
        Path bad =
                KeptRecord.altered(folder, temp.resolve("bad"), List.of("update entry set who = 'eve' where seq = 7"));
        Files.writeString(file, "the backup of yesterday");

        assertThatThrownBy(() -> BackUpRecord.write(bad, file, true, Instants.NOW, "test"))
                .isInstanceOf(UnsoundRecordException.class)
                .hasMessage("entry 7: one of its fields is not as recorded; nothing was written");
        assertThat(file).hasContent("the backup of yesterday");
        try (var there = Files.list(temp)) {
            assertThat(there.map(p -> p.getFileName().toString())).noneMatch(n -> n.endsWith(".part"));
        }
    }

    @Test
    void should_restore_nothing_when_the_archive_is_damaged() throws Exception {
        BackUpRecord.write(folder, file, true, Instants.NOW, "test");
        Path other = temp.resolve("other");
        Path cut = temp.resolve("cut.zip");
        byte[] bytes = Files.readAllBytes(file);
        Files.write(cut, java.util.Arrays.copyOf(bytes, bytes.length / 2));
        Path people = temp.resolve("people.zip");
        Archives.withFile(file, people, "people.json", "{\"devices\":[],\"people\":[]}");
        List<Path> bad = new ArrayList<>(List.of(cut, people));
        Path text = temp.resolve("text.zip");
        Files.writeString(text, "no archive");
        bad.add(text);

        for (Path b : bad) {
            assertThatThrownBy(() -> RestoreRecord.into(b, other))
                    .as(b.toString())
                    .isInstanceOf(UnreadableArchiveException.class)
                    .hasMessageContaining(b.getFileName().toString());
        }
        assertThat(other).doesNotExist();
    }
}
