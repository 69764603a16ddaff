package fayline.flow.record;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.made.StepMade;
import fayline.flow.record.payload.Value;
import fayline.flow.record.trouble.Deviation;
import fayline.flow.record.trouble.Disposition;
import java.time.Instant;
import org.junit.jupiter.api.Test;

/** What went into steps and what came out other than drawn, as entries amount to it. */
class RoomsTest {
    private static final String STEP = "ousel-1/hull/1/lay-up-1";
    private static final String AT = "2026-03-02T08:00:00Z";
    private final MemoryLog log = new MemoryLog();
    private int next;

    private long add(String by, EntryKind kind, Value.Fields payload) {
        next++;
        log.append(NewEntry.of("test-" + (10000 + next), by, Instant.parse(AT), "ousel-1", kind, payload));
        return log.head().seq();
    }

    private long ply(String number, String... more) {
        Value.Fields f = Value.Fields.NONE.with("step", STEP).with("at", AT).with("ply", number);
        for (int i = 0; i < more.length; i += 2) {
            f = f.with(more[i], more[i + 1]);
        }
        return add("ada", EntryKind.PLY_LAID, f);
    }

    private void withdraw(long entry) {
        add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE.with("entry", entry).with("why", "wrong").with("withdrawn", "yes"));
    }

    private StepMade made() {
        return RecordState.of(log.read(1)).made().step(STEP);
    }

    private long raise(String... more) {
        Value.Fields f = Value.Fields.NONE.with("about", STEP).with("at", AT).with("text", "A bridge at the step.");
        for (int i = 0; i < more.length; i += 2) {
            f = f.with(more[i], more[i + 1]);
        }
        return add("bo", EntryKind.DEVIATION_RAISED, f);
    }

    private long decide(String by, long deviation, String disposition, String second) {
        return add(
                by,
                EntryKind.DEVIATION_SETTLED,
                Value.Fields.NONE
                        .with("deviation", deviation)
                        .with("at", AT)
                        .with("disposition", disposition)
                        .withUnlessEmpty("second", second));
    }

    private Deviation deviation(long seq) {
        return RecordState.of(log.read(1)).trouble().find(seq).orElseThrow();
    }

    @Test
    void should_hold_lots_mixes_and_plies_of_a_step_in_the_order_of_their_entries() {
        add(
                "ada",
                EntryKind.LOT_DRAWN,
                Value.Fields.NONE
                        .with("step", STEP)
                        .with("at", AT)
                        .with("lot", "L-1")
                        .with("amount", "3 m2")
                        .with("told", "2026-03-02T09:00:00Z"));
        add(
                "ada",
                EntryKind.MIX_MADE,
                Value.Fields.NONE
                        .with("step", STEP)
                        .with("at", AT)
                        .with("system", "er-slow")
                        .with("weighed", "no"));
        ply("2", "why", "the first was not cut yet");
        ply("1");
        assertThat(made().draws()).singleElement().satisfies(d -> {
            assertThat(d.amount()).isEqualTo("3 m2");
            assertThat(d.told()).contains(Instant.parse("2026-03-02T09:00:00Z"));
        });
        assertThat(made().mixes())
                .singleElement()
                .satisfies(m -> assertThat(m.weighed()).isFalse());
        assertThat(made().plies()).extracting(p -> p.ply()).containsExactly("2", "1");
    }

    @Test
    void should_drop_what_is_withdrawn_and_count_a_ply_laid_more_than_one_left_out() {
        long out = ply("1", "skipped", "yes", "why", "none left");
        assertThat(made().ply("1").orElseThrow().skipped()).isTrue();
        long in = ply("1");
        assertThat(made().ply("1").orElseThrow().seq()).isEqualTo(in);
        withdraw(in);
        assertThat(made().ply("1").orElseThrow().seq()).isEqualTo(out);
        withdraw(out);
        assertThat(made().isEmpty()).isTrue();
    }

    @Test
    void should_keep_a_ply_at_its_step_when_a_correction_names_another() {
        long seq = ply("1");
        add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE
                        .with("entry", seq)
                        .with(
                                "with",
                                Value.Fields.NONE.with("step", "ousel-1/x/1/y").with("lot", "L-2")));
        assertThat(made().ply("1").orElseThrow().lot()).isEqualTo("L-2");
    }

    @Test
    void should_be_open_until_decided_and_open_again_when_the_decision_is_withdrawn() {
        long seq = raise();
        assertThat(deviation(seq).isOpen()).isTrue();
        long decision = decide("ada", seq, "use-as-is", "");
        assertThat(deviation(seq).isOpen()).isFalse();
        withdraw(decision);
        assertThat(deviation(seq).isOpen()).isTrue();
    }

    @Test
    void should_let_the_first_of_two_decisions_hold() {
        long seq = raise();
        decide("ada", seq, "use-as-is", "");
        decide("cy", seq, "scrap", "");
        assertThat(deviation(seq).settled().orElseThrow().disposition()).isEqualTo(Disposition.USE_AS_IS);
    }

    @Test
    void should_wait_for_a_second_person_who_is_not_the_first_when_structure_is_touched() {
        long seq = raise("structural", "yes");
        decide("ada", seq, "rework", "");
        assertThat(deviation(seq).isWaitingForSecond()).isTrue();
        decide("ada", seq, "rework", "ada");
        assertThat(deviation(seq).isOpen()).isTrue();
        decide("cy", seq, "scrap", "cy");
        assertThat(deviation(seq).isOpen()).isTrue();
        long agreed = decide("cy", seq, "rework", "cy");
        assertThat(deviation(seq).isOpen()).isFalse();
        assertThat(deviation(seq).settled().orElseThrow().second()).isEqualTo("cy");
        assertThat(deviation(seq).settled().orElseThrow().agreed()).isEqualTo(agreed);
    }

    @Test
    void should_begin_a_part_anew_when_it_is_scrapped_and_have_it_back_when_that_is_withdrawn() {
        long start = add(
                "ada",
                EntryKind.STEP_STARTED,
                Value.Fields.NONE.with("step", STEP).with("at", AT).with("people", java.util.List.of("ada")));
        long ply = ply("1");
        long seq = raise("structural", "yes");
        decide("ada", seq, "scrap", "");
        assertThat(RecordState.of(log.read(1)).step(STEP).startedBy()).isEqualTo(start);
        long agreed = decide("cy", seq, "scrap", "cy");
        RecordState scrapped = RecordState.of(log.read(1));
        assertThat(scrapped.step(STEP).started()).isEmpty();
        assertThat(scrapped.made().step(STEP).current().plies()).isEmpty();
        assertThat(scrapped.made().step(STEP).plies()).hasSize(1);
        long again = ply("1");
        assertThat(made().current().ply("1").orElseThrow().seq()).isEqualTo(again);
        withdraw(agreed);
        assertThat(RecordState.of(log.read(1)).step(STEP).startedBy()).isEqualTo(start);
        assertThat(made().current().ply("1").orElseThrow().seq()).isEqualTo(ply);
    }

    @Test
    void should_take_no_agreement_for_a_decision() {
        long seq = raise();
        decide("bo", seq, "use-as-is", "bo");
        assertThat(deviation(seq).isOpen()).isTrue();
    }
}
