package fayline.flow.record.inspect;

import java.time.Instant;
import java.util.List;

/**
 * A visit, or the builders' own look before one.
 *
 * @param seq its entry
 * @param number its number in the project, from 1
 * @param project the project
 * @param stage the stage that was looked at; empty where it is none of the local list
 * @param at when
 * @param by who entered it
 * @param who who looked, as typed
 * @param own whether it was the builders' own look
 * @param text what was looked at and said, as typed
 * @param photos pictures in order
 */
public record HeldVisit(
        long seq,
        long number,
        String project,
        String stage,
        Instant at,
        String by,
        String who,
        boolean own,
        String text,
        List<StagePhoto> photos) {
    /** Copies the list. */
    public HeldVisit {
        photos = List.copyOf(photos);
    }
}
