package fayline.app.drawing;

import java.util.Locale;

/**
 * What a stroke or a fill means. The screen maps each to a design token of the page's theme; paper has one colour for each,
 * chosen so that its grey value differs from its neighbours'.
 */
public enum Ink {
    /** Outlines and letters. */
    INK("#23201b"),
    /** Lines that only help the eye. */
    QUIET("#6b655a"),
    /** The ground. */
    PAPER("#ffffff"),
    /** Hours in which the shop is closed. */
    NIGHT("#d8d2c4"),
    /** Resin that is wet or curing. */
    WET("#d99a1c"),
    /** Hands at work. */
    HANDS("#1f5f99"),
    /** A hold point. */
    HOLD("#7a2f86"),
    /** Trouble. */
    TROUBLE("#b3261e"),
    /** Done. */
    DONE("#8d8778"),
    /** Nothing drawn. */
    NONE("none");

    private final String paper;

    Ink(String paper) {
        this.paper = paper;
    }

    /** The colour on paper. */
    public String paper() {
        return paper;
    }

    /** The word that style sheets use. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
