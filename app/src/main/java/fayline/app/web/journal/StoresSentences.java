package fayline.app.web.journal;

import fayline.app.web.frame.Sight;
import fayline.flow.record.EntryKind;
import fayline.flow.record.payload.Value;
import java.util.stream.Collectors;

/** Entries about the stores and orders, in a sentence each. */
final class StoresSentences {
    private StoresSentences() {}

    static String of(EntryKind kind, Value.Fields f, Sight sight) {
        return switch (kind) {
            case LOT_RECEIVED ->
                "received lot " + f.text("lot") + ", " + f.text("quantity") + " of " + sight.stuffName(f.text("of"))
                        + (f.text("component").isEmpty() ? "" : ", " + f.text("component"))
                        + (f.text("certificate").isEmpty() ? "" : ", with its certificate");
            case LOT_MOVED ->
                "carried lot " + f.text("lot") + (f.text("to").equals("cold") ? " into the cold" : " out of the cold");
            case STOCK_TAKEN -> "took stock: " + counts(f);
            case ORDER_PLACED ->
                "ordered " + f.text("quantity") + " of " + sight.stuffName(f.text("what"))
                        + (f.text("maker").isEmpty() ? "" : " from " + f.text("maker")) + " as " + f.text("order")
                        + (f.text("drawing").isEmpty()
                                ? ""
                                : ", drawing " + f.text("drawing") + " " + f.text("revision"));
            default ->
                (f.text("accepted").equals("yes") ? "accepted " : "sent back ") + "what came of order "
                        + f.text("order")
                        + (f.text("note").isEmpty() ? "" : ": " + EntryWords.shortened(f.text("note")));
        };
    }

    private static String counts(Value.Fields f) {
        return EntryWords.shortened(f.items("counts").stream()
                .filter(Value.Fields.class::isInstance)
                .map(Value.Fields.class::cast)
                .map(c -> c.text("left") + " of lot " + c.text("lot"))
                .collect(Collectors.joining(", ")));
    }
}
