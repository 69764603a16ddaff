package fayline.app.pdf;

import java.util.Locale;
import java.util.Optional;

/** Sheets that cards are printed on. */
public enum Paper {
    /** 210 x 297 mm. */
    A4("210mm 297mm"),
    /** 8.5 x 11 in. */
    LETTER("8.5in 11in");

    private final String size;

    Paper(String size) {
        this.size = size;
    }

    /** The size as a style sheet takes it. */
    String size() {
        return size;
    }

    /** The paper of a word, as {@code a4}. */
    public static Optional<Paper> of(String word) {
        for (Paper p : values()) {
            if (p.name().toLowerCase(Locale.ROOT).equals(word.toLowerCase(Locale.ROOT))) {
                return Optional.of(p);
            }
        }
        return Optional.empty();
    }
}
