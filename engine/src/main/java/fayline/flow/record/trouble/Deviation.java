package fayline.flow.record.trouble;

import fayline.flow.record.payload.Photo;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * Something that came out other than drawn.
 *
 * @param seq its entry
 * @param about the step it was seen at, {@code project/made/make-number/key}, or what was made, {@code project/made}
 * @param at when
 * @param by who raised it
 * @param told when it was entered, where that was later
 * @param text what is wrong, as typed; may be empty where photos say it
 * @param photos photos in order
 * @param structural whether structure is touched, as said by who raised or who settled it
 * @param settled what was decided; empty while nothing is
 * @param change the entry of the change that made it other than drawn; 0 where none did
 */
public record Deviation(
        long seq,
        String about,
        Instant at,
        String by,
        Optional<Instant> told,
        String text,
        List<Photo> photos,
        boolean structural,
        Optional<Settlement> settled,
        long change) {
    /** Copies the list. */
    public Deviation {
        photos = List.copyOf(photos);
    }

    /** Whether what depends on it must wait: nothing is decided, or structure is touched and no second person agreed. */
    public boolean isOpen() {
        return settled.isEmpty() || isWaitingForSecond();
    }

    /** Whether it is decided, and only the second person is missing. */
    public boolean isWaitingForSecond() {
        return structural && settled.filter(s -> s.second().isEmpty()).isPresent();
    }

    /** The project. */
    public String project() {
        return about.substring(0, Math.max(0, about.indexOf('/')));
    }

    /** The part or joint, {@code project/made}. */
    public String made() {
        String[] bits = about.split("/", -1);
        return bits.length < 2 ? about : bits[0] + "/" + bits[1];
    }

    /** Whether it was seen at one step; otherwise it is about the part or joint as a whole. */
    public boolean isOfStep() {
        return about.split("/", -1).length == 4;
    }
}
