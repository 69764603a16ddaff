package fayline.flow.reading;

import java.time.Instant;
import java.util.OptionalDouble;

/**
 * One reading at one station of a fit.
 *
 * @param seq the entry that holds it
 * @param at when
 * @param by who
 * @param kind what was read
 * @param station the station's mark
 * @param state the state of the fit; empty where none was said
 * @param typed exactly as typed
 * @param valueMm the value
 * @param noGoMm the smallest stack of leaves that did not enter, where feeler leaves were used
 * @param instrument what it was read with; empty where it was not said
 * @param temperatureDegC the temperature, where it was said
 * @param round which time round it was read in this state: a part that was moved is read anew in the next round
 */
public record FitReading(
        long seq,
        Instant at,
        String by,
        Kind kind,
        String station,
        String state,
        String typed,
        double valueMm,
        OptionalDouble noGoMm,
        String instrument,
        OptionalDouble temperatureDegC,
        int round) {
    /** What is read at a station. */
    public enum Kind {
        /** The gap. */
        GAP("gap"),
        /** How far the part stands proud. */
        FLUSH("flush"),
        /** Thickness of a trial squeeze. */
        CASTING("casting");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** Its word in entries and files. */
        public String word() {
            return word;
        }

        /** Whether it says how wide the gap is. */
        public boolean tellsGap() {
            return this != FLUSH;
        }
    }
}
