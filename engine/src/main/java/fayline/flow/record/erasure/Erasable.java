package fayline.flow.record.erasure;

import fayline.flow.record.payload.CanonicalText;
import fayline.flow.record.payload.Value;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What of an entry may be erased. Erasing puts {@link #EMPTIED} in the place of the payload, whose hash stays, and says again in the
 * erasing entry what was not personal. Only kinds named here can be erased: no start, finish, reading, signature or lot is among them.
 */
public final class Erasable {
    /** Kind of the entry that says that another one was erased. */
    public static final String ERASED = "erased";

    /** The one form of a payload that was emptied. */
    public static final String EMPTIED = Value.Fields.NONE.with("erased", "yes").canonical();

    private static final String EMPTIED_HASH = CanonicalText.sha256(EMPTIED);
    private static final String CORRECTED = "corrected";
    private static final String WITH = "with";

    /** Fields that erasing takes out, by kind. A deviation or finding keeps its words: others work by them. */
    private static final Map<String, List<String>> PERSONAL = Map.of(
            "step-noted",
            List.of("text", "photos"),
            "week-told",
            List.of("title", "text", "photos"),
            "deviation-raised",
            List.of("photos"),
            "finding-raised",
            List.of("photos"),
            "finding-corrected",
            List.of("photos"),
            "person-admitted",
            List.of("name"),
            "device-paired",
            List.of("label"),
            "device-ended",
            List.of("label"),
            CORRECTED,
            List.of("why"));

    private Erasable() {}

    /** Whether entries of a kind can be erased at all. */
    public static boolean isKind(String kind) {
        return PERSONAL.containsKey(kind);
    }

    /**
     * Whether a payload was emptied.
     *
     * @param payload as it stands there
     * @param payloadHash the hash of what was recorded
     */
    public static boolean isEmptied(String payload, String payloadHash) {
        return payload.equals(EMPTIED) && !payloadHash.equals(EMPTIED_HASH);
    }

    /**
     * What stays of a payload.
     *
     * @param kind an erasable kind
     * @param payload what was recorded
     * @param of kind of the entry that a correction corrects in the end; else the same kind
     * @return the fields that are not personal; empty where nothing in it is, so that there is nothing to erase
     */
    public static Optional<Value.Fields> kept(String kind, Value.Fields payload, String of) {
        Value.Fields kept = payload.without(PERSONAL.getOrDefault(kind, List.of()));
        if (kind.equals(CORRECTED)) {
            Value.Fields with = kept.inner(WITH).without(PERSONAL.getOrDefault(of, List.of()));
            kept = kept.without(List.of(WITH));
            kept = with.fields().isEmpty() ? kept : kept.with(WITH, with);
        }
        return kept.equals(payload) ? Optional.empty() : Optional.of(kept);
    }
}
