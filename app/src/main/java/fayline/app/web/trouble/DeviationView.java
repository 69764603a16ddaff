package fayline.app.web.trouble;

import fayline.app.web.frame.PhotoView;
import java.util.List;

/**
 * A deviation as a page shows it.
 *
 * @param seq its number: the entry that raised it
 * @param about the step or part
 * @param link where that is shown
 * @param says when and by whom it was raised, and how late
 * @param text what is wrong, as typed
 * @param photos its photos
 * @param structural whether structure is touched
 * @param word how far it is: open, waits for a second person, or what was decided
 * @param open whether others wait for it
 * @param waitsForSecond whether only the second person is missing
 * @param decided who decided what, when, with which note; empty while nothing is
 * @param rework what is to be done, each with how far it is
 * @param unproven whether names of who decided were picked and not proven
 */
public record DeviationView(
        long seq,
        String about,
        String link,
        String says,
        String text,
        List<PhotoView> photos,
        boolean structural,
        String word,
        boolean open,
        boolean waitsForSecond,
        List<String> decided,
        List<Work> rework,
        boolean unproven) {
    /** Copies the lists. */
    public DeviationView {
        photos = List.copyOf(photos);
        decided = List.copyOf(decided);
        rework = List.copyOf(rework);
    }

    /**
     * A piece of rework.
     *
     * @param what what is to be done, and for how long
     * @param link its card; empty where it has none
     */
    public record Work(String what, String link) {}
}
