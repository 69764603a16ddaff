package fayline.flow.record;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.EntryLog.Answer;
import fayline.flow.record.erasure.Erasable;
import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Personal text taken out of the record: what follows from the entries then, and what the chain makes of it. */
class ErasureTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T07:00:00Z");
    private static final ZoneId ZONE = ZoneId.of("Europe/Vienna");
    private static final String STEP = "ousel-1/hull/1/bag";
    private final MemoryLog log = new MemoryLog();
    private final RecordFold live = new RecordFold();
    private int next;

    private long add(EntryKind kind, Value.Fields payload) {
        next++;
        Answer answer = log.append(NewEntry.of(
                "test-" + (10000 + next), "ada", MORNING.plusSeconds(60L * next), "ousel-1", kind, payload));
        assertThat(answer).isInstanceOf(Answer.Taken.class);
        live.take(log.read(log.head().seq()).get(0));
        return log.head().seq();
    }

    private long note(String text) {
        return add(EntryKind.STEP_NOTED, noted(text));
    }

    private static Value.Fields noted(String text) {
        return Value.Fields.NONE
                .with("step", STEP)
                .with("at", MORNING.toString())
                .with("text", text);
    }

    private long correct(long entry, Value.Fields with, String why) {
        return add(
                EntryKind.CORRECTED,
                Value.Fields.NONE.with("entry", entry).with("why", why).with("with", with));
    }

    private static Value.Fields erasing(long entry, Value.Fields kept) {
        return Value.Fields.NONE
                .with("entry", entry)
                .with("why", "Bo asked for it")
                .with("at", MORNING.plusSeconds(86400).toString())
                .with("kept", kept);
    }

    /** Erases as the program does: the entry, then every correction of it. */
    private long erase(long entry) {
        String kind = log.entry(entry).orElseThrow().kind();
        List<Long> of = new ArrayList<>(List.of(entry));
        for (Entry e : log.read(entry + 1)) {
            if (e.kind().equals("corrected")
                    && of.contains(e.fields().whole("entry").orElse(0L))) {
                of.add(e.seq());
            }
        }
        long first = log.head().seq() + 1;
        for (long seq : of) {
            Entry e = log.entry(seq).orElseThrow();
            add(
                    EntryKind.ERASED,
                    erasing(seq, Erasable.kept(e.kind(), e.fields(), kind).orElse(e.fields())));
        }
        return first;
    }

    private RecordState state() {
        RecordState again = RecordState.of(log.read(1));
        assertThat(live.state()).as("seen as it came, and read again").isEqualTo(again);
        return again;
    }

    @Test
    void should_go_on_without_the_text_when_a_note_and_its_correction_are_erased() {
        long seq = note("Bo was ill");
        correct(seq, Value.Fields.NONE.with("text", "Bo was very ill").with("at", "2026-03-02T06:00:00Z"), "typed");
        long other = note("bag leaks");
        long erasing = erase(seq);
        StepRecord.Note gone = state().step(STEP).notes().get(0);
        assertThat(gone.text()).isEmpty();
        assertThat(gone.at()).isEqualTo("2026-03-02T06:00:00Z");
        assertThat(gone.shown(ZONE)).isEqualTo("erased on 3 March 2026 because Bo asked for it");
        assertThat(gone.erased().orElseThrow().seq()).isEqualTo(erasing);
        assertThat(state().step(STEP).notes().get(1).seq()).isEqualTo(other);
        assertThat(state().step(STEP).notes().get(1).shown(ZONE)).isEqualTo("bag leaks");
        assertThat(log.read(1).toString()).doesNotContain("was ill", "very ill", "typed");
        assertThat(Chain.check(log.read(1), Optional.empty())).isEmpty();
    }

    @Test
    void should_stay_withdrawn_when_a_note_taken_back_is_erased() {
        long seq = note("Bo was ill");
        add(
                EntryKind.CORRECTED,
                Value.Fields.NONE.with("entry", seq).with("why", "no").with("withdrawn", "yes"));
        erase(seq);
        assertThat(state().step(STEP).notes()).isEmpty();
    }

    @Test
    void should_have_no_effect_when_an_erased_entry_is_corrected() {
        long seq = note("Bo was ill");
        erase(seq);
        long late = correct(seq, Value.Fields.NONE.with("text", "Bo was ill"), "again");
        assertThat(state().step(STEP).notes().get(0).text()).isEmpty();
        assertThat(state().conflicts()).extracting(Conflict::seq).containsExactly(late);
        assertThat(state().conflicts().get(0).sentence()).contains("erased before");
    }

    @Test
    void should_keep_the_words_others_work_by_when_pictures_of_a_deviation_are_erased() {
        Value photo = Value.Fields.NONE
                .with("sha256", "ab".repeat(32))
                .with("bytes", 3L)
                .with("sort", "jpeg")
                .with("width", 1L)
                .with("height", 1L);
        long seq = add(
                EntryKind.DEVIATION_RAISED,
                Value.Fields.NONE
                        .with("about", STEP)
                        .with("at", MORNING.toString())
                        .with("text", "A bridge at the step.")
                        .with("structural", "yes")
                        .with("photos", new Value.Many(List.of(photo))));
        add(
                EntryKind.DEVIATION_SETTLED,
                Value.Fields.NONE
                        .with("deviation", seq)
                        .with("at", MORNING.toString())
                        .with("disposition", "scrap")
                        .with("second", "bo"));
        erase(seq);
        var deviation = state().trouble().find(seq).orElseThrow();
        assertThat(deviation.text()).isEqualTo("A bridge at the step.");
        assertThat(deviation.structural()).isTrue();
        assertThat(deviation.isOpen()).isFalse();
        assertThat(deviation.photos()).isEmpty();
    }

    @Test
    void should_reach_the_same_state_when_folded_as_it_came_and_read_again() {
        Random random = new Random(20261130);
        List<Long> notes = new ArrayList<>();
        List<Long> named = new ArrayList<>();
        for (int i = 0; i < 200; i++) {
            switch (random.nextInt(5)) {
                case 0 -> {
                    long seq = note("n" + i);
                    notes.add(seq);
                    named.add(seq);
                }
                case 1 -> add(EntryKind.STEP_STARTED, noted("").with("people", List.of("bo")));
                case 2, 3 -> {
                    long of = named.isEmpty() ? 1 : named.get(random.nextInt(named.size()));
                    Value.Fields f = Value.Fields.NONE.with("entry", of).with("why", "w" + i);
                    named.add(add(
                            EntryKind.CORRECTED,
                            random.nextBoolean()
                                    ? f.with("withdrawn", "yes")
                                    : f.with("with", Value.Fields.NONE.with("text", "m" + i))));
                }
                default -> {
                    if (!notes.isEmpty()) {
                        erase(notes.remove(random.nextInt(notes.size())));
                    }
                }
            }
        }
        RecordState whole = state();
        assertThat(whole.erasures().all().size()).isGreaterThan(30);
        assertThat(Chain.check(log.read(1), Optional.empty())).isEmpty();
    }

    @Test
    void should_be_refused_when_what_is_to_be_erased_is_absent_erased_or_never_erased() {
        long seq = note("Bo was ill");
        long start = add(EntryKind.STEP_STARTED, noted("").with("people", List.of("bo")));
        erase(seq);
        Head before = log.head();
        for (long named : new long[] {0, -1, seq, start, before.seq() + 1, 77}) {
            Answer answer = log.append(NewEntry.of(
                    "again-" + (1000 + named),
                    "ada",
                    MORNING,
                    "",
                    EntryKind.ERASED,
                    erasing(named, Value.Fields.NONE)));
            assertThat(answer)
                    .as("entry %d", named)
                    .isInstanceOfSatisfying(
                            Answer.Refused.class, r -> assertThat(r.reason()).startsWith("Nothing was erased"));
        }
        assertThat(log.head()).isEqualTo(before);
    }

    @Test
    void should_say_nothing_is_personal_when_there_is_nothing_to_take_out() {
        Value.Fields plain = Value.Fields.NONE.with("about", STEP).with("text", "cracked");
        assertThat(Erasable.kept("deviation-raised", plain, "deviation-raised")).isEmpty();
        assertThat(Erasable.kept("step-noted", noted("x"), "step-noted"))
                .contains(noted("x").without(List.of("text")));
        assertThat(Erasable.isKind("reading-taken")).isFalse();
        assertThat(Erasable.isEmptied(Erasable.EMPTIED, CanonicalText.sha256(Erasable.EMPTIED)))
                .as("a payload that always said so was not emptied")
                .isFalse();
    }

    private List<Entry> erased() {
        for (int i = 1; i <= 6; i++) {
            note("n" + i);
        }
        add(EntryKind.STEP_STARTED, noted("").with("people", List.of("bo")));
        erase(3);
        note("after");
        erase(5);
        note("last");
        return new ArrayList<>(log.read(1));
    }

    private static long bad(List<Entry> entries) {
        return Chain.check(entries, Optional.empty()).map(Chain.Fault::seq).orElse(0L);
    }

    private static List<Entry> changed(List<Entry> entries, int seq, UnaryOperator<Entry> how) {
        List<Entry> changed = new ArrayList<>(entries);
        changed.set(seq - 1, how.apply(changed.get(seq - 1)));
        return changed;
    }

    private static Entry with(Entry e, String by, String payload) {
        return new Entry(
                e.version(),
                e.seq(),
                e.client(),
                by,
                e.phone(),
                e.at(),
                e.project(),
                e.kind(),
                payload,
                e.payloadHash(),
                e.files(),
                e.previous(),
                e.hash());
    }

    @Test
    void should_name_the_first_bad_entry_when_something_is_emptied_that_no_later_entry_names() {
        List<Entry> sound = erased();
        assertThat(bad(sound)).isZero();
        assertThat(bad(changed(sound, 2, Entry::emptied))).isEqualTo(2);
        assertThat(bad(changed(sound, 7, Entry::emptied))).as("a start").isEqualTo(7);
        assertThat(bad(changed(sound, 8, Entry::emptied)))
                .as("where what says so is emptied, nobody names the third")
                .isEqualTo(3);
        assertThat(bad(changed(sound, 3, e -> with(e, e.by(), e.payload().replace("yes", "Yes")))))
                .isEqualTo(3);
        Chain chain = new Chain();
        changed(sound, 2, Entry::emptied).forEach(chain::next);
        assertThat(chain.end().orElseThrow().what()).contains("emptied");
        assertThat(chain.head())
                .as("sound up to the one before")
                .isEqualTo(sound.get(0).head());
        assertThat(chain.treeHead().seq()).isEqualTo(1);
    }

    @Test
    void should_name_the_altered_entry_and_not_one_erased_by_an_entry_behind_it() {
        List<Entry> sound = erased();
        assertThat(bad(changed(sound, 6, e -> with(e, "eve", e.payload())))).isEqualTo(6);
        assertThat(bad(changed(sound, 8, e -> with(e, "eve", e.payload())))).isEqualTo(8);
        assertThat(bad(changed(changed(sound, 2, Entry::emptied), 6, e -> with(e, "eve", e.payload()))))
                .as("what was emptied in silence comes first")
                .isEqualTo(2);
        assertThat(bad(sound.subList(0, 9)))
                .as("cut before the entry that says so")
                .isEqualTo(5);
    }

    @Test
    void should_prove_the_record_when_the_head_was_kept_before_the_erasure() {
        for (int i = 1; i <= 6; i++) {
            note("n" + i);
        }
        Head head = log.head();
        Chain before = new Chain();
        log.read(1).forEach(before::next);
        TreeHead tree = before.treeHead();
        erase(3);
        assertThat(Chain.check(log.read(1), Optional.of(head))).isEmpty();
        assertThat(Chain.check(log.read(1), Optional.of(tree))).isEmpty();
    }

    @Test
    void should_be_a_fault_when_an_entry_says_falsely_that_another_was_erased() {
        erased();
        long head = log.head().seq();
        for (long named : new long[] {0, 3, 6, 7, head + 1, head + 5}) {
            List<Entry> forged = new ArrayList<>(log.read(1));
            forged.add(Entry.next(
                    log.head(),
                    NewEntry.of("forged-1", "eve", MORNING, "", EntryKind.ERASED, erasing(named, Value.Fields.NONE))));
            Chain.Fault fault = Chain.check(forged, Optional.empty()).orElseThrow();
            assertThat(fault.seq()).as("naming %d", named).isEqualTo(head + 1);
            assertThat(fault.what()).contains("erases entry " + named);
        }
    }

    @Test
    void should_read_the_same_entry_back_from_its_line_when_it_was_erased() {
        for (Entry e : erased()) {
            assertThat(EntryLine.read(EntryLine.of(e))).isEqualTo(e);
        }
    }
}
