package fayline.flow.reading;

import fayline.basis.units.QuantityKind;
import fayline.basis.units.QuantityParser;
import fayline.basis.units.UnreadableQuantityException;
import fayline.flow.record.TakenReading;
import java.util.List;
import java.util.Optional;

/** The widths of one frame, in the order taken. */
public final class WidthReadings {
    /** The kind of such a reading in entries and files. */
    public static final String KIND = "width";

    private WidthReadings() {}

    /**
     * Picks and understands them. What cannot be read is not here; it was refused when it was typed.
     *
     * @param all readings of a project
     * @param fit the fit's id
     */
    public static List<WidthReading> of(List<TakenReading> all, String fit) {
        return all.stream()
                .filter(r -> r.kind().equals(KIND) && r.of().equals(fit))
                .flatMap(r -> reading(r).stream())
                .toList();
    }

    private static Optional<WidthReading> reading(TakenReading r) {
        return WidthReading.State.named(r.state())
                .flatMap(s -> mm(r.value())
                        .map(mm -> new WidthReading(
                                r.seq(),
                                r.at(),
                                r.by(),
                                r.station(),
                                s,
                                FitReadings.round(r.values().getOrDefault("round", "")),
                                r.value(),
                                mm,
                                r.values().getOrDefault("instrument", ""))));
    }

    /** A width as typed, in mm; empty where it is none. */
    public static Optional<Double> mm(String typed) {
        try {
            return Optional.of(QuantityParser.parse(typed, QuantityKind.LENGTH)
                            .value()
                            .millimetres())
                    .filter(mm -> mm > 0);
        } catch (UnreadableQuantityException e) {
            return Optional.empty();
        }
    }
}
