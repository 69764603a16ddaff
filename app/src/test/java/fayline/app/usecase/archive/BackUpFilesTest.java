package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import fayline.store.sql.DataFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that entries name go with the record wherever it is carried, and both programs miss them where they do not. */
class BackUpFilesTest {
    private static final byte[] ONE = "one".getBytes(StandardCharsets.UTF_8);

    @TempDir
    Path temp;

    private Path folder = Path.of("");
    private Path file = Path.of("");
    private String one = "";
    private String two = "";

    @BeforeEach
    void makeRecord() {
        folder = temp.resolve("data");
        file = temp.resolve("shop.zip");
        try (DataFolder shop = DataFolder.open(folder)) {
            one = shop.files().put(ONE);
            two = shop.files().put("two".getBytes(StandardCharsets.UTF_8));
            // a definition file lies in its entry and nowhere else, though its hash is named too
            shop.log().append(entry(1, EntryKind.FILE_SAVED, "f".repeat(64)));
            shop.log().append(entry(2, EntryKind.STEP_NOTED, one));
            shop.log().append(entry(3, EntryKind.STEP_NOTED, two, one));
        }
    }

    private static NewEntry entry(int n, EntryKind kind, String... files) {
        Value.Fields what = Value.Fields.NONE
                .with("step", "ousel-1/hull/1/bag")
                .with("scope", "project")
                .with("path", "notes.txt")
                .with("text", "n" + n);
        return new NewEntry("client-000" + n, "ada", "", Instants.NOW, "ousel-1", kind.key(), what, List.of(files));
    }

    private void bothName(Path place, String sentence, long seq) throws Exception {
        assertThat(VerifyRecord.verify(place, Optional.empty()).fault()).contains(sentence);
        assertThat(SecondProgram.opinions(List.of(place), Optional.empty())).isEqualTo(Map.of(place, seq));
    }

    @Test
    void should_carry_the_files_and_give_them_back() throws Exception {
        BackUpRecord.write(folder, file, true, Instants.NOW, "test");
        assertThat(VerifyRecord.verify(file, Optional.empty()).files()).isEqualTo(2);
        Path other = temp.resolve("other");
        RestoreRecord.into(file, other);
        try (DataFolder shop = DataFolder.open(other)) {
            assertThat(shop.files().hashes()).containsExactlyInAnyOrder(one, two);
            assertThat(shop.files().get(one)).contains(ONE);
        }
        VerifyRecord.Report report = VerifyRecord.verify(other, Optional.empty());
        assertThat(report.fault()).isEmpty();
        assertThat(report.files()).isEqualTo(2);
        assertThat(report.strays()).isZero();
        assertThat(SecondProgram.opinions(List.of(folder, other, file), Optional.empty()))
                .isEqualTo(Map.of(folder, 0L, other, 0L, file, 0L));
    }

    @Test
    void should_name_the_entry_whose_file_is_gone_from_the_folder_and_write_no_backup() throws Exception {
        Files.delete(folder.resolve("files/" + two + ".bin"));
        bothName(folder, "entry 3: its file " + two + " is missing", 3);
        assertThatThrownBy(() -> BackUpRecord.write(folder, file, true, Instants.NOW, "test"))
                .isInstanceOf(IOException.class)
                .hasMessageContaining(two);
        assertThat(file).doesNotExist();
        Files.writeString(folder.resolve("files/" + one + ".bin"), "onE");
        bothName(folder, "entry 2: its file " + one + " is not as it was kept", 2);
    }

    @Test
    void should_name_the_entry_whose_file_is_gone_from_the_backup_and_restore_nothing() throws Exception {
        Path bare = temp.resolve("bare");
        try (DataFolder shop = DataFolder.open(bare)) {
            shop.log().append(entry(1, EntryKind.STEP_NOTED));
        }
        Path without = temp.resolve("without.zip");
        BackUpRecord.write(bare, file, true, Instants.NOW, "test");
        try (Stream<String> lines = lines()) {
            Archives.rewritten(file, without, String.join("\n", lines.toList()) + "\n", true);
        }
        bothName(without, "entry 2: its file " + one + " is missing", 2);
        Path other = temp.resolve("other");
        assertThatThrownBy(() -> RestoreRecord.into(without, other))
                .isInstanceOf(UnsoundRecordException.class)
                .hasMessage("entry 2: its file " + one + " is missing; nothing was restored");
        assertThat(other).doesNotExist();
    }

    private Stream<String> lines() {
        try (DataFolder shop = DataFolder.open(folder)) {
            return shop.log().read(1).stream().map(fayline.flow.record.EntryLine::of);
        }
    }
}
