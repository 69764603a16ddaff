package fayline.flow.record;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Tampering with a chain in every way that it promises to find. */
class ChainTest {
    private static final List<Entry> SOUND = chain(12);

    static List<Entry> chain(int entries) {
        MemoryLog log = new MemoryLog();
        for (int i = 1; i <= entries; i++) {
            Value.Fields what =
                    Value.Fields.NONE.with("step", "ousel-1/hull/1/bag").with("text", "note " + i);
            log.append(new NewEntry(
                    "client-" + (1000 + i),
                    "ada",
                    "2026-03-02T07:00:00Z",
                    Instant.parse("2026-03-02T07:10:00Z").plusSeconds(60L * i),
                    "ousel-1",
                    EntryKind.STEP_NOTED.key(),
                    what,
                    List.of("ab".repeat(32))));
        }
        return log.read(1);
    }

    @Test
    void should_find_nothing_when_chain_is_sound() {
        assertThat(Chain.check(SOUND, Optional.empty())).isEmpty();
        assertThat(Chain.check(SOUND, Optional.of(SOUND.get(7).head()))).isEmpty();
        assertThat(Chain.check(List.of(), Optional.of(Head.EMPTY))).isEmpty();
    }

    @Test
    void should_name_the_entry_when_any_field_is_changed() {
        String zeros = Entry.NO_PREVIOUS;
        Map<String, UnaryOperator<Entry>> changes = new LinkedHashMap<>();
        changes.put(
                "version", e -> with(e, 2, e.client(), e.by(), e.phone(), e.at(), e.project(), e.kind(), e.files()));
        changes.put(
                "client", e -> with(e, 1, "other-client", e.by(), e.phone(), e.at(), e.project(), e.kind(), e.files()));
        changes.put("by", e -> with(e, 1, e.client(), "bo", e.phone(), e.at(), e.project(), e.kind(), e.files()));
        changes.put("phone", e -> with(e, 1, e.client(), e.by(), "", e.at(), e.project(), e.kind(), e.files()));
        changes.put(
                "at",
                e -> with(
                        e,
                        1,
                        e.client(),
                        e.by(),
                        e.phone(),
                        e.at().replace("Z", ".000Z"),
                        e.project(),
                        e.kind(),
                        e.files()));
        changes.put("project", e -> with(e, 1, e.client(), e.by(), e.phone(), e.at(), "", e.kind(), e.files()));
        changes.put(
                "kind", e -> with(e, 1, e.client(), e.by(), e.phone(), e.at(), e.project(), "step-started", e.files()));
        changes.put("files", e -> with(e, 1, e.client(), e.by(), e.phone(), e.at(), e.project(), e.kind(), List.of()));
        changes.put(
                "payload",
                e -> hashes(e, e.payload().replace("note", "vote"), e.payloadHash(), e.previous(), e.hash()));
        changes.put("payload hash", e -> hashes(e, e.payload(), zeros, e.previous(), e.hash()));
        changes.put("previous", e -> hashes(e, e.payload(), e.payloadHash(), zeros, e.hash()));
        changes.put("hash", e -> hashes(e, e.payload(), e.payloadHash(), e.previous(), zeros));
        changes.forEach((field, change) -> {
            for (int i = 1; i < SOUND.size(); i++) {
                List<Entry> bad = new ArrayList<>(SOUND);
                bad.set(i, change.apply(bad.get(i)));
                Optional<Chain.Fault> fault = Chain.check(bad, Optional.empty());
                assertThat(fault).as("%s of entry %d", field, i + 1).isPresent();
                assertThat(fault.orElseThrow().seq())
                        .as("%s of entry %d", field, i + 1)
                        .isEqualTo(i + 1);
            }
        });
    }

    @Test
    void should_name_the_entry_when_payload_and_its_hash_are_rewritten_together() {
        Entry e = SOUND.get(4);
        String payload = e.payload().replace("note", "vote");
        List<Entry> bad = new ArrayList<>(SOUND);
        bad.set(4, hashes(e, payload, CanonicalText.sha256(payload), e.previous(), e.hash()));
        assertThat(Chain.check(bad, Optional.empty()).orElseThrow().seq()).isEqualTo(5);
    }

    @Test
    void should_name_the_first_bad_entry_when_entries_are_swapped_inserted_or_deleted() {
        List<Entry> swapped = new ArrayList<>(SOUND);
        Collections.swap(swapped, 3, 6);
        assertThat(Chain.check(swapped, Optional.empty()).orElseThrow().seq()).isEqualTo(4);

        List<Entry> inserted = new ArrayList<>(SOUND);
        inserted.add(5, SOUND.get(4));
        assertThat(Chain.check(inserted, Optional.empty()).orElseThrow().seq()).isEqualTo(6);

        List<Entry> deleted = new ArrayList<>(SOUND);
        deleted.remove(8);
        Chain.Fault fault = Chain.check(deleted, Optional.empty()).orElseThrow();
        assertThat(fault.seq()).isEqualTo(9);
        assertThat(fault.sentence()).contains("entry 9 is missing").contains("entry 10 follows");
    }

    @Test
    void should_find_cut_tail_and_rewritten_chain_when_a_head_was_kept_outside() {
        Optional<Head> kept = Optional.of(SOUND.get(11).head());
        Chain.Fault cut = Chain.check(SOUND.subList(0, 9), kept).orElseThrow();
        assertThat(cut.seq()).isEqualTo(10);
        assertThat(Chain.check(SOUND.subList(0, 9), Optional.empty())).isEmpty();

        List<Entry> rewritten = new ArrayList<>();
        Head head = Head.EMPTY;
        for (Entry e : SOUND) {
            NewEntry same = new NewEntry(
                    e.client(), "mallory", e.phone(), e.taken(), e.project(), e.kind(), e.fields(), e.files());
            Entry forged = Entry.next(head, same);
            rewritten.add(forged);
            head = forged.head();
        }
        assertThat(Chain.check(rewritten, Optional.empty())).isEmpty();
        assertThat(Chain.check(rewritten, kept).orElseThrow().seq()).isEqualTo(12);
        assertThat(Chain.check(
                                rewritten,
                                Optional.of(
                                        Head.parse("5-" + SOUND.get(4).hash().substring(0, 8))))
                        .orElseThrow()
                        .seq())
                .isEqualTo(5);
    }

    @Test
    void should_name_the_entry_when_a_sealed_payload_is_not_canonical() {
        Entry first = SOUND.get(0);
        String spaced = "{ \"text\":\"x\"}";
        Entry open = hashes(first, spaced, CanonicalText.sha256(spaced), first.previous(), "");
        Entry sealed =
                hashes(open, spaced, open.payloadHash(), open.previous(), CanonicalText.sha256(open.canonicalHead()));
        assertThat(Chain.check(List.of(sealed), Optional.empty()).orElseThrow().what())
                .contains("form");
    }

    private static Entry with(
            Entry e,
            int version,
            String client,
            String by,
            String phone,
            String at,
            String project,
            String kind,
            List<String> files) {
        return new Entry(
                version,
                e.seq(),
                client,
                by,
                phone,
                at,
                project,
                kind,
                e.payload(),
                e.payloadHash(),
                files,
                e.previous(),
                e.hash());
    }

    private static Entry hashes(Entry e, String payload, String payloadHash, String previous, String hash) {
        return new Entry(
                e.version(),
                e.seq(),
                e.client(),
                e.by(),
                e.phone(),
                e.at(),
                e.project(),
                e.kind(),
                payload,
                payloadHash,
                e.files(),
                previous,
                hash);
    }
}
