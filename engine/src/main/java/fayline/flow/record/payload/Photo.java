package fayline.flow.record.payload;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A picture that belongs to a note: which file it is, and what was said of it. The file itself lies beside the record under its
 * hash, once however often it is named.
 *
 * @param sha256 hash of the file's bytes, 64 hexadecimal digits
 * @param bytes the file's length, at least 1
 * @param sort what the file is, by its content
 * @param widthPx its width as stored, before it is turned upright, at least 1
 * @param heightPx its height as stored, at least 1
 * @param original whether the pixels are those that the camera stored; otherwise it was made smaller
 * @param location whether where it was taken was left in because that was asked for
 * @param people what was said about people in it
 * @param sent hash of what was sent, by which the same picture is known when it is sent again
 */
public record Photo(
        String sha256,
        long bytes,
        Sort sort,
        int widthPx,
        int heightPx,
        boolean original,
        boolean location,
        People people,
        String sent) {
    private static final String HASH = "[0-9a-f]{64}";

    /**
     * Checks hashes and sizes.
     *
     * @throws IllegalArgumentException if a hash is not one or a size is less than 1
     */
    public Photo {
        if (!sha256.matches(HASH) || !sent.matches(HASH)) {
            throw new IllegalArgumentException("photo \"" + sha256 + "\", sent as \"" + sent
                    + "\": expected SHA-256 as 64 hexadecimal digits of small letters");
        }
        if (bytes < 1 || widthPx < 1 || heightPx < 1) {
            throw new IllegalArgumentException("photo of " + bytes + " bytes, " + widthPx + " x " + heightPx
                    + " pixels: expected at least one of each");
        }
    }

    /** What a picture file can be. */
    public enum Sort {
        /** JPEG. */
        JPEG("image/jpeg", "jpg"),
        /** Portable Network Graphics. */
        PNG("image/png", "png");

        private final String mediaType;
        private final String ending;

        Sort(String mediaType, String ending) {
            this.mediaType = mediaType;
            this.ending = ending;
        }

        /** The media type under which it is served. */
        public String mediaType() {
            return mediaType;
        }

        /** The ending of a file's name, without a dot. */
        public String ending() {
            return ending;
        }

        /** The word in the record. */
        public String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** What was said about people in a picture. */
    public enum People {
        /** Nothing was said. */
        UNSAID("unsaid", "nothing said about people in it"),
        /** Nobody can be recognised. */
        NOBODY("nobody", "nobody to be recognised in it"),
        /** There are people in it, and they agree. */
        AGREED("agreed", "the people in it agree");

        private final String key;
        private final String words;

        People(String key, String words) {
            this.key = key;
            this.words = words;
        }

        /** The word in the record and in a form. */
        public String key() {
            return key;
        }

        /** It in words. */
        public String words() {
            return words;
        }

        /** What a word says, where it is one. */
        public static Optional<People> of(String key) {
            return Arrays.stream(values()).filter(p -> p.key.equals(key)).findFirst();
        }

        /** The words in the record, in their order. */
        public static List<String> keys() {
            return Arrays.stream(values()).map(People::key).toList();
        }
    }

    /** The fields in the entry; what goes without saying is left out. */
    public Value.Fields fields() {
        Value.Fields f = Value.Fields.NONE
                .with("sha256", sha256)
                .with("bytes", bytes)
                .with("sort", sort.key())
                .with("width", widthPx)
                .with("height", heightPx)
                .withUnlessEmpty("original", original ? "yes" : "")
                .withUnlessEmpty("location", location ? "yes" : "")
                .withUnlessEmpty("people", people == People.UNSAID ? "" : people.key());
        return sent.equals(sha256) ? f : f.with("sent", sent);
    }

    /**
     * A picture from the fields of an entry; empty where they do not make one, as in a damaged entry or one of a later form.
     */
    public static Optional<Photo> of(Value.Fields f) {
        Optional<Sort> sort = Arrays.stream(Sort.values())
                .filter(s -> s.key().equals(f.text("sort")))
                .findFirst();
        try {
            return sort.map(s -> new Photo(
                    f.text("sha256"),
                    f.whole("bytes").orElse(0L),
                    s,
                    Math.toIntExact(f.whole("width").orElse(0L)),
                    Math.toIntExact(f.whole("height").orElse(0L)),
                    f.text("original").equals("yes"),
                    f.text("location").equals("yes"),
                    People.of(f.text("people")).orElse(People.UNSAID),
                    f.text("sent").isEmpty() ? f.text("sha256") : f.text("sent")));
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.empty();
        }
    }

    /** The pictures that a note's fields name, in order. */
    public static List<Photo> allOf(Value.Fields note) {
        return note.items("photos").stream()
                .filter(Value.Fields.class::isInstance)
                .flatMap(v -> of((Value.Fields) v).stream())
                .toList();
    }
}
