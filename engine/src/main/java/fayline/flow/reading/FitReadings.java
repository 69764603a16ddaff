package fayline.flow.reading;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.project.fit.TypedGap;
import fayline.flow.reading.FitReading.Kind;
import fayline.flow.record.TakenReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The readings of one fit, in the order taken. */
public final class FitReadings {
    private FitReadings() {}

    /**
     * Picks and understands them. What cannot be read is not here; it was refused when it was typed.
     *
     * @param all readings of a project
     * @param fit the fit's id
     */
    public static List<FitReading> of(List<TakenReading> all, String fit) {
        List<FitReading> mine = new ArrayList<>();
        for (TakenReading r : all) {
            if (r.of().equals(fit)) {
                kind(r.kind()).flatMap(k -> reading(k, r)).ifPresent(mine::add);
            }
        }
        return List.copyOf(mine);
    }

    private static Optional<Kind> kind(String word) {
        for (Kind k : Kind.values()) {
            if (k.word().equals(word)) {
                return Optional.of(k);
            }
        }
        return Optional.empty();
    }

    private static Optional<FitReading> reading(Kind kind, TakenReading r) {
        OptionalDouble value = mm(r.value());
        return value.isEmpty()
                ? Optional.empty()
                : Optional.of(new FitReading(
                        r.seq(),
                        r.at(),
                        r.by(),
                        kind,
                        r.station(),
                        r.state(),
                        r.value(),
                        value.getAsDouble(),
                        mm(r.values().getOrDefault("nogo", "")),
                        r.values().getOrDefault("instrument", ""),
                        celsius(r.values().getOrDefault("temperature", "")),
                        round(r.values().getOrDefault("round", ""))));
    }

    static int round(String typed) {
        return typed.matches("[1-9][0-9]{0,3}") ? Integer.parseInt(typed) : 1;
    }

    private static OptionalDouble mm(String typed) {
        try {
            return typed.isBlank()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(TypedGap.read(typed).value().millimetres());
        } catch (UnreadableQuantityException e) {
            return OptionalDouble.empty();
        }
    }

    private static OptionalDouble celsius(String typed) {
        try {
            return typed.isBlank()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(QuantityParser.parse(typed, QuantityKind.TEMPERATURE)
                            .value()
                            .celsius());
        } catch (UnreadableQuantityException e) {
            return OptionalDouble.empty();
        }
    }
}
