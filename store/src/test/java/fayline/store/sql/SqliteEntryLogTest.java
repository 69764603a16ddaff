package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The contract on SQLite. */
class SqliteEntryLogTest extends EntryLogContract
        implements PeopleTablesContract, EntryFilesContract, EntryRulesContract, ErasureContract {
    private Path half = Path.of("");

    @Override
    void prepare(Path fresh) {
        // A folder without anything in it is SQLite's.
    }

    /** A name that stands for nothing, beside a file of somebody's own, which stays. */
    @Override
    public void leaveHalfAFile(byte[] content) throws IOException {
        Path files = folder().resolve(DataFolder.FILES);
        half = files.resolve("a".repeat(64) + ".part");
        Files.write(half, content);
        Files.write(files.resolve("notes.txt"), content);
    }

    @Test
    void should_take_away_half_files_alone() throws IOException {
        try (DataFolder data = DataFolder.open(folder())) {
            data.files().put(new byte[] {1});
        }
        leaveHalfAFile(new byte[] {2});
        try (DataFolder data = DataFolder.open(folder())) {
            assertThat(data.files().hashes()).hasSize(1);
            assertThat(half).doesNotExist();
            assertThat(half.resolveSibling("notes.txt")).exists();
        }
    }

    @Override
    public List<String> statementsThatDropTheRules() {
        return List.of(
                "drop trigger entry_is_never_changed",
                "drop trigger entry_is_never_removed",
                "drop trigger entry_follows_the_last");
    }
}
