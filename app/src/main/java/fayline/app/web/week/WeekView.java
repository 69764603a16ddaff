package fayline.app.web.week;

import java.util.List;

/**
 * What is told of a week.
 *
 * @param week its first day, as a form takes it
 * @param words the same in words
 * @param before the week before
 * @param after the week after
 * @param names whether names were asked for
 * @param notes whether notes were
 * @param people whether pictures with people were
 * @param title the drafted title
 * @param text the drafted text
 * @param facts its figures and where they come from
 * @param pictures pictures that may go with it
 * @param heldBack how many pictures are held back; empty for none
 * @param told what was settled before, the newest first
 */
public record WeekView(
        String week,
        String words,
        String before,
        String after,
        boolean names,
        boolean notes,
        boolean people,
        String title,
        String text,
        List<Fact> facts,
        List<Picture> pictures,
        String heldBack,
        List<Told> told) {
    /** Copies the lists. */
    public WeekView {
        facts = List.copyOf(facts);
        pictures = List.copyOf(pictures);
        told = List.copyOf(told);
    }

    /**
     * A figure.
     *
     * @param shown as it stands in the text
     * @param from what it is
     * @param entry the entry that holds it; 0 for none
     */
    public record Fact(String shown, String from, long entry) {}

    /**
     * A picture.
     *
     * @param hash its hash
     * @param says what it shows
     */
    public record Picture(String hash, String says) {}

    /**
     * Something settled before.
     *
     * @param seq its entry
     * @param title its title
     * @param by who settled it
     */
    public record Told(long seq, String title, String by) {}
}
