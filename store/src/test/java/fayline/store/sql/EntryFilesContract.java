package fayline.store.sql;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import fayline.flow.record.EntryKind;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import fayline.store.file.DefinitionFolder;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What every place must do in which files of entries lie. */
interface EntryFilesContract {
    /** The folder in which the database is. */
    Path folder();

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    private static NewEntry naming(String client, String... hashes) {
        Value.Fields what = Value.Fields.NONE.with("step", "ousel-1/hull/1/bag").with("text", client);
        return new NewEntry(
                client,
                "ada",
                "",
                EntryLogContract.MORNING,
                "ousel-1",
                EntryKind.STEP_NOTED.key(),
                what,
                List.of(hashes));
    }

    private RecordCheck.Report check() {
        return RecordCheck.check(folder(), Optional.empty());
    }

    @Test
    default void should_keep_a_file_once_under_its_hash_over_a_restart() {
        String hash;
        try (DataFolder data = DataFolder.open(folder())) {
            hash = data.files().put(bytes("one"));
            assertThat(hash).isEqualTo(DefinitionFolder.hash(bytes("one")));
            assertThat(data.files().put(bytes("one"))).isEqualTo(hash);
            data.files().put(bytes("two"));
        }
        try (DataFolder data = DataFolder.open(folder())) {
            assertThat(data.files().get(hash)).contains(bytes("one"));
            assertThat(data.files().hashes()).containsExactlyInAnyOrder(hash, DefinitionFolder.hash(bytes("two")));
            for (String none : List.of("", "../shop.db", hash.toUpperCase(java.util.Locale.ROOT), "0".repeat(64))) {
                assertThat(data.files().get(none)).as(none).isEmpty();
            }
        }
    }

    @Test
    default void should_name_the_first_entry_whose_file_is_missing_or_was_changed_and_count_strays()
            throws IOException, SQLException {
        String one;
        String two;
        try (DataFolder data = DataFolder.open(folder())) {
            one = data.files().put(bytes("one"));
            two = data.files().put(bytes("two"));
            data.files().put(bytes("stray"));
            data.log()
                    .append(List.of(
                            naming("client-0001"), naming("client-0002", one), naming("client-0003", two, one)));
        }
        assertThat(check().fault()).isEmpty();
        assertThat(check().files()).isEqualTo(2);
        assertThat(check().strays()).isEqualTo(1);
        change(two, Optional.of(bytes("tWo")));
        assertThat(check().fault().orElseThrow().sentence())
                .isEqualTo("entry 3: its file " + two + " is not as it was kept");
        try (DataFolder data = DataFolder.open(folder())) {
            assertThat(data.files().get(two))
                    .as("what was changed is never given out")
                    .isEmpty();
        }
        change(one, Optional.empty());
        assertThat(check().fault().orElseThrow().sentence()).isEqualTo("entry 2: its file " + one + " is missing");
    }

    /** Does to a file what no program may. */
    private void change(String hash, Optional<byte[]> to) throws IOException, SQLException {
        Path there = folder().resolve(DataFolder.FILES).resolve(hash + ".bin");
        if (Files.exists(there)) {
            if (to.isPresent()) {
                Files.write(there, to.get());
            } else {
                Files.delete(there);
            }
            return;
        }
        try (Connection c = DataFolder.source(folder(), DataFolder.elsewhere(folder()), false)
                        .getConnection();
                Statement s = c.createStatement()) {
            String change = to.isPresent()
                    ? "update entry_file set content = '\\x"
                            + java.util.HexFormat.of().formatHex(to.get()) + "'"
                    : "delete from entry_file";
            assertThatThrownBy(() -> s.execute(change + " where sha256 = '" + hash + "'"))
                    .hasMessageContaining("never changed or removed");
            s.execute("alter table entry_file disable trigger user");
            s.execute(change + " where sha256 = '" + hash + "'");
            s.execute("alter table entry_file enable trigger user");
        }
    }

    /** Leaves half of a file behind, as a power cut can; what of it may still be there after the next start. */
    void leaveHalfAFile(byte[] content) throws IOException, SQLException;

    @Test
    default void should_sweep_what_was_begun_and_mend_what_was_damaged_when_it_is_put_again()
            throws IOException, SQLException {
        String hash;
        try (DataFolder data = DataFolder.open(folder())) {
            hash = data.files().put(bytes("one"));
        }
        leaveHalfAFile(bytes("two"));
        change(hash, Optional.of(bytes("onE")));
        try (DataFolder data = DataFolder.open(folder())) {
            assertThat(data.files().hashes()).as("no half of a file").containsExactly(hash);
            assertThat(data.files().get(hash)).isEmpty();
            assertThat(data.files().put(bytes("one"))).isEqualTo(hash);
            assertThat(data.files().get(hash)).contains(bytes("one"));
        }
    }
}
