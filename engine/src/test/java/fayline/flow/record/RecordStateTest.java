package fayline.flow.record;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.payload.Value;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

class RecordStateTest {
    private static final Instant MORNING = Instant.parse("2026-03-02T07:00:00Z");
    private static final String STEP = "ousel-1/hull/1/bag";
    private final MemoryLog log = new MemoryLog();
    private int next;

    private long add(String by, EntryKind kind, Value.Fields payload) {
        next++;
        log.append(
                NewEntry.of("test-" + (10000 + next), by, MORNING.plusSeconds(60L * next), "ousel-1", kind, payload));
        return log.head().seq();
    }

    private long start(String by, String at, String... people) {
        return add(
                by,
                EntryKind.STEP_STARTED,
                Value.Fields.NONE.with("step", STEP).with("at", at).with("people", List.of(people)));
    }

    private long finish(String by, String at) {
        return add(
                by,
                EntryKind.STEP_FINISHED,
                Value.Fields.NONE.with("step", STEP).with("at", at));
    }

    private RecordState state() {
        return RecordState.of(log.read(1));
    }

    @Test
    void should_hold_last_text_of_each_path_when_files_are_saved_and_removed() {
        KeptFile people = KeptFile.of("people.yaml", "people: []\n".getBytes(StandardCharsets.UTF_8));
        KeptFile later = KeptFile.of("people.yaml", "people: [] # none\n".getBytes(StandardCharsets.UTF_8));
        KeptFile outline = KeptFile.of("outlines/rib.dxf", new byte[] {(byte) 0xff, 0, 1});
        add("ada", EntryKind.FILE_SAVED, people.payload(true));
        add("ada", EntryKind.FILE_SAVED, outline.payload(false));
        add("ada", EntryKind.FILE_SAVED, later.payload(true));
        RecordState state = state();
        assertThat(state.shopFiles().values()).extracting(KeptFile::content).containsExactly("people: [] # none\n");
        assertThat(state.files("ousel-1")).containsOnlyKeys("outlines/rib.dxf", "people.yaml");
        assertThat(state.projectFiles().values().iterator().next().values())
                .singleElement()
                .satisfies(f -> assertThat(f.bytes()).containsExactly(0xff, 0, 1));
        assertThat(state.files("other")).containsOnlyKeys("people.yaml");
        add(
                "ada",
                EntryKind.FILE_REMOVED,
                Value.Fields.NONE.with("scope", "project").with("path", "outlines/rib.dxf"));
        assertThat(state().files("ousel-1")).containsOnlyKeys("people.yaml");
    }

    @Test
    void should_keep_first_start_and_record_conflict_when_two_phones_start_one_step() {
        long one = start("ada", "2026-03-02T08:00:00Z", "ada");
        long two = start("bo", "2026-03-02T07:55:00Z", "bo");
        finish("ada", "2026-03-02T09:00:00Z");
        finish("bo", "2026-03-02T09:01:00Z");
        RecordState state = state();
        assertThat(state.step(STEP).startedBy()).isEqualTo(one);
        assertThat(state.step(STEP).people()).containsExactly("ada");
        assertThat(state.step(STEP).finished()).contains(Instant.parse("2026-03-02T09:00:00Z"));
        assertThat(state.conflicts()).hasSize(2);
        assertThat(state.conflicts().get(0).seq()).isEqualTo(two);
        assertThat(state.conflicts().get(0).other()).isEqualTo(one);
    }

    @Test
    void should_follow_the_correction_when_an_entry_was_wrong() {
        long wrong = start("ada", "2026-03-02T08:00:00Z", "ada");
        long fix = add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", wrong)
                        .with("why", "typed the wrong hour")
                        .with(
                                "with",
                                Value.Fields.NONE
                                        .with("at", "2026-03-02T09:30:00Z")
                                        .with("step", "ousel-1/x/1/y")));
        assertThat(state().step(STEP).started()).contains(Instant.parse("2026-03-02T09:30:00Z"));
        assertThat(state().steps()).containsOnlyKeys(STEP);
        add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE.with("entry", fix).with("withdrawn", "yes").with("why", "other part"));
        assertThat(state().step(STEP).started()).isEmpty();
        long again = start("bo", "2026-03-02T10:00:00Z", "bo");
        assertThat(state().step(STEP).startedBy()).isEqualTo(again);
        assertThat(state().conflicts()).isEmpty();
    }

    @Test
    void should_record_conflict_when_a_correction_names_nothing() {
        add("ada", EntryKind.CORRECTED, Value.Fields.NONE.with("entry", 77L).with("withdrawn", "yes"));
        assertThat(state().conflicts()).hasSize(1);
        assertThat(state().conflicts().get(0).sentence()).contains("entry 77");
    }

    @Test
    void should_keep_a_reading_as_typed_when_it_is_taken_and_corrected() {
        long seq = add(
                "ada",
                EntryKind.READING_TAKEN,
                Value.Fields.NONE
                        .with("kind", "gap")
                        .with("of", "canopy-left")
                        .with("station", "A")
                        .with("at", "2026-03-02T08:00:00Z")
                        .with("values", Value.Fields.NONE.with("value", ".050 in")));
        assertThat(state().readings().get(0).value()).isEqualTo(".050 in");
        add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", seq)
                        .with("with", Value.Fields.NONE.with("values", Value.Fields.NONE.with("value", "3/32 in"))));
        assertThat(state().readings()).hasSize(1);
        assertThat(state().readings().get(0).value()).isEqualTo("3/32 in");
    }

    @Test
    void should_pass_over_an_entry_when_its_kind_is_of_a_later_version() {
        log.append(
                new NewEntry("later-kind", "ada", "", MORNING, "ousel-1", "lot-split", Value.Fields.NONE, List.of()));
        start("ada", "2026-03-02T08:00:00Z", "ada");
        assertThat(state().unknown()).isEqualTo(1);
        assertThat(state().step(STEP).started()).isPresent();
        assertThat(Chain.check(log.read(1), java.util.Optional.empty())).isEmpty();
    }

    /** The state after any prefix and then the rest is the state of all; same entries, same state. */
    @Test
    void should_reach_the_same_state_when_folded_from_any_prefix() {
        Random random = new Random(20260302);
        for (int i = 0; i < 120; i++) {
            addAny(random);
        }
        List<Entry> all = log.read(1);
        RecordState whole = RecordState.of(all);
        assertThat(whole.steps().size()).isGreaterThan(3);
        assertThat(whole.conflicts()).isNotEmpty();
        for (int cut = 0; cut <= all.size(); cut += 7) {
            RecordFold fold = new RecordFold();
            all.subList(0, cut).forEach(fold::take);
            RecordState prefix = fold.state();
            assertThat(prefix).isEqualTo(RecordState.of(new ArrayList<>(all.subList(0, cut))));
            all.subList(cut, all.size()).forEach(fold::take);
            assertThat(fold.state()).isEqualTo(whole);
            assertThat(prefix.head().seq()).isEqualTo(cut);
        }
    }

    private void addAny(Random random) {
        String step = "ousel-1/part-" + random.nextInt(5) + "/1/lay-up";
        Value.Fields of = Value.Fields.NONE
                .with("step", step)
                .with("at", MORNING.plusSeconds(random.nextInt(90000)).toString());
        switch (random.nextInt(6)) {
            case 0 -> add("ada", EntryKind.STEP_STARTED, of.with("people", List.of("ada", "bo")));
            case 1 -> add("bo", EntryKind.STEP_FINISHED, of.with("signed", "bo"));
            case 2 -> add("cy", EntryKind.STEP_NOTED, of.with("text", "n" + next));
            case 3 ->
                add(
                        "cy",
                        EntryKind.READING_TAKEN,
                        Value.Fields.NONE.with("kind", "mass").with("of", "part-1"));
            case 4 ->
                add(
                        "ada",
                        EntryKind.FILE_SAVED,
                        KeptFile.of("p" + random.nextInt(3) + ".yaml", new byte[] {65})
                                .payload(random.nextBoolean()));
            default ->
                add(
                        "ada",
                        EntryKind.CORRECTED,
                        Value.Fields.NONE
                                .with("entry", 1L + random.nextInt(next + 1))
                                .with("withdrawn", random.nextBoolean() ? "yes" : "no"));
        }
    }
}
