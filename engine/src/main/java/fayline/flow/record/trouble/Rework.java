package fayline.flow.record.trouble;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Optional;

/**
 * One piece of work that puts a deviation right.
 *
 * @param what what is to be done, as typed
 * @param time person-time it takes, as typed with its unit
 * @param kind sort of work, as {@code trim} or {@code lay-up}
 */
public record Rework(String what, String time, String kind) {
    private static final double MOST_MINUTES = 60_000;

    /** The fields in the entry. */
    public Value.Fields fields() {
        return Value.Fields.NONE.with("what", what).with("time", time).with("kind", kind);
    }

    /** Its person-minutes; empty where the time cannot be read, or is not above nought and at most 1000 h. */
    public Optional<Double> minutes() {
        try {
            double minutes =
                    QuantityParser.parse(time, QuantityKind.TIME_SPAN).value().minutes();
            return minutes > 0 && minutes <= MOST_MINUTES ? Optional.of(minutes) : Optional.empty();
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
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
