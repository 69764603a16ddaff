package fayline.flow.record.trouble;

import fayline.flow.record.payload.Value;
import java.util.List;

/**
 * One piece of work that puts a deviation right.
 *
 * @param what what is to be done, as typed
 * @param time person-time it takes, as typed with its unit
 * @param kind sort of work, as {@code trim} or {@code lay-up}
 */
public record Rework(String what, String time, String kind) {
    /** The fields in the entry. */
    public Value.Fields fields() {
        return Value.Fields.NONE.with("what", what).with("time", time).with("kind", kind);
    }

    /** What a settlement's fields ask to be done, in order. */
    public static List<Rework> allOf(Value.Fields settlement) {
        return settlement.items("rework").stream()
                .filter(Value.Fields.class::isInstance)
                .map(Value.Fields.class::cast)
                .map(f -> new Rework(f.text("what"), f.text("time"), f.text("kind")))
                .toList();
    }
}
