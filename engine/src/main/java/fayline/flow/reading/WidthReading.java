package fayline.flow.reading;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One width of a frame as it was read.
 *
 * @param seq the entry that holds it
 * @param at when
 * @param by who
 * @param width the width's mark
 * @param state in which state of the trial
 * @param trial which trial, from 1
 * @param typed exactly as typed
 * @param valueMm the width; above nothing
 * @param instrument what it was read with; empty where it was not said
 */
public record WidthReading(
        long seq,
        Instant at,
        String by,
        String width,
        State state,
        int trial,
        String typed,
        double valueMm,
        String instrument) {
    /** The states of a trial. */
    public enum State {
        /** Nothing on the frame. */
        BARE("bare", "bare"),
        /** The sheet clamped on dry. */
        CLAMPED("trial-clamped", "sheet clamped on"),
        /** The adhesive set and the clamps off. */
        BONDED("as-bonded", "as bonded");

        private final String word;
        private final String words;

        State(String word, String words) {
            this.word = word;
            this.words = words;
        }

        /** Its word in entries and files. */
        public String word() {
            return word;
        }

        /** What it is called at the bench. */
        public String words() {
            return words;
        }

        /** The words of all, in order. */
        public static List<String> all() {
            return Arrays.stream(values()).map(State::word).toList();
        }

        /** A state by its word. */
        public static Optional<State> named(String word) {
            return Arrays.stream(values()).filter(s -> s.word.equals(word)).findFirst();
        }
    }
}
