package fayline.flow.project.chain;

import fayline.method.fitup.MoveLimits;
import java.util.List;
import java.util.Optional;

/**
 * Something that can be done after the cure.
 *
 * @param name what it is called
 * @param kind its sort
 * @param limitMm most that comes off or goes on at a station; for a part made again, how far its worst gap is to be expected off
 * @param at the stations where it can be done; empty for all
 * @param room how far the part can go when it is hung again
 * @param hours what it costs, in working hours
 */
public record ChainRemedy(
        String name, Kind kind, double limitMm, List<String> at, Optional<MoveLimits> room, double hours) {
    /** Sorts, as files name them. */
    public enum Kind {
        /** Take material off. */
        TRIM,
        /** Put structure on. */
        BUILD_UP,
        /** Fill the gap. */
        FILL,
        /** Loosen the last bond or hinge and set it anew. */
        RE_HANG,
        /** Make the part again. */
        REMAKE
    }

    /** Copies the list. */
    public ChainRemedy {
        at = List.copyOf(at);
    }
}
