package fayline.flow.record.change;

import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.util.List;

/**
 * What was decided about a change.
 *
 * @param seq its entry
 * @param at when
 * @param by who decided
 * @param accepted whether it is made; otherwise nothing becomes of it
 * @param note why, as typed
 * @param second the second person who agrees where structure is touched; empty while nobody has
 * @param agreed the entry by which the second person agreed, where that is another one; else 0
 * @param definition the hash of the definition when it was decided
 * @param items what was to be settled when it was decided, as {@code group/id}
 * @param withdraws what is made otherwise from then on, with the drawing that it was made to
 */
public record Verdict(
        long seq,
        Instant at,
        String by,
        boolean accepted,
        String note,
        String second,
        long agreed,
        String definition,
        List<String> items,
        List<Withdrawn> withdraws) {
    /** Copies the lists. */
    public Verdict {
        items = List.copyOf(items);
        withdraws = List.copyOf(withdraws);
    }

    /** The entry since which it holds: its own, or that of the second person. */
    public long holdsSince() {
        return Math.max(seq, agreed);
    }

    /** Whether a part or joint is made otherwise. */
    public boolean isOn(String made) {
        return withdraws.stream().anyMatch(w -> w.made().equals(made));
    }

    /**
     * A part or joint that is made otherwise.
     *
     * @param made the part or joint, within the project
     * @param drawing the drawing that it was made to, with its revision; empty where none is named
     */
    public record Withdrawn(String made, String drawing) {
        /** The fields in the entry. */
        public Value.Fields fields() {
            return Value.Fields.NONE.with("made", made).withUnlessEmpty("drawing", drawing);
        }

        /** All that a decision's fields name, in order. */
        public static List<Withdrawn> allOf(Value.Fields decision) {
            return decision.items("withdraws").stream()
                    .filter(Value.Fields.class::isInstance)
                    .map(Value.Fields.class::cast)
                    .map(f -> new Withdrawn(f.text("made"), f.text("drawing")))
                    .toList();
        }
    }
}
