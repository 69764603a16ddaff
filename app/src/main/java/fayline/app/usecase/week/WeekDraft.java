package fayline.app.usecase.week;

import fayline.flow.record.payload.Photo;
import java.time.LocalDate;
import java.util.List;

/**
 * A draft of what is told of a week.
 *
 * @param monday the week's first day
 * @param title a title
 * @param paragraphs its paragraphs
 * @param facts every figure in it and where it comes from
 * @param pictures pictures of the week that may be shown
 * @param heldBack how many pictures are held back because of what was said, or not said, of people in them
 */
public record WeekDraft(
        LocalDate monday,
        String title,
        List<String> paragraphs,
        List<Fact> facts,
        List<Picture> pictures,
        int heldBack) {
    /** Copies the lists. */
    public WeekDraft {
        paragraphs = List.copyOf(paragraphs);
        facts = List.copyOf(facts);
        pictures = List.copyOf(pictures);
    }

    /** The text, paragraphs parted by an empty line. */
    public String text() {
        return String.join("\n\n", paragraphs);
    }

    /**
     * A figure in the draft.
     *
     * @param shown as it stands in the text
     * @param from what it is, in words
     * @param entry the entry that holds it as typed; 0 where it was counted or added up from several
     */
    public record Fact(String shown, String from, long entry) {}

    /**
     * A picture of the week.
     *
     * @param photo the picture
     * @param says what it shows: the step and the part
     */
    public record Picture(Photo photo, String says) {}

    /**
     * What private things may go in. Each needs to be asked for.
     *
     * @param names names of people
     * @param notes notes as they were typed
     * @param people pictures in which people may be recognised or of which nothing was said
     */
    public record Private(boolean names, boolean notes, boolean people) {
        /** Nothing private. */
        public static final Private NOTHING = new Private(false, false, false);
    }
}
