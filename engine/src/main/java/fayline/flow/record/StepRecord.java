package fayline.flow.record;

import fayline.flow.record.erasure.Erasure;
import fayline.flow.record.payload.Photo;
import fayline.flow.record.payload.Value;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/**
 * What the record says of one step, corrections applied.
 *
 * @param step the step: {@code project/made/make-number/step-key}
 * @param started when the hands began
 * @param finished when the hands left
 * @param people who worked
 * @param places where, as far as it was said
 * @param whichWay the answer to which way round it lies; empty where it was not asked
 * @param signed who signed a hold point; empty where nobody did
 * @param slip why it took longer or came later than planned; empty where nothing was said
 * @param missing what it should have and has not, each with the reason
 * @param notes notes in order
 * @param startedBy entry that started it; 0 where none did
 * @param finishedBy entry that finished it; 0 where none did
 */
public record StepRecord(
        String step,
        Optional<Instant> started,
        Optional<Instant> finished,
        List<String> people,
        List<String> places,
        String whichWay,
        String signed,
        Optional<Slip> slip,
        List<Lack> missing,
        List<Note> notes,
        long startedBy,
        long finishedBy) {
    /** Copies the lists. */
    public StepRecord {
        people = List.copyOf(people);
        places = List.copyOf(places);
        notes = List.copyOf(notes);
        missing = List.copyOf(missing);
    }

    /** A step of which nothing is recorded. */
    public static StepRecord none(String step) {
        return new StepRecord(
                step,
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                "",
                "",
                Optional.empty(),
                List.of(),
                List.of(),
                0,
                0);
    }

    /** The project the step belongs to. */
    public String project() {
        return step.substring(0, Math.max(0, step.indexOf('/')));
    }

    /**
     * Something that a finished step should have and has not.
     *
     * @param what what is missing
     * @param why why, as typed; empty where no reason was given
     */
    public record Lack(String what, String why) {
        /** What a finish says is missing, in order. */
        public static List<Lack> allOf(Value.Fields finish) {
            return finish.items("missing").stream()
                    .filter(Value.Fields.class::isInstance)
                    .map(Value.Fields.class::cast)
                    .map(f -> new Lack(f.text("what"), f.text("why")))
                    .toList();
        }

        /** The fields in the entry. */
        public Value.Fields fields() {
            return Value.Fields.NONE.with("what", what).withUnlessEmpty("why", why);
        }
    }

    /**
     * A note.
     *
     * @param seq the entry
     * @param at when
     * @param by who
     * @param text what, as typed; empty where pictures say it, or where it was erased
     * @param photos pictures in order
     * @param erased that its words and pictures were taken out; empty where they were not
     */
    public record Note(long seq, Instant at, String by, String text, List<Photo> photos, Optional<Erasure> erased) {
        /** Copies the list. */
        public Note {
            photos = List.copyOf(photos);
        }

        /**
         * What is read of it: what was typed, or that it was erased.
         *
         * @param zone the shop's zone
         */
        public String shown(ZoneId zone) {
            return erased.map(e -> e.words(zone)).orElse(text);
        }
    }
}
