package fayline.app.usecase.archive;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.Chain;
import fayline.flow.record.Entry;
import fayline.flow.record.EntryKind;
import fayline.flow.record.EntryLine;
import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.KeptHead;
import fayline.flow.record.NewEntry;
import fayline.flow.record.TreeHead;
import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import fayline.store.sql.DataFolder;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A record from which personal text was erased: it is sound, is carried away and back, and is proved by a head from before. What
 * somebody empties, puts back or says falsely is found, and the second program names the same entry.
 */
class ErasedRecordTest {
    private static final Instant EVENING = Instant.parse("2026-03-02T18:00:00Z");
    private static final List<Integer> ERASED = List.of(4, 10, 31);
    private static final String EMPTY = "update entry set payload = '" + Erasable.EMPTIED + "' where seq = ";

    @TempDir
    Path temp;

    private final Map<Path, Long> expected = new LinkedHashMap<>();
    private Path folder = Path.of("");
    private List<Entry> whole = List.of();
    private List<Entry> entries = List.of();

    @BeforeEach
    void makeRecord() throws IOException {
        folder = temp.resolve("data");
        whole = KeptRecord.in(folder);
        try (DataFolder shop = DataFolder.open(folder)) {
            for (int seq : ERASED) {
                assertThat(shop.log().append(erasing("erase-" + (1000 + seq), seq)))
                        .isInstanceOf(Answer.Taken.class);
            }
            entries = shop.log().read(1);
        }
        BackUpRecord.write(folder, temp.resolve("whole.zip"), true, Instants.NOW, "test");
    }

    private NewEntry erasing(String client, long seq) {
        Value.Fields old =
                seq >= 1 && seq <= whole.size() ? whole.get((int) seq - 1).fields() : Value.Fields.NONE;
        return NewEntry.of(
                client,
                "ada",
                EVENING,
                "ousel-1",
                EntryKind.ERASED,
                Value.Fields.NONE
                        .with("entry", seq)
                        .with("why", "Bo asked")
                        .with("at", EVENING.toString())
                        .with("kept", old.without(List.of("text"))));
    }

    private void altered(long firstBad, String... statements) throws Exception {
        Path copy = temp.resolve("case-" + expected.size());
        expected.put(KeptRecord.altered(folder, copy, List.of(statements)), firstBad);
    }

    private void archived(long firstBad, List<Entry> all) throws IOException {
        Path file = temp.resolve("case-" + expected.size() + ".zip");
        String lines = String.join("\n", all.stream().map(EntryLine::of).toList()) + "\n";
        Archives.rewritten(temp.resolve("whole.zip"), file, lines, true);
        expected.put(file, firstBad);
    }

    private void judge(Optional<String> head) throws Exception {
        Optional<KeptHead> outside = head.map(KeptHead::parse);
        Map<Path, Long> found = new LinkedHashMap<>();
        for (Path place : expected.keySet()) {
            found.put(place, TamperTest.named(VerifyRecord.verify(place, outside)));
        }
        assertThat(found).isEqualTo(expected);
        assertThat(SecondProgram.opinions(List.copyOf(expected.keySet()), head)).isEqualTo(expected);
    }

    private static String cutAt(long seq) {
        return "update record_head set seq = " + seq + ", hash = (select hash from entry where seq = " + seq + ")";
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "''") + "'";
    }

    @Test
    void should_be_sound_and_proved_by_a_head_from_before_in_every_place() throws Exception {
        expected.put(folder, 0L);
        expected.put(temp.resolve("whole.zip"), 0L);
        judge(Optional.empty());
        Chain before = new Chain();
        whole.forEach(before::next);
        TreeHead tree = before.treeHead();
        judge(Optional.of(before.head().toString()));
        judge(Optional.of(tree.paper()));
        assertThat(Files.readString(temp.resolve("whole.zip"), java.nio.charset.StandardCharsets.ISO_8859_1))
                .as("not even packed")
                .doesNotContain("line 31");
    }

    @Test
    void should_hold_the_same_record_when_it_was_carried_away_and_restored() throws Exception {
        Path back = temp.resolve("back");
        assertThat(RestoreRecord.into(temp.resolve("whole.zip"), back)).isEqualTo(entries.size());
        try (DataFolder shop = DataFolder.open(back)) {
            assertThat(shop.log().read(1)).isEqualTo(entries);
            assertThat(shop.log().append(erasing("erase-later", 5))).isInstanceOf(Answer.Taken.class);
            assertThat(shop.log().append(erasing("erase-again", 4))).isInstanceOf(Answer.Refused.class);
        }
        assertThat(VerifyRecord.verify(back, Optional.empty()).fault()).isEmpty();
    }

    @Test
    void should_name_the_first_bad_entry_when_something_is_emptied_changed_or_put_back() throws Exception {
        for (int seq : List.of(1, 2, 3, 5, 6, 32, 40)) {
            altered(seq, EMPTY + seq);
        }
        altered(4, EMPTY + "41");
        altered(10, EMPTY + "42");
        for (int seq : ERASED) {
            altered(seq, "update entry set payload = '{}' where seq = " + seq);
            altered(seq, "update entry set payload = '{\"erased\":\"yes\" }' where seq = " + seq);
            altered(seq, "update entry set who = 'eve' where seq = " + seq);
            int says = 41 + ERASED.indexOf(seq);
            altered(
                    says,
                    "update entry set payload = " + quoted(whole.get(seq - 1).payload()) + " where seq = " + seq);
            altered(says, "update entry set who = 'eve' where seq = " + says);
            altered(seq, "delete from entry where seq >= " + says, cutAt(says - 1L));
        }
        altered(20, "update entry set who = 'eve' where seq = 20");
        altered(5, EMPTY + "5", "update entry set who = 'eve' where seq = 20");
        judge(Optional.empty());
    }

    @Test
    void should_name_the_entry_that_says_falsely_that_another_was_erased() throws Exception {
        long next = entries.size() + 1L;
        for (long named : List.of(-1L, 0L, 3L, 4L, 5L, 41L, next, next + 1, 900L)) {
            Entry forged = Entry.next(entries.get(entries.size() - 1).head(), erasing("forged-01", named));
            altered(next, inserted(forged), cutAt(next));
            List<Entry> all = new ArrayList<>(entries);
            all.add(forged);
            archived(next, all);
        }
        NewEntry nothing = erasing("forged-01", 5);
        Entry nameless = Entry.next(
                entries.get(entries.size() - 1).head(),
                new NewEntry(
                        nothing.client(),
                        "eve",
                        "",
                        EVENING,
                        "",
                        "erased",
                        Value.Fields.NONE.with("why", "x").with("entry", "5"),
                        List.of()));
        altered(next, inserted(nameless), cutAt(next));
        judge(Optional.empty());
    }

    @Test
    void should_name_the_first_bad_line_of_an_archive_with_erased_entries() throws Exception {
        for (int seq : List.of(2, 3, 12)) {
            List<Entry> all = new ArrayList<>(entries);
            all.set(seq - 1, all.get(seq - 1).emptied());
            archived(seq, all);
            all.set(20, Entry.next(all.get(19).head(), erasing("forged-02", 5)));
            archived(seq, all);
        }
        List<Entry> back = new ArrayList<>(entries);
        back.set(3, whole.get(3));
        archived(41, back);
        archived(4, entries.subList(0, 40));
        judge(Optional.empty());
    }

    private static String inserted(Entry e) {
        assertThat(CanonicalText.sha256(e.payload())).isEqualTo(e.payloadHash());
        return "insert into entry (seq, version, client_id, who, phone_at, taken_at, project, kind, payload, payload_hash,"
                + " files, previous, hash) values (" + e.seq() + ", 1, "
                + String.join(
                        ", ",
                        List.of(
                                        e.client(),
                                        e.by(),
                                        e.phone(),
                                        e.at(),
                                        e.project(),
                                        e.kind(),
                                        e.payload(),
                                        e.payloadHash(),
                                        "",
                                        e.previous(),
                                        e.hash())
                                .stream()
                                .map(ErasedRecordTest::quoted)
                                .toList())
                + ")";
    }
}
