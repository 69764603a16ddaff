package fayline.flow.record.trouble;

import java.time.Instant;
import java.util.List;

/**
 * What was decided about a deviation.
 *
 * @param seq its entry
 * @param at when
 * @param by who decided
 * @param disposition what
 * @param note the engineering note, as typed; may be empty where structure is not touched
 * @param second the second person who agrees where structure is touched; empty while nobody has
 * @param agreed the entry by which the second person agreed, where that is another one; else 0
 * @param rework what is to be done, in its order; empty where nothing is
 */
public record Settlement(
        long seq,
        Instant at,
        String by,
        Disposition disposition,
        String note,
        String second,
        long agreed,
        List<Rework> rework) {
    /** Copies the list. */
    public Settlement {
        rework = List.copyOf(rework);
    }
}
