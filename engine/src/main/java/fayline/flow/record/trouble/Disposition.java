package fayline.flow.record.trouble;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What is decided about a deviation. */
public enum Disposition {
    /** It stays as it is. */
    USE_AS_IS("use as is"),
    /** It is worked on until it is right. */
    REWORK("rework"),
    /** It is not used: what was made is made again. */
    SCRAP("scrap");

    private final String words;

    Disposition(String words) {
        this.words = words;
    }

    /** The decision in words. */
    public String words() {
        return words;
    }

    /** The word in the record and in a history, as {@code use-as-is}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The decision that a word names. */
    public static Optional<Disposition> of(String key) {
        return Arrays.stream(values()).filter(d -> d.key().equals(key)).findFirst();
    }

    /** The words in the record, in their order. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Disposition::key).toList();
    }
}
