package fayline.app.web.fitcard;

import fayline.app.pdf.fitcard.WidthSheet;
import fayline.app.web.frame.Frame;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the page of a sprung frame shows.
 *
 * @param fit the fit's id
 * @param name its name
 * @param widths every width in words, with its readings
 * @param entry what is read next; empty where no width is named yet
 * @param typed what was typed and refused, by field
 * @param refused what was wrong with it, a sentence each
 * @param opposite the opposite hand's fit by id; empty for none
 * @param lessons what it taught, a sentence each
 * @param cautions what not to do, a sentence each
 */
public record FitFrameView(
        String fit,
        String name,
        List<Width> widths,
        Optional<Entry> entry,
        Map<String, String> typed,
        List<String> refused,
        String opposite,
        List<String> lessons,
        List<String> cautions) {
    /** Copies the lists. */
    public FitFrameView {
        widths = List.copyOf(widths);
        typed = Map.copyOf(typed);
        refused = List.copyOf(refused);
        lessons = List.copyOf(lessons);
        cautions = List.copyOf(cautions);
    }

    /** What was typed in a field that was refused; empty for nothing. */
    public String typed(String field) {
        return typed.getOrDefault(field, "");
    }

    /**
     * One width.
     *
     * @param sheet in words
     * @param readings as typed, trial by trial
     */
    public record Width(WidthSheet sheet, List<Reading> readings) {
        /** Copies the list. */
        public Width {
            readings = List.copyOf(readings);
        }
    }

    /**
     * One reading.
     *
     * @param entry the entry that holds it
     * @param what trial and state in words
     * @param typed exactly as typed
     * @param by who read it, and with what
     */
    public record Reading(long entry, String what, String typed, String by) {}

    /**
     * What is read next.
     *
     * @param width the width's mark
     * @param where between what
     * @param trial which trial
     * @param state the state's word
     * @param words the state in words
     * @param unit what a bare number is in
     * @param draft the name under which what is being typed is kept
     * @param widths the widths to choose from
     * @param states the states to choose from
     */
    public record Entry(
            String width,
            String where,
            int trial,
            String state,
            String words,
            String unit,
            String draft,
            List<Frame.Choice> widths,
            List<Frame.Choice> states) {
        /** Copies the lists. */
        public Entry {
            widths = List.copyOf(widths);
            states = List.copyOf(states);
        }
    }
}
