package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryLine;
import fayline.flow.record.KeptHead;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.TreeHead;
import fayline.flow.record.payload.Value;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The record altered in more than 200 ways: every column changed, entries swapped, put in, taken out, the tail cut, the chain
 * written anew, the record rolled back. Each is found, the first bad entry is named, and the second program, in another language
 * and written from the page on the form of the record, names the same.
 */
class TamperTest {
    private static final int EACH = 12;
    private static final List<String> COLUMNS = List.of(
            "version = 2",
            "client_id = client_id || 'x'",
            "who = 'eve'",
            "phone_at = ''",
            "taken_at = '2026-03-01T00:00:00Z'",
            "project = ''",
            "kind = 'corrected'",
            "payload = replace(payload, 'at', 'At')",
            "payload_hash = replace(payload_hash, substr(payload_hash, 1, 4), '0000')",
            "files = 'ab'",
            "previous = hash",
            "hash = previous");

    @TempDir
    Path temp;

    private final Random seeded = new Random(20260302);
    private final Map<Path, Long> expected = new LinkedHashMap<>();
    private Path folder = Path.of("");
    private List<Entry> entries = List.of();
    private int cases;

    @BeforeEach
    void makeRecord() {
        folder = temp.resolve("data");
        entries = KeptRecord.in(folder);
    }

    /** An entry from the second to the last but one. */
    private long some() {
        return 2L + seeded.nextInt(KeptRecord.ENTRIES - 2);
    }

    private void altered(long firstBad, String... statements) throws Exception {
        Path copy = temp.resolve("case-" + cases++);
        expected.put(KeptRecord.altered(folder, copy, List.of(statements)), firstBad);
    }

    private void archived(long firstBad, List<String> lines, boolean manifestToo) throws IOException {
        Path file = temp.resolve("case-" + cases++ + ".zip");
        Archives.rewritten(temp.resolve("whole.zip"), file, String.join("\n", lines) + "\n", manifestToo);
        expected.put(file, firstBad);
    }

    static long named(VerifyRecord.Report report) {
        return report.fault()
                .filter(f -> f.matches("(?s)entry \\d+: .*"))
                .map(f -> Long.parseLong(f.substring(6, f.indexOf(':'))))
                .orElse(report.fault().isPresent() ? -1L : 0L);
    }

    /** What this program and the other one find, against what was done. */
    private void judge(Optional<String> head) throws Exception {
        Optional<KeptHead> outside = head.map(KeptHead::parse);
        Map<Path, Long> found = new LinkedHashMap<>();
        for (Path place : expected.keySet()) {
            found.put(place, named(VerifyRecord.verify(place, outside)));
        }
        assertThat(found).isEqualTo(expected);
        assertThat(SecondProgram.opinions(List.copyOf(expected.keySet()), head)).isEqualTo(expected);
    }

    @Test
    void should_name_the_first_bad_entry_when_any_column_is_changed() throws Exception {
        for (String change : COLUMNS) {
            for (int i = 0; i < EACH; i++) {
                long seq = some();
                altered(seq, "update entry set " + change + " where seq = " + seq);
            }
        }
        judge(Optional.empty());
    }

    @Test
    void should_name_the_first_bad_entry_when_entries_are_swapped_put_in_or_taken_out() throws Exception {
        for (int i = 0; i < EACH; i++) {
            long seq = some();
            altered(
                    seq,
                    "update entry set seq = 100 where seq = " + seq,
                    "update entry set seq = " + seq + " where seq = " + (seq + 1),
                    "update entry set seq = " + (seq + 1) + " where seq = 100");
            altered(seq, "delete from entry where seq = " + seq);
            altered(
                    KeptRecord.ENTRIES + 1L,
                    "insert into entry select seq + 1, version, 'client-more', who, phone_at, taken_at, project, kind,"
                            + " payload, payload_hash, files, hash, previous from entry where seq = "
                            + KeptRecord.ENTRIES);
            altered(seq + 1, "delete from entry where seq > " + seq);
        }
        judge(Optional.empty());
    }

    @Test
    void should_find_a_cut_tail_a_day_rolled_back_and_a_chain_written_anew_against_a_kept_head() throws Exception {
        Chain chain = new Chain();
        entries.forEach(chain::next);
        BackUpRecord.write(folder, temp.resolve("whole.zip"), true, Instants.NOW, "test");
        for (int i = 0; i < EACH; i++) {
            long seq = some();
            // Whoever cuts with care also moves the head that is noted beside the entries.
            altered(
                    seq + 1,
                    "delete from entry where seq > " + seq,
                    "update record_head set seq = " + seq + ", hash = (select hash from entry where seq = " + seq
                            + ")");
            archived(seq + 1, lines(entries.subList(0, (int) seq)), true);
            archived(KeptRecord.ENTRIES, lines(rewritten((int) seq)), true);
        }
        Map<Path, Long> sound = new LinkedHashMap<>();
        expected.keySet().forEach(p -> sound.put(p, 0L));
        Map<Path, Long> found = new LinkedHashMap<>();
        for (Path place : expected.keySet()) {
            found.put(place, named(VerifyRecord.verify(place, Optional.empty())));
        }
        assertThat(found).as("without a head kept elsewhere none is found").isEqualTo(sound);

        judge(Optional.of(chain.head().toString()));
        judge(Optional.of(TreeHead.of(chain.head().seq(), treeRoot()).paper()));
    }

    private fayline.flow.record.proof.Digest treeRoot() {
        return fayline.flow.record.proof.HashTree.over(entries.stream()
                        .map(e -> java.util.HexFormat.of().parseHex(e.hash()))
                        .toList())
                .root();
    }

    @Test
    void should_name_the_first_bad_entry_of_an_archive_and_else_the_file() throws Exception {
        BackUpRecord.write(folder, temp.resolve("whole.zip"), true, Instants.NOW, "test");
        for (int i = 0; i < EACH; i++) {
            int at = (int) some();
            List<String> lines = new ArrayList<>(lines(entries));
            lines.set(at - 1, lines.get(at - 1).replace("\"by\":\"", "\"by\":\"e"));
            archived(at, lines, i % 2 == 0);
            lines.set(at - 1, "{}");
            archived(at, lines, i % 2 == 0);
        }
        Path tables = temp.resolve("tables.zip");
        Archives.withFile(temp.resolve("whole.zip"), tables, "tables/notes.csv", "nothing to see\r\n");
        Path added = temp.resolve("added.zip");
        Archives.withFile(temp.resolve("whole.zip"), added, "files/" + "ab".repeat(32), "x");

        judge(Optional.empty());
        assertThat(VerifyRecord.verify(tables, Optional.empty()).fault().orElseThrow())
                .contains("tables/notes.csv", "manifest says");
        assertThat(SecondProgram.run(List.of(tables), Optional.empty())).contains("tables/notes.csv altered");
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> VerifyRecord.verify(added, Optional.empty()))
                .isInstanceOf(UnreadableArchiveException.class)
                .hasMessageContaining("which its manifest does not name");
        assertThat(SecondProgram.run(List.of(added), Optional.empty())).contains("not those of the manifest");
    }

    private static List<String> lines(List<Entry> entries) {
        return entries.stream().map(EntryLine::of).toList();
    }

    /** The chain with another payload in one entry and every hash from there on made anew. */
    private List<Entry> rewritten(int seq) {
        MemoryLog log = new MemoryLog(entries.subList(0, seq - 1));
        for (Entry e : entries.subList(seq - 1, entries.size())) {
            Value.Fields payload = e.seq() == seq ? e.fields().with("text", "quite all right") : e.fields();
            log.append(
                    new NewEntry(e.client(), e.by(), e.phone(), e.taken(), e.project(), e.kind(), payload, e.files()));
        }
        return log.read(1);
    }
}
