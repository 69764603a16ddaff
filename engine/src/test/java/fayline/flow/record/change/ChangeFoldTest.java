package fayline.flow.record.change;

import static org.assertj.core.api.Assertions.assertThat;

import fayline.flow.record.EntryKind;
import fayline.flow.record.MemoryLog;
import fayline.flow.record.NewEntry;
import fayline.flow.record.RecordState;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Changes as entries amount to them. */
class ChangeFoldTest {
    private static final String AT = "2026-03-02T08:00:00Z";
    private final MemoryLog log = new MemoryLog();
    private int next;

    private long add(String by, EntryKind kind, Value.Fields payload) {
        next++;
        log.append(
                NewEntry.of("test-" + (10000 + next), by, Instant.parse(AT), "ousel-1", kind, payload.with("at", AT)));
        return log.head().seq();
    }

    private long raise(String number, String... more) {
        Value.Fields f = Value.Fields.NONE
                .with("number", number)
                .with("what", "A thicker lip.")
                .with("why", "It cracked.")
                .with("touches", List.of("part/lid"));
        for (int i = 0; i < more.length; i += 2) {
            f = f.with(more[i], more[i + 1]);
        }
        return add("bo", EntryKind.CHANGE_RAISED, f);
    }

    private long decide(String by, long change, String decision, String second) {
        Value.Fields lid = Value.Fields.NONE.with("made", "lid").with("drawing", "WR-200 rev A");
        return add(
                by,
                EntryKind.CHANGE_DECIDED,
                Value.Fields.NONE
                        .with("change", change)
                        .with("decision", decision)
                        .withUnlessEmpty("second", second)
                        .with("items", List.of("made/lid", "weight/lid"))
                        .with("withdraws", new Value.Many(List.of(lid))));
    }

    private long settle(long change, String item, String how) {
        return add(
                "ada",
                EntryKind.CHANGE_SETTLED,
                Value.Fields.NONE.with("change", change).with("item", item).with("how", how));
    }

    private void withdraw(long entry) {
        add(
                "ada",
                EntryKind.CORRECTED,
                Value.Fields.NONE.with("entry", entry).with("why", "wrong").with("withdrawn", "yes"));
    }

    private Change now(long seq) {
        return RecordState.of(log.read(1)).change().find(seq).orElseThrow();
    }

    @Test
    void should_go_from_raised_over_accepted_to_closed() {
        long c = raise("C-01");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.RAISED);
        decide("ada", c, "accepted", "");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.ACCEPTED);
        assertThat(now(c).awaitsDefinitionOf("lid")).isTrue();
        assertThat(now(c).awaitsDefinitionOf("shell")).isFalse();
        settle(c, "made/lid", "revised");
        assertThat(now(c).awaitsDefinitionOf("lid")).isFalse();
        add("ada", EntryKind.CHANGE_CLOSED, Value.Fields.NONE.with("change", c));
        assertThat(now(c).stage()).isEqualTo(Change.Stage.CLOSED);
        assertThat(now(c).isInForce()).isTrue();
        assertThat(now(c).isOpen()).isFalse();
    }

    @Test
    void should_wait_for_a_second_person_who_is_another_where_structure_is_touched() {
        long c = raise("C-01", "structural", "yes");
        decide("ada", c, "accepted", "");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.WAITS_FOR_SECOND);
        decide("ada", c, "accepted", "ada");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.WAITS_FOR_SECOND);
        decide("cy", c, "refused", "cy");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.WAITS_FOR_SECOND);
        long agreed = decide("cy", c, "accepted", "cy");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.ACCEPTED);
        assertThat(now(c).verdict().orElseThrow().second()).isEqualTo("cy");
        assertThat(now(c).verdict().orElseThrow().holdsSince()).isEqualTo(agreed);
    }

    @Test
    void should_hold_the_first_decision_and_the_last_line() {
        long c = raise("C-01");
        decide("ada", c, "refused", "");
        decide("ada", c, "accepted", "");
        assertThat(now(c).stage()).isEqualTo(Change.Stage.REFUSED);
        settle(c, "weight/lid", "done");
        long last = settle(c, "weight/lid", "unchanged");
        assertThat(now(c).settled("weight/lid").orElseThrow().how()).isEqualTo(Treatment.UNCHANGED);
        withdraw(last);
        assertThat(now(c).settled("weight/lid").orElseThrow().how()).isEqualTo(Treatment.DONE);
    }

    @Test
    void should_be_as_before_where_a_decision_is_taken_back() {
        long c = raise("C-01");
        long d = decide("ada", c, "refused", "");
        withdraw(d);
        assertThat(now(c).stage()).isEqualTo(Change.Stage.RAISED);
        withdraw(c);
        assertThat(RecordState.of(log.read(1)).change().changes()).isEmpty();
    }

    @Test
    void should_number_on_from_the_highest_name() {
        assertThat(RecordState.EMPTY.change().nextName("ousel-1")).isEqualTo("C-01");
        raise("C-09");
        raise("chine");
        ChangeState state = RecordState.of(log.read(1)).change();
        assertThat(state.nextName("ousel-1")).isEqualTo("C-10");
        assertThat(state.nextName("other")).isEqualTo("C-01");
        assertThat(state.find("ousel-1", "chine")).isPresent();
        assertThat(state.find("other", "chine")).isEmpty();
    }

    @Test
    void should_read_every_word_that_it_writes() {
        assertThat(Treatment.keys()).allSatisfy(k -> assertThat(Treatment.of(k)).isPresent());
        assertThat(Treatment.of("burnt")).isEmpty();
    }
}
