package fayline.flow.record;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Why a step took longer or came later than planned, by how often builders meet it. Common practice, no source. */
public enum Slip {
    /** The time that the recipe gives was too short, preparing and peel ply forgotten. */
    ESTIMATE("the time given was too short"),
    /** Too cold or too damp for the work. */
    COLD("too cold or too damp"),
    /** Fitting and filling went round again. */
    FITTING("fitting and filling went round again"),
    /** A bag, a mix or a bond failed and was done again. */
    REDO("something failed and was done again"),
    /** Something ordered was not there. */
    DELIVERY("a delivery was not there"),
    /** Somebody was away, or the shop had other things to do. */
    AWAY("somebody was away"),
    /** Waiting for a helper or an inspector. */
    WAITING("waited for a helper or an inspector"),
    /** The place was taken. */
    PLACE("the place was taken"),
    /** Something else, which a note tells. */
    OTHER("something else");

    private final String words;

    Slip(String words) {
        this.words = words;
    }

    /** The word in the record and in a history. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The reason in words. */
    public String words() {
        return words;
    }

    /** The reason that a word names. */
    public static Optional<Slip> of(String key) {
        return Arrays.stream(values()).filter(s -> s.key().equals(key)).findFirst();
    }

    /** The words in the record, in their order. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Slip::key).toList();
    }
}
