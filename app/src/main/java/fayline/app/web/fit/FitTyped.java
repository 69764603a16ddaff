package fayline.app.web.fit;

import java.util.List;

/**
 * What came back from a form that was not taken whole.
 *
 * @param refused why, a sentence each
 * @param kept what was kept all the same
 * @param value the value as typed
 * @param nogo the leaf that did not enter as typed
 * @param many the lines that were not kept
 */
record FitTyped(List<String> refused, String kept, String value, String nogo, String many) {
    /** Nothing was typed. */
    static final FitTyped NOTHING = new FitTyped(List.of(), "", "", "", "");

    FitTyped {
        refused = List.copyOf(refused);
    }
}
