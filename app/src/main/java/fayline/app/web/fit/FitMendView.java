package fayline.app.web.fit;

import fayline.app.web.frame.Frame;
import java.util.List;

/**
 * What the correction of a reading shows.
 *
 * @param fit the fit's id
 * @param name its name
 * @param entry the reading's entry
 * @param said what was read, where and when, by whom
 * @param withdrawn whether it was taken back and counts no more
 * @param former what it was before, the oldest first
 * @param value the value as typed
 * @param feeler whether a leaf that does not go in may stand beside it
 * @param nogo that leaf as typed; empty for none
 * @param why the reason as typed
 * @param stations the stations to choose from
 * @param states the states to choose from
 * @param refused why it was not corrected, a sentence each
 */
public record FitMendView(
        String fit,
        String name,
        long entry,
        String said,
        boolean withdrawn,
        List<FitView.Former> former,
        String value,
        boolean feeler,
        String nogo,
        String why,
        List<Frame.Choice> stations,
        List<Frame.Choice> states,
        List<String> refused) {
    /** Copies the lists. */
    public FitMendView {
        former = List.copyOf(former);
        stations = List.copyOf(stations);
        states = List.copyOf(states);
        refused = List.copyOf(refused);
    }
}
