package fayline.app.usecase.journal;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.app.usecase.shop.ShopRecord;
import fayline.flow.record.EntryKind;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.payload.Value;
import fayline.flow.record.proof.Proof;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HexFormat;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** What entries changed, before and after, and what proves them. */
class JournalTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T07:10:00Z");
    private final MemoryLog log = new MemoryLog();
    private final ShopRecord shop = new ShopRecord(log, Clock.fixed(MORNING, ZoneOffset.UTC));
    private final Journal journal = new Journal(shop, new RecordTree(shop));

    private long add(EntryKind kind, Value.Fields payload) {
        log.append(NewEntry.of("client-" + (1000 + log.head().seq()), "ada", MORNING, "ousel-1", kind, payload));
        return log.head().seq();
    }

    private static Value.Fields file(String path, String text) {
        return Value.Fields.NONE.with("scope", "project").with("path", path).with("text", text);
    }

    @Test
    void should_tell_the_lines_that_a_save_changed() {
        add(EntryKind.FILE_SAVED, file("a.yaml", "one\ntwo\nthree\nfour\n"));
        add(EntryKind.FILE_SAVED, file("b.yaml", "other\n"));
        long saved = add(EntryKind.FILE_SAVED, file("a.yaml", "one\n2\nthree\nfour\nfive\n"));

        assertThat(journal.entry(saved).orElseThrow().changes())
                .containsExactly(new Difference("line 2", "two", "2"), new Difference("line 5", "", "five"));
        assertThat(journal.entry(1).orElseThrow().changes())
                .containsExactly(new Difference("line 1", "", "one\ntwo\nthree\nfour"));
    }

    @Test
    void should_tell_what_a_correction_laid_over_what() {
        long note = add(
                EntryKind.STEP_NOTED,
                Value.Fields.NONE.with("step", "s").with("at", "t").with("text", "3.5"));
        long first = add(
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", note)
                        .with("why", "typed wrong")
                        .with("with", Value.Fields.NONE.with("text", "3.6")));
        long second = add(
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", first)
                        .with("why", "again")
                        .with("with", Value.Fields.NONE.with("text", "3.7").with("of", "it")));

        assertThat(journal.entry(first).orElseThrow().changes()).containsExactly(new Difference("text", "3.5", "3.6"));
        assertThat(journal.entry(second).orElseThrow().changes())
                .containsExactly(new Difference("of", "", "it"), new Difference("text", "3.6", "3.7"));
        assertThat(journal.entry(note).orElseThrow().laterCorrections()).containsExactly(first);
    }

    @Test
    void should_prove_every_entry_it_shows() {
        for (int i = 0; i < 21; i++) {
            add(EntryKind.STEP_NOTED, Value.Fields.NONE.with("text", "note " + i));
        }
        for (long seq = 1; seq <= 21; seq++) {
            Journal.Shown shown = journal.entry(seq).orElseThrow();
            byte[] leaf = HexFormat.of().parseHex(shown.entry().hash());
            assertThat(Proof.holdsLeaf(
                            seq - 1,
                            shown.proof().size(),
                            leaf,
                            shown.proof().path(),
                            shown.proof().root()))
                    .isTrue();
        }
        assertThat(journal.entry(0)).isEmpty();
        assertThat(journal.entry(22)).isEmpty();
    }

    @Test
    void should_give_entries_by_leaf_kind_and_words() {
        for (int i = 1; i <= 10; i++) {
            add(
                    i % 2 == 0 ? EntryKind.STEP_NOTED : EntryKind.READING_TAKEN,
                    Value.Fields.NONE.with("text", "Note " + i));
        }

        Journal.Leaf leaf = journal.leaf(0, List.of(EntryKind.STEP_NOTED), "", 3);
        assertThat(leaf.entries()).extracting("seq").containsExactly(10L, 8L, 6L);
        Journal.Leaf rest = journal.leaf(leaf.further(), List.of(EntryKind.STEP_NOTED), "", 3);
        assertThat(rest.entries()).extracting("seq").containsExactly(4L, 2L);
        assertThat(rest.further()).isZero();
        Journal.Leaf plain = journal.leaf(9, List.of(), "", 3);
        assertThat(plain.entries()).extracting("seq").containsExactly(8L, 7L, 6L);
        assertThat(plain.further()).isEqualTo(6);
        Journal.Leaf last = journal.leaf(4, List.of(), "", 3);
        assertThat(last.entries()).extracting("seq").containsExactly(3L, 2L, 1L);
        assertThat(last.further()).isZero();
        assertThat(journal.leaf(0, List.of(), "NOTE 7", 9).entries())
                .extracting("seq")
                .containsExactly(7L);
    }

    /** Seeded: the lines that are said to be gone and come turn the one text into the other. */
    @Test
    void should_lead_from_one_text_to_the_other() {
        Random seeded = new Random(5);
        for (int run = 0; run < 200; run++) {
            String before = lines(seeded);
            String after = lines(seeded);
            List<Difference> all = Difference.ofLines(before, after);
            assertThat(rebuilt(before.lines().toList(), all))
                    .isEqualTo(after.lines().toList());
            assertThat(Difference.ofLines(before, before)).isEmpty();
        }
    }

    private static String lines(Random seeded) {
        StringBuilder text = new StringBuilder();
        for (int i = seeded.nextInt(9); i > 0; i--) {
            text.append((char) ('a' + seeded.nextInt(3))).append('\n');
        }
        return text.toString();
    }

    private static List<String> rebuilt(List<String> before, List<Difference> all) {
        List<String> out = new java.util.ArrayList<>();
        int taken = 0;
        for (Difference d : all) {
            int line = Integer.parseInt(d.what().substring(5));
            while (out.size() < line - 1) {
                out.add(before.get(taken++));
            }
            taken += (int) (d.before().isEmpty() ? 0 : d.before().lines().count());
            d.after().lines().forEach(out::add);
        }
        out.addAll(before.subList(taken, before.size()));
        return out;
    }
}
