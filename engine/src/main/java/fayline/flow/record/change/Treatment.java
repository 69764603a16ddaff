package fayline.flow.record.change;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What became of one thing that a change touches. */
public enum Treatment {
    /** The definition holds it anew; what was printed of it before is withdrawn. */
    REVISED("new revision is in"),
    /** Looked at: it stays as it is. */
    UNCHANGED("stays as it is"),
    /** What had to be done about it is done: checked anew, told to the maker, collected. */
    DONE("done");

    private final String words;

    Treatment(String words) {
        this.words = words;
    }

    /** The word as people read it. */
    public String words() {
        return words;
    }

    /** The word in the record, as {@code revised}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The treatment that a word names. */
    public static Optional<Treatment> of(String key) {
        return Arrays.stream(values()).filter(t -> t.key().equals(key)).findFirst();
    }

    /** The words in the record, in their order. */
    public static List<String> keys() {
        return Arrays.stream(values()).map(Treatment::key).toList();
    }
}
