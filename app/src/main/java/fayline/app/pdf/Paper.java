package fayline.app.pdf;

import java.util.Locale;
import java.util.Optional;

/** Sheets that cards are printed on. */
public enum Paper {
    /** 210 x 297 mm. */
    A4("210mm 297mm", 210, 297),
    /** 8.5 x 11 in. */
    LETTER("8.5in 11in", 215.9, 279.4);

    private final String size;
    private final double widthMm;
    private final double heightMm;

    Paper(String size, double widthMm, double heightMm) {
        this.size = size;
        this.widthMm = widthMm;
        this.heightMm = heightMm;
    }

    /** The short side. */
    double widthMm() {
        return widthMm;
    }

    /** The long side. */
    double heightMm() {
        return heightMm;
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
