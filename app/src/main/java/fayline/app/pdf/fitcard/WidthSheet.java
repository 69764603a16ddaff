package fayline.app.pdf.fitcard;

import fayline.app.pdf.CardSheet.Pair;
import java.util.List;

/**
 * One width of a frame in words, in a reader's units: what page and card show alike.
 *
 * @param id its mark
 * @param where between what it is measured
 * @param verdict what to do, in a few words
 * @param waits whether the adhesive must wait for it
 * @param facts the figures, each with its name
 * @param says what must be said, a sentence each
 * @param why formula, inputs and source, a sentence each
 */
public record WidthSheet(
        String id, String where, String verdict, boolean waits, List<Pair> facts, List<String> says, List<String> why) {
    /** Copies the lists. */
    public WidthSheet {
        facts = List.copyOf(facts);
        says = List.copyOf(says);
        why = List.copyOf(why);
    }
}
