package fayline.app.web.fit;

import java.util.List;

/**
 * What the form of a new fit shows.
 *
 * @param name the name as typed
 * @param hand left or right
 * @param gap the gap wanted as typed
 * @param tolerance its tolerance as typed
 * @param stations the stations as typed, a line each
 * @param refused why it was not begun, a sentence each
 */
public record FitBeginView(
        String name, String hand, String gap, String tolerance, String stations, List<String> refused) {
    /** Nothing typed yet. */
    public static final FitBeginView EMPTY = new FitBeginView("", "left", "", "", "", List.of());

    /** Copies the list. */
    public FitBeginView {
        refused = List.copyOf(refused);
    }

    /** The same with what was wrong. */
    FitBeginView refused(List<String> why) {
        return new FitBeginView(name, hand, gap, tolerance, stations, why);
    }
}
